import type { Bench } from './bench';
import { editToFindingsBench } from './edit-to-findings';
import { packCirclesBench } from './pack-circles';
import { wholeProjectBench } from './whole-project';

/** Every bench, in the order in which they run. */
const BENCHES: readonly Bench[] = [editToFindingsBench, wholeProjectBench, packCirclesBench];

/** `npm run bench`: the median of seven runs after two to warm up. */
for (const bench of BENCHES) {
  process.stdout.write(`${bench.name}\n`);
  const medians = new Map<string, number>();
  for (const { name, targetMs, ratioTo, run } of bench.cases) {
    const times = Array.from({ length: 9 }, () => {
      const start = performance.now();
      run();
      return performance.now() - start;
    });
    const median = times.slice(2).sort((a, b) => a - b)[3]!;
    medians.set(name, median);
    const before = ratioTo === undefined ? undefined : medians.get(ratioTo);
    const ratio = before ? `× ${(median / before).toFixed(1)}` : '';
    const target = targetMs === undefined ? '' : `   target ${targetMs} ms`;
    process.stdout.write(
      `  ${name.padEnd(34)} ${median.toFixed(2).padStart(9)} ms  ${ratio.padEnd(9)}${target}\n`,
    );
  }
}
