import { tiny } from '../model/tiny';
import type { Rule } from './rule';
import { sup } from './shared/example-signals';
import { addFuse } from './shared/example-fuse';
import { fact, limitFact } from './shared/evidence';
import { fuseWays } from './shared/fuse-ways';
import { fuseRef, limitsOf } from './shared/supply-words';

/** Asked of the first fuse behind a source that does not limit itself: of what lies before it nothing else protects the wire. */
export const fuseDistance: Rule<'supply'> = {
  meta: {
    id: 'fuse-distance',
    revision: 1,
    severity: 'critical',
    summary: 'The first fuse sits close to a source that does not limit its own current.',
    why: 'A battery feeds a chafed wire before the fuse with all it has. Every centimetre before the fuse is a centimetre that nothing protects.',
    source: 'marine practice: within 7 inches of the battery, 40 in a sheath, 72 from the starter',
    message: '{{fuse}} sits {{distance}} mm from its source, allowed are {{limit}} mm',
    unknown: 'How far {{fuse}} sits from its source cannot be verified; not stated: {{needs}}',
  },
  scope: 'supply',
  check(supply, report, context) {
    const { limits, needs } = limitsOf(context, ['fuse-distance-max']);
    for (const { fuse, signal, isFirst } of fuseWays(supply)) {
      if (!isFirst || signal?.sourceLimitA !== undefined) continue;
      const distance = fuse.fromSourceMm;
      const max = limits?.['fuse-distance-max'];
      const at = [fuseRef(fuse)];
      const evidence = [
        ...fact('wire before the fuse', distance, `fuse ${fuse.designator}, typed`, 'mm'),
        ...limitFact('most wire before the fuse', max, context.limitSet),
      ];
      if (distance === undefined || !max) {
        const missing = {
          what: `distance of ${fuse.designator} from its source`,
          at: fuseRef(fuse),
          field: 'fromSourceMm',
        };
        const open = distance === undefined ? [missing, ...needs] : needs;
        report.cannotVerify({ at, data: { fuse: fuse.designator }, needs: open, evidence });
      } else if (distance <= max.value) report.pass();
      else report.fail({ at, data: { fuse: fuse.designator, distance, limit: max.value }, evidence });
    }
  },
  examples: () => ({
    good: [
      { name: 'a fuse at 100 mm', project: tiny((t) => void addFuse(t, 2, 100)) },
      { name: 'exactly at the limit', project: tiny((t) => void addFuse(t, 2, 178)) },
      {
        name: 'a fuse far away, and a source that limits itself',
        project: tiny((t) => {
          addFuse(t, 2, 250);
          sup(t).sourceLimitA = 3;
        }),
      },
    ],
    bad: [{ name: 'a fuse at the far end', project: tiny((t) => void addFuse(t, 2, 250)), expect: ['F1'] }],
    unknown: [
      {
        name: 'nobody says where the fuse sits',
        project: tiny((t) => void delete addFuse(t, 2).fuse.fromSourceMm),
        expect: ['F1'],
      },
    ],
  }),
};
