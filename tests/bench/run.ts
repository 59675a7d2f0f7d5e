import type { Bench } from './bench';
import { documentsBench } from './documents';
import { editToFindingsBench } from './edit-to-findings';
import { importTablesBench } from './import-tables';
import { packCirclesBench } from './pack-circles';
import { wholeProjectBench } from './whole-project';

/** Every bench, in the order in which they run. */
const BENCHES: readonly Bench[] = [
  editToFindingsBench,
  wholeProjectBench,
  packCirclesBench,
  documentsBench,
  importTablesBench,
];

type Case = Bench['cases'][number];

/** Time of the processor in ms, so that other work on the machine does not count; garbage collection does. */
function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Times of a case in ms: as many runs as fit into `forMs`, but no fewer than `least`. */
function timesOf({ run, after }: Case, forMs: number, least: number): number[] {
  const times: number[] = [];
  for (let spent = 0; times.length < least || (spent < forMs && times.length < 300);) {
    const start = processorMs();
    run();
    const ms = processorMs() - start;
    times.push(ms);
    spent += ms;
    after?.();
  }
  return times;
}

/**
 * `npm run bench`, or `npm run bench -- documents` for those whose name has the word: medians. First all cases of a bench run
 * for a second each, so that what is timed is not the engine while it compiles; then each for another, seven times at least.
 */
const [word = ''] = process.argv.slice(2);
for (const bench of BENCHES.filter((b) => b.name.includes(word))) {
  process.stdout.write(`${bench.name}\n`);
  for (const one of bench.cases) timesOf(one, 1000, 2);
  const medians = new Map<string, number>();
  for (const one of bench.cases) {
    timesOf(one, 200, 2);
    const times = timesOf(one, 1000, 7).sort((a, b) => a - b);
    const median = times[times.length >> 1]!;
    medians.set(one.name, median);
    const before = one.ratioTo === undefined ? undefined : medians.get(one.ratioTo);
    const ratio = before ? `× ${(median / before).toFixed(1)}` : '';
    const target = one.targetMs === undefined ? '' : `   target ${one.targetMs} ms`;
    process.stdout.write(
      `  ${one.name.padEnd(34)} ${median.toFixed(2).padStart(9)} ms  ${ratio.padEnd(9)}${target}\n`,
    );
  }
}
