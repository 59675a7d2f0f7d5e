import type { ResolvedEnd, ResolvedWire } from '../derive/harness';
import { tiny } from '../model/tiny';
import type { Evidence, ObjectRef } from './finding';
import { wireRef } from './refs';
import type { Report, Rule } from './rule';
import { fact } from './shared/evidence';
import { addCable, addShield } from './shared/example-shield';
import { shieldsOf, type Shield } from './shared/shields';

/**
 * Speaks of shielded groups, and of shielded cables whose cores are in use. Where a drain wire is drawn it must do what the
 * group says; a shield that is clamped in a backshell has none, and the statement stands.
 */
export const shieldEnds: Rule<'project'> = {
  meta: {
    id: 'shield-ends',
    revision: 1,
    severity: 'major',
    summary:
      'Every shield says at which ends it is connected, at one at least, and its drain wire does the same.',
    why: 'A shield that ends nowhere is an aerial. Connected at the wrong end, or at both where one was meant, it carries the current of the ground loop past the signal it should protect.',
    source: 'NASA-STD-8739.4, shield termination, by title; common practice',
    message: 'The shield of {{shield}} {{reason}}',
    unknown:
      'Whether the shield of {{shield}} is connected where it should be cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check(harness, report) {
    for (const shield of shieldsOf(harness)) judge(shield, report);
  },
  examples: () => ({
    good: [
      { name: 'no shield', project: tiny() },
      { name: 'connected at the end of X1, in the backshell', project: tiny((t) => addShield(t, 'a')) },
      {
        name: 'connected at both ends, by its drain wire',
        project: tiny((t) => addShield(t, 'both', 'both')),
      },
    ],
    bad: [
      { name: 'connected nowhere', project: tiny((t) => addShield(t, 'none')), expect: ['WG1'] },
      {
        name: 'at one end, and the drain goes to both',
        project: tiny((t) => addShield(t, 'a', 'both')),
        expect: ['WG1'],
      },
      {
        name: 'at both ends, and the drain goes to one',
        project: tiny((t) => addShield(t, 'both', 'b')),
        expect: ['WG1'],
      },
    ],
    unknown: [
      { name: 'nobody says at which ends', project: tiny((t) => addShield(t, undefined)), expect: ['WG1'] },
      { name: 'a shielded cable in no group', project: tiny((t) => addCable(t, false)), expect: ['W9'] },
    ],
  }),
};

function judge(shield: Shield, report: Report): void {
  const { group, cable, drains } = shield;
  const own: ObjectRef = group ? { type: 'group', id: group.id } : { type: 'cable', id: cable?.id ?? '' };
  const at = [own, ...shield.wires.map(wireRef)];
  const data = { shield: shield.name };
  const stated = group?.shieldEnds;
  if (!stated) {
    const what = `the ends at which the shield of ${shield.name} is connected`;
    const needs = [
      { what: group ? what : `${what} (put its wires into a shielded group)`, at: own, field: 'shieldEnds' },
    ];
    return report.cannotVerify({ at, data, needs, open: true });
  }
  const evidence: Evidence[] = fact('shield is connected at', ENDS[stated], 'typed');
  if (stated === 'none')
    return report.fail({ at, data: { ...data, reason: 'is connected at no end' }, evidence });
  if (drains.length === 0) return report.pass();
  const first = shield.wires.find((w) => !drains.includes(w));
  const hasEnd = (i: 0 | 1): boolean => drains.some((d) => isConnected(d, i, first));
  const actual = hasEnd(0) && hasEnd(1) ? 'both' : hasEnd(0) ? 'a' : hasEnd(1) ? 'b' : 'none';
  evidence.push(
    ...fact(`${drains.map((d) => d.wire.designator).join(', ')} connects it at`, ENDS[actual], 'wires'),
  );
  if (actual === stated) return report.pass();
  const reason = `is to be connected at ${ENDS[stated]}, its drain wire connects it at ${ENDS[actual]}`;
  report.fail({ at, data: { ...data, reason }, evidence });
}

const ENDS = { a: 'the first end', b: 'the second end', both: 'both ends', none: 'no end' } as const;

/** Ends are those of the first wire in the shield; a drain that was drawn the other way round is turned. */
function isConnected(drain: ResolvedWire, index: 0 | 1, first: ResolvedWire | undefined): boolean {
  const same = (a: ResolvedEnd, b: ResolvedEnd | undefined): boolean =>
    a.connector !== undefined && a.connector === b?.connector;
  const isTurned = same(drain.to, first?.from) || same(drain.from, first?.to);
  const { end } = (index === 0) === isTurned ? drain.to : drain.from;
  return end.at !== 'free' || end.terminal !== undefined;
}
