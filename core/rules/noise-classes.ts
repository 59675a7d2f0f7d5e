import { memoByIdentity } from '../base/memo-by-identity';
import type { Harness, ResolvedWire, SegmentUse } from '../derive/harness';
import type { Signal } from '../model/electrical';
import { tiny, type TinyDraft } from '../model/tiny';
import { must } from '../base/assert-never';
import { segmentRef, wireRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { fact, limitFact, limitNeed } from './shared/evidence';
import { rtn, sup } from './shared/example-signals';
import { dropLimit, setLimit } from './shared/example-route';
import { signalsOfWire } from './shared/wire-facts';

/**
 * Speaks where signals are stated to be quiet and others to be noisy. A wire in a shield counts as kept apart, and so do wires
 * along a run for which a gap between them is stated. What a wire carries is told by its net, which is more than a segment
 * knows.
 */
export const noiseClasses: Rule<'project'> = {
  meta: {
    id: 'noise-classes',
    revision: 2,
    severity: 'major',
    summary:
      'Quiet and noisy wires do not run side by side for longer than the limit, unless one of them is shielded or they are kept apart.',
    why: 'Wires side by side are the plates of a capacitor and the turns of a transformer: what is switched in one appears in the other, and readings jump whenever the motor runs.',
    source: 'MIL-HDBK-419A (separation by class), title and scope; common practice for the length',
    message:
      'In {{segment}} the noisy {{noisy}} and the quiet {{quiet}} run side by side for {{measured}} mm, at most {{limit}} mm are allowed{{apart}}',
    unknown:
      'Whether the noisy {{noisy}} and the quiet {{quiet}} run side by side for too long in {{segment}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check(harness, report, context) {
    if (!hasBothClasses(harness.project.signals)) return;
    for (const use of harness.segments) judge(use, harness, report, context);
  },
  examples: () => ({
    good: [
      { name: 'no class stated', project: tiny() },
      { name: 'kept apart by the least gap', project: tiny((t) => mixed(t, 50)) },
      { name: 'noisy beside ordinary', project: tiny((t) => void (sup(t).noiseClass = 'noisy')) },
      {
        name: 'noisy beside quiet, where 300 mm are allowed',
        project: tiny((t) => {
          mixed(t);
          setLimit(t, 'noise-together-max', 300);
        }),
      },
      {
        name: 'the quiet one in a shield',
        project: tiny((t) => {
          mixed(t);
          const wires = [t.wire('W2').id];
          t.project.groups.push({
            id: t.newId(),
            designator: 'WG1',
            form: 'shielded',
            wires,
            shieldEnds: 'a',
          });
        }),
      },
    ],
    bad: [
      { name: 'noisy beside quiet for 300 mm', project: tiny(mixed), expect: ['S1'] },
      { name: 'kept apart, by less than the least gap', project: tiny((t) => mixed(t, 20)), expect: ['S1'] },
    ],
    unknown: [
      {
        name: 'kept apart, and no least gap in the limit set',
        project: tiny((t) => {
          mixed(t, 60);
          dropLimit(t, 'noise-gap-min');
        }),
        expect: ['S1'],
      },
      {
        name: 'no limit in the limit set',
        project: tiny((t) => {
          mixed(t);
          dropLimit(t, 'noise-together-max');
        }),
        expect: ['S1'],
      },
    ],
  }),
};

function mixed(t: TinyDraft, noiseGapMm?: number): void {
  sup(t).noiseClass = 'noisy';
  rtn(t).noiseClass = 'quiet';
  const segment = must(t.project.segments[0], 'segment');
  segment.lengthMm = 300;
  if (noiseGapMm !== undefined) segment.noiseGapMm = noiseGapMm;
}

const hasBothClasses = memoByIdentity((signals: readonly Signal[]): boolean =>
  (['quiet', 'noisy'] as const).every((noise) => signals.some((s) => s.noiseClass === noise)),
);

const isShielded = (w: ResolvedWire): boolean =>
  w.group?.form === 'shielded' ||
  w.group?.form === 'twisted-shielded' ||
  (w.part?.kind === 'cable' && w.part.shield !== undefined && w.part.shield !== 'none');

function judge(use: SegmentUse, harness: Harness, report: Report, context: RuleContext): void {
  const bare = use.wires.filter((w) => !isShielded(w));
  const of = (noise: 'quiet' | 'noisy', wires: readonly ResolvedWire[]): readonly ResolvedWire[] =>
    wires.filter((w) => signalsOfWire(harness, w).some((s) => s.noiseClass === noise));
  const all = { quiet: of('quiet', use.wires), noisy: of('noisy', use.wires) };
  if (all.quiet.length === 0 || all.noisy.length === 0) return;
  const quiet = of('quiet', bare);
  const noisy = of('noisy', bare);
  // A shield on either side is enough; bare wires of both kinds are the trouble.
  if (quiet.length === 0 || noisy.length === 0) return report.pass();
  const limit = context.limit('noise-together-max');
  const least = context.limit('noise-gap-min');
  const gapMm = use.segment.noiseGapMm;
  const names = (wires: readonly ResolvedWire[]): string => wires.map((w) => w.wire.designator).join(', ');
  const at = [segmentRef(use), ...[...noisy, ...quiet].map(wireRef)];
  const data = { segment: use.segment.designator, noisy: names(noisy), quiet: names(quiet) };
  const lengthMm = Math.round(use.lengthMm * 10) / 10;
  const evidence = [
    ...fact('side by side', lengthMm, use.segment.lengthMm === undefined ? 'formboard' : 'typed', 'mm'),
    ...fact('noisy wires', names(noisy), 'signal list'),
    ...fact('quiet wires', names(quiet), 'signal list'),
    ...limitFact('longest side by side', limit, context.limitSet),
    ...fact('gap kept between them', gapMm, 'typed', 'mm'),
    ...(gapMm === undefined ? [] : limitFact('least gap', least, context.limitSet)),
  ];
  if (!limit)
    return report.cannotVerify({
      at,
      data,
      evidence,
      needs: [limitNeed('noise-together-max', context.limitSet)],
    });
  if (use.lengthMm <= limit.value) return report.pass();
  if (gapMm !== undefined && !least)
    return report.cannotVerify({ at, data, evidence, needs: [limitNeed('noise-gap-min', context.limitSet)] });
  if (gapMm !== undefined && least && gapMm >= least.value) return report.pass();
  const apart =
    gapMm === undefined || !least ? '' : `; they are ${gapMm} mm apart, ${least.value} mm are needed`;
  report.fail({ at, data: { ...data, measured: lengthMm, limit: limit.value, apart }, evidence });
}
