import { memoByIdentity } from '../../base/memo-by-identity';
import { compareNatural } from '../../base/stable-order';
import { orderSetUps } from '../../calc/set-ups/order-set-ups';
import { changesOf, countChanges, type Run, type SetUp, type Station } from '../../calc/set-ups/set-up';
import type { Harness } from '../../derive/harness';
import { cutJobs, type CutEnd, type CutJob } from './cut-jobs';

/** Wires that are alike in everything that the machine does, cut in one go. */
export interface CutLine {
  readonly jobs: readonly CutJob[];
  /** What is changed on the machine before it. */
  readonly changed: readonly Station[];
  /** Whether side A of the machine makes the `to` end. */
  readonly swapped: boolean;
  readonly setUp: number;
}

export interface CutPlan {
  readonly lines: readonly CutLine[];
  readonly setUps: number;
  /** Changes of spool, applicator, strip or seal in this order. */
  readonly changes: number;
  /** No order has fewer. */
  readonly atLeast: number;
  readonly proven: boolean;
  /** The same in the order of the wire designators, ends as drawn. */
  readonly byDesignator: number;
  /** The same sorted by wire part, size, colour, contacts, strip and length. */
  readonly bySortKey: number;
}

/** The cut list of a harness in the order of fewest changes. */
export const cutPlan = memoByIdentity((harness: Harness): CutPlan => {
  const jobs = cutJobs(harness);
  const kinds = distinctSetUps(jobs);
  const ordered = orderSetUps(kinds.map((k) => k.setUp));
  const runs = mostlyAsDrawn(kinds, ordered.runs);
  const changes = changesOf(
    kinds.map((k) => k.setUp),
    runs,
  );
  return {
    lines: runs.flatMap((run, i) => linesOf(kinds[run.index]?.jobs ?? [], run, i + 1, changes[i] ?? [])),
    setUps: kinds.length,
    changes: ordered.changes,
    atLeast: ordered.atLeast,
    proven: ordered.proven,
    byDesignator: changesInOrder(jobs),
    bySortKey: changesInOrder([...jobs].sort(compareBySortKey)),
  };
});

interface Kind {
  readonly setUp: SetUp;
  /** Those whose ends stand the other way round than in `setUp` are turned. */
  readonly jobs: { readonly job: CutJob; readonly turned: boolean }[];
}

/** The two sides of a machine are alike: what costs the same is run so that most wires keep the ends of the drawing. */
function mostlyAsDrawn(kinds: readonly Kind[], runs: readonly Run[]): readonly Run[] {
  const all = runs.flatMap((run) => (kinds[run.index]?.jobs ?? []).map((j) => run.swapped !== j.turned));
  if (all.filter((swapped) => swapped).length * 2 <= all.length) return runs;
  return runs.map(({ index, swapped }) => ({ index, swapped: !swapped }));
}

/** Jobs by set-up, in the order in which they come; a set-up and its mirror image are one. */
function distinctSetUps(jobs: readonly CutJob[]): readonly Kind[] {
  const kinds = new Map<string, Kind>();
  for (const job of jobs) {
    const { spool, a, b } = job.setUp;
    const straight = keyOf(spool, a, b);
    const mirrored = keyOf(spool, b, a);
    const turned = mirrored < straight;
    const key = turned ? mirrored : straight;
    const kind = kinds.get(key);
    if (kind) kind.jobs.push({ job, turned });
    else kinds.set(key, { setUp: turned ? { spool, a: b, b: a } : job.setUp, jobs: [{ job, turned }] });
  }
  return [...kinds.values()];
}

const keyOf = (spool: string, a: SetUp['a'], b: SetUp['b']): string =>
  [spool, a.applicator, a.strip, a.seal, b.applicator, b.strip, b.seal].map((t) => t ?? '').join('|');

/** Within a set-up by length, then designator; wires that are the same cut make one line. */
function linesOf(jobs: Kind['jobs'], run: Run, setUp: number, changed: readonly Station[]): CutLine[] {
  const sorted = [...jobs].sort(
    (x, y) =>
      (x.job.wire.length.cutMm ?? Infinity) - (y.job.wire.length.cutMm ?? Infinity) ||
      compareNatural(x.job.wire.wire.designator, y.job.wire.wire.designator),
  );
  const lines = new Map<string, { jobs: CutJob[]; swapped: boolean }>();
  for (const { job, turned } of sorted) {
    const swapped = run.swapped !== turned;
    const key = cutKey(job, swapped);
    const line = lines.get(key);
    if (line) line.jobs.push(job);
    else lines.set(key, { jobs: [job], swapped });
  }
  return [...lines.values()].map((line, i) => ({ ...line, setUp, changed: i === 0 ? changed : [] }));
}

/** Alike in cut and ends, and handled the same afterwards. An unknown length is like no other. */
function cutKey({ wire, ends }: CutJob, swapped: boolean): string {
  const [a, b] = swapped ? [ends[1], ends[0]] : ends;
  const end = (e: CutEnd): string => [e.contact, e.seal, e.tool, e.stripMm, e.stripToleranceMm].join(' ');
  return [
    wire.length.cutMm ?? wire.wire.id,
    end(a),
    end(b),
    wire.group?.id ?? '',
    wire.wire.core ? wire.wire.id : '',
  ].join('|');
}

const changesInOrder = (jobs: readonly CutJob[]): number =>
  countChanges(
    jobs.map((j) => j.setUp),
    jobs.map((_, index) => ({ index, swapped: false })),
  );

/** The sort key in common use: wire part (which fixes the size), colour, contact A, contact B, strip, length. */
function compareBySortKey(x: CutJob, y: CutJob): number {
  const by = (text: (j: CutJob) => string | number | null): number =>
    compareNatural(String(text(x) ?? ''), String(text(y) ?? ''));
  return (
    by((j) => j.setUp.spool) ||
    by((j) => j.ends[0].contact) ||
    by((j) => j.ends[1].contact) ||
    by((j) => j.ends[0].stripMm) ||
    by((j) => j.ends[1].stripMm) ||
    by((j) => j.wire.length.cutMm ?? null)
  );
}
