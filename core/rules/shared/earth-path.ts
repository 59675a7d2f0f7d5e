import type { Net, ResolvedWire, Supply } from '../../derive/harness';
import type { Signal } from '../../model/electrical';
import type { Equipment } from '../../model/equipment';
import { wireRef } from '../refs';
import type { Report, RuleContext } from '../rule';
import { fact, limitFact, limitNeed } from './evidence';
import { signalNeed, signalRef } from './supply-words';

/**
 * A device that has the same earth on two nets joins them inside: once it is taken out, what hangs on the second is without
 * earth. The device that the earth comes from may have as many as it likes.
 */
export function judgePassedOn(signal: Signal, nets: readonly Net[], report: Report): void {
  const led = nets.filter((n) => n.wires.length > 0);
  if (led.length < 2) return;
  for (const { equipment, places } of devicesOf(signal, led)) {
    if (places.length < 2) continue;
    const from = signal.source?.connector;
    if (from !== undefined && places.some((p) => p.connectors.has(from))) {
      report.pass();
      continue;
    }
    const at = [{ type: 'equipment' as const, id: equipment.id }, signalRef(signal)];
    const names = places.map((p) => p.name);
    const evidence = fact(
      `${signal.name} at ${equipment.designator}`,
      names.join(' and '),
      'project, interfaces and wires',
    );
    const data = { signal: signal.name };
    if (from === undefined)
      report.cannotVerify({
        open: true,
        at,
        data: {
          ...data,
          question: `starts at ${equipment.designator} or is only passed on by it`,
        },
        needs: [signalNeed(signal, 'source', 'source')],
        evidence,
      });
    else {
      const reason = `leads through ${equipment.designator}, from ${names.join(' to ')}: it is open once that is taken out`;
      report.fail({ at, data: { ...data, reason }, evidence });
    }
  }
}

interface Device {
  readonly equipment: Equipment;
  /** One for each net: the first place of it, and the connectors that it touches here. */
  readonly places: { readonly name: string; readonly connectors: ReadonlySet<string> }[];
}

function devicesOf(signal: Signal, nets: readonly Net[]): readonly Device[] {
  const devices = new Map<string, Device>();
  for (const net of nets) {
    const here = new Map<string, { name: string; connectors: Set<string>; equipment: Equipment }>();
    for (const { connector, cavity, declared } of net.points) {
      const { equipment } = connector;
      if (!equipment || connector.connector.supply !== 'equipment' || declared !== signal) continue;
      const name = `${connector.connector.designator}:${cavity}`;
      const place = here.get(equipment.id) ?? { name, connectors: new Set<string>(), equipment };
      place.connectors.add(connector.connector.id);
      here.set(equipment.id, place);
    }
    for (const [id, { equipment, ...place }] of here) {
      const device = devices.get(id) ?? { equipment, places: [] };
      device.places.push(place);
      devices.set(id, device);
    }
  }
  return [...devices.values()];
}

/** Beside wires between the same two connectors the earth is the longest, so that it is the last to be torn off. */
export function judgeLength(
  signal: Signal,
  supply: Supply,
  nets: readonly Net[],
  report: Report,
  context: RuleContext,
): void {
  const limit = context.limit('earth-extra-length-min');
  const earths = new Set(nets.flatMap((n) => n.wires));
  for (const earth of earths) {
    const others = beside(earth, supply).filter((w) => !earths.has(w));
    if (others.length === 0) continue;
    const own = earth.length.cutMm;
    const unknown = [earth, ...others].filter((w) => w.length.cutMm === undefined);
    const longest = others.reduce((a, b) => ((b.length.cutMm ?? 0) > (a.length.cutMm ?? 0) ? b : a));
    const most = longest.length.cutMm ?? 0;
    const at = [wireRef(earth), signalRef(signal)];
    const data = { signal: signal.name };
    const evidence = [
      ...fact(`length of ${earth.wire.designator}`, own, 'cut length', 'mm'),
      ...fact(`length of ${longest.wire.designator}, the longest beside it`, longest.length.cutMm, 'cut length', 'mm'),
      ...limitFact('least extra length', limit, context.limitSet),
    ]; // prettier-ignore
    const extra = limit?.value ?? 0;
    if (own !== undefined && limit && own < most + extra) {
      const than = extra > 0 ? `less than ${extra} mm longer than` : 'shorter than';
      const reason = `is in ${earth.wire.designator} ${than} ${longest.wire.designator} beside it: it is torn off first`;
      report.fail({ at, data: { ...data, reason }, evidence });
    } else if (unknown.length > 0 || !limit) {
      const needs = [
        ...unknown.map((w) => ({
          what: `length of ${w.wire.designator}`,
          at: wireRef(w),
          field: 'lengthMm',
        })),
        ...(limit ? [] : [limitNeed('earth-extra-length-min', context.limitSet)]),
      ];
      const question = `is the longest beside ${earth.wire.designator}`;
      report.cannotVerify({ open: true, at, data: { ...data, question }, needs, evidence });
    } else report.pass();
  }
}

/** Wires that run from the same connector to the same connector. */
function beside(earth: ResolvedWire, supply: Supply): readonly ResolvedWire[] {
  const ends = connectorsOf(earth);
  if (ends.length < 2) return [];
  const use = supply.uses.find((u) => u.resolved.connector.id === ends[0]);
  const wires = new Set(use?.cavities.flatMap((c) => c.ends.map((e) => e.wire)));
  return [...wires].filter((w) => w !== earth && ends.every((id) => connectorsOf(w).includes(id)));
}

const connectorsOf = (w: ResolvedWire): readonly string[] => [
  ...new Set([w.from, w.to].flatMap((e) => e.connector?.connector.id ?? [])),
];
