import type { CavityUse } from '../derive/harness';
import type { LimitId } from '../model/limit-sets/limit-ids';
import { tiny } from '../model/tiny';
import { connectorRef } from './refs';
import type { Rule } from './rule';
import { cavityList } from './shared/cavity-list';
import { fact, limitFact, partFact } from './shared/evidence';
import { setLimit } from './shared/example-route';

/**
 * Speaks where the project asks for spares, of wired connectors of the harness. A spare is a way that can take another
 * wire: no wire in it, and neither blocked nor closed by its maker.
 */
export const spares: Rule<'connector'> = {
  meta: {
    id: 'spares',
    revision: 1,
    severity: 'minor',
    summary: 'A connector keeps as many spare ways as the project asks for its size.',
    why: 'The wire that is forgotten today, or the contact that breaks tomorrow, needs a way; without one the whole connector is changed.',
    source: 'FAA AC 43.13-1B, chapter 11: 2 up to 25 contacts, 4 from 26 to 100, 6 above 100',
    message: '{{connector}} has {{spare}} spare ways of {{ways}}; asked for: {{needed}}',
    unknown: 'Whether {{connector}} has its spare ways cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check(use, report, context) {
    const { connector, part } = use.resolved;
    if (!part || connector.supply !== 'harness' || !use.cavities.some((c) => c.ends.length > 0)) return;
    const limit = context.limit(limitFor(part.ways));
    if (!limit?.value) return;
    const spare = use.cavities.filter((c) => isSpare(c, part.keyPositions ?? []));
    if (spare.length >= limit.value) return report.pass();
    report.fail({
      at: [connectorRef(use)],
      data: {
        connector: connector.designator,
        spare: spare.length,
        ways: part.ways,
        needed: limit.value,
      },
      evidence: [
        ...partFact(part, 'ways', part.ways),
        ...fact('spare ways', spare.length, 'counted'),
        ...(spare.length > 0 ? fact('which', cavityList(spare.map((c) => c.cavity)), 'counted') : []),
        ...limitFact('least spare ways', limit, context.limitSet),
      ],
    });
  },
  examples: () => ({
    good: [
      { name: 'none asked for', project: tiny() },
      { name: 'one of three', project: tiny((t) => setLimit(t, 'spares-to-25', 1)) },
      {
        name: 'the limit of larger connectors does not count',
        project: tiny((t) => {
          setLimit(t, 'spares-to-25', 1);
          setLimit(t, 'spares-to-100', 4);
        }),
      },
    ],
    bad: [
      {
        name: 'two asked for, one way is left',
        project: tiny((t) => setLimit(t, 'spares-to-25', 2)),
        expect: ['X1', 'X2'],
      },
      {
        name: 'the last way is blocked',
        project: tiny((t) => {
          setLimit(t, 'spares-to-25', 1);
          t.connector('X1').cavities = [{ cavity: '3', state: 'blocked' }];
        }),
        expect: ['X1'],
      },
    ],
    unknown: [],
  }),
};

function limitFor(ways: number): LimitId {
  if (ways <= 25) return 'spares-to-25';
  return ways <= 100 ? 'spares-to-100' : 'spares-above-100';
}

const isSpare = (c: CavityUse, keyPositions: readonly string[]): boolean =>
  c.exists && c.ends.length === 0 && c.state !== 'blocked' && !keyPositions.includes(c.cavity);
