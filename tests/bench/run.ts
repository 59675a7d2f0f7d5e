import type { Bench } from './bench';
import { packCirclesBench } from './pack-circles';

/** Every bench, in the order in which they run. */
const BENCHES: readonly Bench[] = [packCirclesBench];

/** `npm run bench`: the median of seven runs after two to warm up. */
for (const bench of BENCHES) {
  process.stdout.write(`${bench.name}\n`);
  for (const { name, targetMs, run } of bench.cases) {
    const times = Array.from({ length: 9 }, () => {
      const start = performance.now();
      run();
      return performance.now() - start;
    });
    const median = times.slice(2).sort((a, b) => a - b)[3]!;
    const target = targetMs === undefined ? '' : `   target ${targetMs} ms`;
    process.stdout.write(`  ${name.padEnd(24)} ${median.toFixed(1).padStart(8)} ms${target}\n`);
  }
}
