import { tiny } from '../model/tiny';
import { connectorRef } from './refs';
import type { Rule } from './rule';
import { fact, partFact } from './shared/evidence';

/**
 * Speaks of housings whose record names a secondary lock. A record that names none, or says "none", states no need of
 * one, and the rule is silent: most housings have no such part, so a blank field is not taken for a missing one.
 */
export const secondaryLock: Rule<'connector'> = {
  meta: {
    id: 'secondary-lock',
    revision: 1,
    severity: 'major',
    summary: 'A housing whose record names a secondary lock has it fitted.',
    why: 'Without its second retention a contact that was not pushed home backs out when the halves are mated.',
    source: 'common practice: a secondary lock is ordered with its housing, piece for piece',
    message: '{{connector}} lacks its secondary lock {{lock}}',
    unknown: 'Whether {{connector}} has its secondary lock cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check({ resolved }, report) {
    const { connector, part, accessories } = resolved;
    if (part?.kind !== 'housing' || connector.supply !== 'harness') return;
    const lock = part.secondaryLock;
    if (lock === undefined || lock === 'none') return;
    const fitted = accessories.flatMap((a) => (a.part?.kind === 'secondary-lock' ? [a.part.partNumber] : []));
    if (fitted.includes(lock)) return report.pass();
    report.fail({
      open: true,
      at: [connectorRef(resolved)],
      data: { connector: connector.designator, lock },
      evidence: [
        ...partFact(part, 'secondary lock', lock),
        ...fact('locks fitted', fitted.join(', ') || 'none', `project, ${connector.designator}`),
      ],
      fix: {
        label: `Fit ${lock} to ${connector.designator}`,
        command: 'connector.fit-lock',
        args: { id: connector.id },
      },
    });
  },
  examples: () => ({
    good: [
      { name: 'the lock is fitted', project: tiny() },
      {
        name: 'the housing has no such part',
        project: tiny((t) => {
          t.part('housing', 'H-SOCKET').secondaryLock = 'none';
          delete t.part('housing', 'H-PIN').secondaryLock;
          t.connector('X1').accessories = [];
          t.connector('X2').accessories = [];
        }),
      },
      {
        name: 'a housing that comes with the equipment',
        project: tiny((t) => void (t.connector('X4').accessories = [])),
      },
    ],
    bad: [
      {
        name: 'no lock',
        project: tiny((t) => void (t.connector('X1').accessories = [])),
        expect: ['X1'],
      },
      {
        name: 'the lock of another housing',
        project: tiny((t) => {
          const lock = t.part('secondary-lock', 'LOCK');
          t.project.parts.push({ ...lock, id: t.newId(), partNumber: 'LOCK-P' });
          t.part('housing', 'H-PIN').secondaryLock = 'LOCK-P';
        }),
        expect: ['X2'],
      },
    ],
    unknown: [],
  }),
};
