import { tiny, type TinyDraft } from '../model/tiny';
import type { Rule } from './rule';
import { limitFact, partFact, partNeed } from './shared/evidence';
import { setLimit } from './shared/example-route';
import { mateSides } from './shared/mate-sides';

const MOST = 'mate-force-max';

/** Speaks where the project bounds the force. The record's force holds for the whole half: contacts, latch and seal. */
export const mateForce: Rule<'mate'> = {
  meta: {
    id: 'mate-force',
    revision: 1,
    severity: 'minor',
    summary: 'Mating takes no more force than the project allows for a hand.',
    why: 'A connector that is too stiff for the hand is left half mated: contacts touch in the test and let go on the road.',
    source:
      'common practice: force of all contacts, latch and seal against a limit agreed for the way of access',
    message: 'Mating {{a}} and {{b}} takes {{force}} N, {{limit}} N are allowed',
    unknown: 'How much force mating {{a}} and {{b}} takes cannot be verified; not stated: {{needs}}',
  },
  scope: 'mate',
  check(mate, report, context) {
    const limit = context.limit(MOST);
    const sides = mateSides(mate);
    if (!limit?.value || !sides) return;
    const stated = [sides.a, sides.b].flatMap((p) => p.mateForceN ?? []);
    const common = {
      at: sides.at,
      evidence: [
        ...[sides.a, sides.b].flatMap((p) =>
          partFact(p, `mating force of ${p.partNumber}`, p.mateForceN, 'N'),
        ),
        ...limitFact('most force', limit, context.limitSet),
      ],
    };
    if (stated.length === 0) {
      const needs = [...new Set([sides.a, sides.b])].map((p) => partNeed(p, 'mateForceN', 'mating force'));
      return report.cannotVerify({ ...common, data: sides.names, needs });
    }
    const force = Math.max(...stated);
    if (force <= limit.value) return report.pass();
    report.fail({ ...common, data: { ...sides.names, force, limit: limit.value } });
  },
  examples: () => ({
    good: [
      { name: 'no limit', project: tiny((t) => force(t, 90, 0)) },
      { name: 'exactly the limit', project: tiny((t) => force(t, 40, 40)) },
    ],
    bad: [
      { name: 'one newton too many', project: tiny((t) => force(t, 41, 40)), expect: ['X1–X3', 'X2–X4'] },
    ],
    unknown: [
      {
        name: 'no half states a force',
        project: tiny((t) => setLimit(t, MOST, 40)),
        expect: ['X1–X3', 'X2–X4'],
      },
    ],
  }),
};

/** Every half for sockets states a force. */
function force(t: TinyDraft, newton: number, limit: number): void {
  t.part('housing', 'H-SOCKET').mateForceN = newton;
  setLimit(t, MOST, limit);
}
