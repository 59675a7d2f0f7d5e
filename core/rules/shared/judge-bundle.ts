import type { SegmentUse } from '../../derive/harness';
import { band, bandText } from '../../derive/fit-band';
import type { Evidence, Need, ObjectRef } from '../finding';
import type { Report } from '../rule';
import { bundleFact, shownMm } from './bundle-words';

/** Something that goes around the bundle of a segment, with the diameters that it has to take. */
export interface AroundBundle {
  readonly use: SegmentUse;
  readonly at: readonly ObjectRef[];
  readonly what: string;
  /** Undefined where the bundle is not known. */
  readonly diametersMm: readonly number[] | undefined;
  readonly min: number | undefined;
  readonly max: number | undefined;
  readonly evidence: readonly Evidence[];
  readonly needs: readonly Need[];
}

/** Whether it goes around: a least diameter counts where it is stated, the largest has to be. */
export function judgeBundle(report: Report, c: AroundBundle): void {
  const low = c.diametersMm && Math.min(...c.diametersMm);
  const high = c.diametersMm && Math.max(...c.diametersMm);
  const data = { what: c.what, segment: c.use.segment.designator };
  const evidence = [...bundleFact(c.use), ...c.evidence];
  const answer = band(low, high, c.min ?? 0, c.max);
  if (answer === 'inside') return report.pass();
  if (answer === 'open') return report.cannotVerify({ at: c.at, data, evidence, needs: c.needs });
  const [a, b] = [shownMm(low ?? 0), shownMm(high ?? 0)];
  const measured = a === b ? `${a} mm` : `${a} to ${b} mm`;
  report.fail({ at: c.at, data: { ...data, measured, limit: bandText(c.min, c.max, 'mm') }, evidence });
}
