import { byId } from '../base/by-id';
import { memoByIdentity } from '../base/memo-by-identity';
import { compareNatural } from '../base/stable-order';
import type { Label } from '../model/topology';
import type { ConnectorUse, Harness } from './harness';
import { labelCarrier } from './label-carrier';
import { cableEndText, connectorText, type LabelMethod, type MethodText, wireEndText } from './label-texts';

/** An end that is to be recognised: of a wire or a cable, or a connector. */
export type EndPlace = Exclude<Label['on'], { at: 'station' }>;

/** Every connector, both ends of every cable and of every wire, by designator. */
export const endPlaces = memoByIdentity(({ connectors, project, wires }: Harness): readonly EndPlace[] => {
  const named = <T>(list: readonly T[], name: (item: T) => string): T[] =>
    [...list].sort((a, b) => compareNatural(name(a), name(b)));
  const both = [0, 1] as const;
  return [
    ...named(connectors, (c) => c.resolved.connector.designator).map((c): EndPlace => ({
      at: 'connector',
      connector: c.resolved.connector.id,
    })),
    ...named(project.cables, (c) => c.designator).flatMap((c) =>
      both.map((end): EndPlace => ({ at: 'cable-end', cable: c.id, end })),
    ),
    ...named(wires, (w) => w.wire.designator).flatMap((w) =>
      both.map((end): EndPlace => ({ at: 'wire-end', wire: w.wire.id, end })),
    ),
  ];
});

/** Names a place: the same for two labels on one end. */
export const placeKey = (on: EndPlace): string =>
  on.at === 'connector' ? on.connector : `${labelCarrier(on).id} ${on.end}`;

/** What stands on an end by the method. */
export function textByMethod(harness: Harness, on: EndPlace, method: LabelMethod): MethodText {
  const gone = { ok: false as const, problem: 'an object that exists' };
  if (on.at === 'connector') {
    const use = harness.connectorById.get(on.connector);
    return use ? connectorText(harness, use, method) : gone;
  }
  if (on.at === 'cable-end') {
    const cable = byId(harness.project.cables).get(on.cable);
    return cable ? cableEndText(harness, cable, on.end, method) : gone;
  }
  const wire = harness.wireById.get(on.wire);
  return wire ? wireEndText(harness, wire, on.end, method) : gone;
}

/** Labels of ends, by `placeKey`. */
export const labelsByPlace = memoByIdentity(
  (labels: readonly Label[]): ReadonlyMap<string, readonly Label[]> => {
    const out = new Map<string, Label[]>();
    for (const label of labels) {
      if (label.on.at === 'station') continue;
      const key = placeKey(label.on);
      out.set(key, [...(out.get(key) ?? []), label]);
    }
    return out;
  },
);

/** What making labels would do. */
export interface LabelPlan {
  readonly add: readonly { readonly on: EndPlace; readonly text: string }[];
  /** Labels that get their text by the method, or keep it and are looked at for a part that fits. */
  readonly follow: readonly { readonly label: Label; readonly text: string }[];
  /** Written by hand: they stay as they are. */
  readonly kept: readonly Label[];
  /** Ends that the method cannot name, with what it needs. */
  readonly untold: readonly { readonly on: EndPlace; readonly needs: string }[];
}

/**
 * Labels for every end of the harness, or for the objects named by `ids` (a label stands for what carries it). Of several
 * labels on one end the first that was made follows the method; with `rewrite` the first of all.
 */
export function labelPlan(
  harness: Harness,
  method: LabelMethod,
  {
    ids,
    rewrite = false,
  }: { readonly ids?: readonly string[] | undefined; readonly rewrite?: boolean | undefined } = {},
): LabelPlan {
  const labels = labelsByPlace(harness.project.labels);
  const plan = { add: [] as LabelPlan['add'][number][], follow: [] as LabelPlan['follow'][number][], kept: [] as Label[], untold: [] as LabelPlan['untold'][number][] }; // prettier-ignore
  for (const on of chosen(harness, ids)) {
    const here = labels.get(placeKey(on)) ?? [];
    const label = here.find((l) => l.made) ?? (rewrite ? here[0] : undefined);
    if (here.length > 0 && !label) {
      plan.kept.push(...here);
      continue;
    }
    const told = textByMethod(harness, on, method);
    if (!told.ok) plan.untold.push({ on, needs: told.problem });
    else if (label) plan.follow.push({ label, text: told.value });
    else plan.add.push({ on, text: told.value });
  }
  return plan;
}

function chosen(harness: Harness, ids: readonly string[] | undefined): readonly EndPlace[] {
  const all = endPlaces(harness);
  if (!ids)
    return all.filter((on) => on.at !== 'connector' || isOurs(harness.connectorById.get(on.connector)));
  const labels = byId(harness.project.labels);
  const carriers = new Set(
    ids.map((id) => {
      const label = labels.get(id);
      return label ? labelCarrier(label.on).id : id;
    }),
  );
  return all.filter((on) => carriers.has(labelCarrier(on).id));
}

/** A connector that the shop fits and wires. */
export const isOurs = (use: ConnectorUse | undefined): boolean =>
  use?.resolved.connector.supply === 'harness' && use.cavities.some((c) => c.ends.length > 0);
