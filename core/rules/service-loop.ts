import { serviceLoop as serviceLoopCalc } from '../calc/service-loop';
import type { ConnectorUse } from '../derive/harness';
import { tiny } from '../model/tiny';
import type { Need } from './finding';
import { connectorRef } from './refs';
import type { Rule } from './rule';
import { shownMm } from './shared/bundle-words';
import { fact, limitFact, partFact, partNeed } from './shared/evidence';
import { setLimit } from './shared/example-route';

const LEAST = 'service-loop-min';
const TIMES = 'service-loop-reterminations';

/** Speaks of wired connectors of the harness, and only where the project asks for a loop by a limit above zero. */
export const serviceLoop: Rule<'connector'> = {
  meta: {
    id: 'service-loop',
    revision: 1,
    severity: 'minor',
    summary: 'Wires have the slack behind a connector that the project asks for.',
    why: 'Without slack a contact that was crimped wrongly cannot be crimped again, the connector cannot be pulled out for work, and motion goes into the crimps.',
    source:
      'FAA AC 43.13-1B, 11-118 (slack for two re-terminations); re-terminations x (strip length + crimp), common practice',
    message: 'The service loop at {{connector}} is {{measured}} mm, {{needed}} mm are asked for',
    unknown: 'Whether {{connector}} has its service loop cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check(use, report, context) {
    const least = context.limit(LEAST);
    const times = context.limit(TIMES);
    if (!least?.value && !times?.value) return;
    const { connector } = use.resolved;
    const ends = use.cavities.flatMap((c) => c.ends);
    if (connector.supply !== 'harness' || ends.length === 0) return;
    const again = times?.value ? retermination(use, times.value) : { mm: 0, evidence: [], needs: [] };
    // Without contacts there is nothing to crimp again; another rule says that they are missing.
    if (again.mm === undefined && again.needs.length === 0) return;
    const needed = Math.ceil(Math.max(least?.value ?? 0, again.mm ?? 0) - 1e-9);
    const measured = connector.serviceLoopMm;
    const self = connectorRef(use);
    const at = [self];
    const data = { connector: connector.designator };
    const evidence = [
      ...fact('service loop', measured, 'typed', 'mm'),
      ...limitFact('least loop', least, context.limitSet),
      ...limitFact('re-terminations', times, context.limitSet),
      ...again.evidence,
    ];
    if (measured !== undefined && measured < needed)
      return report.fail({
        at,
        evidence,
        data: { ...data, measured: shownMm(measured), needed },
        fix: {
          label: `Give ${connector.designator} a service loop of ${needed} mm`,
          command: 'connector.edit',
          args: { ids: [connector.id], change: { serviceLoopMm: needed } },
        },
      });
    const needs: Need[] = [
      ...(measured === undefined
        ? [{ what: `service loop of ${connector.designator}`, at: self, field: 'serviceLoopMm' }]
        : []),
      ...again.needs,
    ];
    if (needs.length > 0) report.cannotVerify({ open: measured === undefined, at, data, evidence, needs });
    else report.pass();
  },
  examples: () => ({
    good: [
      { name: 'no loop asked for', project: tiny() },
      {
        name: 'a loop of the length asked for',
        project: tiny((t) => {
          setLimit(t, LEAST, 20);
          for (const d of ['X1', 'X2']) t.connector(d).serviceLoopMm = 20;
        }),
      },
      // Twice (2.5 mm strip + 5 mm crimp).
      {
        name: 'enough to crimp twice more',
        project: tiny((t) => {
          setLimit(t, TIMES, 2);
          for (const d of ['X1', 'X2']) t.connector(d).serviceLoopMm = 15;
        }),
      },
    ],
    bad: [
      {
        name: 'a shorter loop',
        project: tiny((t) => {
          setLimit(t, LEAST, 20);
          t.connector('X1').serviceLoopMm = 20;
          t.connector('X2').serviceLoopMm = 19;
        }),
        expect: ['X2'],
      },
      {
        name: 'enough to crimp once more, twice is asked for',
        project: tiny((t) => {
          setLimit(t, TIMES, 2);
          for (const d of ['X1', 'X2']) t.connector(d).serviceLoopMm = 8;
        }),
        expect: ['X1', 'X2'],
      },
    ],
    unknown: [
      {
        name: 'asked for, and nothing said',
        project: tiny((t) => {
          setLimit(t, LEAST, 20);
          t.connector('X1').serviceLoopMm = 30;
        }),
        expect: ['X2'],
      },
      {
        name: 'a contact without its strip length',
        project: tiny((t) => {
          setLimit(t, TIMES, 2);
          for (const d of ['X1', 'X2']) t.connector(d).serviceLoopMm = 30;
          delete t.part('contact', 'C-PIN').stripLengthMm;
        }),
        expect: ['X2'],
      },
    ],
  }),
};

/** Slack for that many re-terminations: the contact with the longest strip length decides. */
function retermination(use: ConnectorUse, times: number) {
  const contacts = new Set(
    use.cavities.flatMap((c) => c.ends.flatMap((e) => (e.end.contactPart ? [e.end.contactPart] : []))),
  );
  const needs = [...contacts].flatMap((c) =>
    c.stripLengthMm === undefined ? [partNeed(c, 'stripLengthMm', 'strip length')] : [],
  );
  const longest = [...contacts].reduce(
    (a, c) => ((c.stripLengthMm ?? 0) > (a?.stripLengthMm ?? 0) ? c : a),
    [...contacts][0],
  );
  const input = serviceLoopCalc.inputs.safeParse({
    stripLengthMm: longest?.stripLengthMm,
    reterminations: Math.round(times),
  });
  const found = input.success ? serviceLoopCalc.run(input.data) : undefined;
  if (!longest || !found?.ok || !input.data) return { mm: undefined, evidence: [], needs };
  const evidence = [
    ...partFact(longest, 'strip length', longest.stripLengthMm, 'mm'),
    ...fact(
      'cut off with an old crimp',
      input.data.crimpLengthMm,
      'common practice for small contacts',
      'mm',
    ),
  ];
  return { mm: found.value.slackMm, evidence, needs };
}
