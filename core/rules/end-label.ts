import { memoByIdentity } from '../base/memo-by-identity';
import type { ConnectorUse, Harness } from '../derive/harness';
import type { Label } from '../model/topology';
import { tiny, type TinyDraft } from '../model/tiny';
import { connectorRef, wireRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { fact, limitFact } from './shared/evidence';
import { setLimit } from './shared/example-route';

const ASKED = 'labels-asked';

/**
 * Speaks of wired connectors of the harness once one of them has a label, and of a wire once one of its ends has. The limit
 * asks for labels where none has been put yet.
 */
export const endLabel: Rule<'project'> = {
  meta: {
    id: 'end-label',
    revision: 1,
    severity: 'minor',
    summary: 'Where labels are asked for or begun, every connector has one, and both ends of a wire.',
    why: 'A mark at one end only, or on some connectors only, sends people looking for one that was never made.',
    source: 'IEC 62491 (labelling of cables and cores, by title: recognisable at each end); common practice',
    message: '{{object}} has no label{{where}}',
    unknown: 'Whether {{object}} is labelled cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check(harness, report, context) {
    const asked = context.limit(ASKED)?.value ?? 0;
    const labels = labelled(harness.project.labels);
    if (asked >= 1 || labels.connectors.size > 0) checkConnectors(harness, labels, report, context);
    if (asked >= 2 || labels.ends.size > 0) checkWires(harness, labels, asked >= 2, report, context);
  },
  examples: () => ({
    good: [
      { name: 'no labels', project: tiny() },
      {
        name: 'both connectors and both ends of a wire',
        project: tiny((t) => {
          onConnector(t, 'X1');
          onConnector(t, 'X2');
          onWire(t, 'W1', [0, 1]);
        }),
      },
    ],
    bad: [
      { name: 'one connector of two', project: tiny((t) => onConnector(t, 'X1')), expect: ['X2'] },
      { name: 'one end of a wire', project: tiny((t) => onWire(t, 'W1', [1])), expect: ['W1'] },
      { name: 'asked for at connectors', project: tiny((t) => setLimit(t, ASKED, 1)), expect: ['X1', 'X2'] },
      {
        name: 'asked for at wire ends too',
        project: tiny((t) => {
          setLimit(t, ASKED, 2);
          onConnector(t, 'X1');
          onConnector(t, 'X2');
        }),
        expect: ['W1', 'W2'],
      },
    ],
    unknown: [],
  }),
};

interface Labelled {
  readonly connectors: ReadonlySet<string>;
  /** Ends that have a label, by wire. */
  readonly ends: ReadonlyMap<string, ReadonlySet<number>>;
}

const labelled = memoByIdentity((labels: readonly Label[]): Labelled => {
  const connectors = new Set<string>();
  const ends = new Map<string, Set<number>>();
  for (const { on } of labels) {
    if (on.at === 'connector') connectors.add(on.connector);
    if (on.at === 'wire-end') ends.set(on.wire, (ends.get(on.wire) ?? new Set()).add(on.end));
  }
  return { connectors, ends };
});

const isWired = memoByIdentity((use: ConnectorUse): boolean => use.cavities.some((c) => c.ends.length > 0));

function checkConnectors(harness: Harness, labels: Labelled, report: Report, context: RuleContext): void {
  for (const use of harness.connectors) {
    const { connector } = use.resolved;
    if (connector.supply !== 'harness' || !isWired(use)) continue;
    if (labels.connectors.has(connector.id)) {
      report.pass();
      continue;
    }
    const { designator } = connector;
    report.fail({
      open: true,
      at: [connectorRef(use)],
      data: { object: designator, where: '' },
      evidence: evidenceOf('connectors with a label', labels.connectors.size, context),
      fix: {
        label: `Label ${designator}`,
        command: 'label.add',
        args: { text: designator, on: { at: 'connector', connector: connector.id } },
      },
    });
  }
}

function checkWires(
  harness: Harness,
  labels: Labelled,
  all: boolean,
  report: Report,
  context: RuleContext,
): void {
  const wires = all ? harness.wires : [...labels.ends.keys()].flatMap((id) => harness.wireById.get(id) ?? []);
  for (const wire of wires) {
    const { id } = wire.wire;
    const has = labels.ends.get(id);
    if (has?.size === 2) {
      report.pass();
      continue;
    }
    const bare = ([0, 1] as const).filter((end) => !has?.has(end));
    const end = bare[0] ?? 0;
    const { designator } = wire.wire;
    report.fail({
      open: true,
      at: [wireRef(wire)],
      data: {
        object: designator,
        where: bare.length === 2 ? ' at its ends' : ` at its ${end === 0 ? 'first' : 'second'} end`,
      },
      evidence: evidenceOf(`ends of ${designator} with a label`, 2 - bare.length, context),
      // One press labels one end; where both are bare the other is asked for next.
      ...(bare.length === 1
        ? {
            fix: {
              label: `Label the ${end === 0 ? 'first' : 'second'} end of ${designator}`,
              command: 'label.add',
              args: { text: designator, on: { at: 'wire-end', wire: id, end } },
            },
          }
        : {}),
    });
  }
}

const evidenceOf = (label: string, count: number, context: RuleContext) => [
  ...fact(label, count, 'labels of the project'),
  ...limitFact('labels asked for', context.limit(ASKED), context.limitSet),
];

function onConnector(t: TinyDraft, designator: string): void {
  const { id } = t.connector(designator);
  t.project.labels.push({ id: t.newId(), text: designator, on: { at: 'connector', connector: id } });
}

function onWire(t: TinyDraft, designator: string, ends: readonly (0 | 1)[]): void {
  const { id } = t.wire(designator);
  for (const end of ends)
    t.project.labels.push({ id: t.newId(), text: designator, on: { at: 'wire-end', wire: id, end } });
}
