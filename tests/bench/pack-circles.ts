import { packCircles } from '@latchwork/core/calc/packing/pack-circles';
import type { Bench } from './bench';

const SIZES_MM = [0.6, 0.75, 0.9, 1.2, 1.6, 2.1];
const mixed = (n: number): number[] => Array.from({ length: n }, (_, i) => SIZES_MM[(i * i + 3 * i) % 6]!);

/** Packing of a bundle. Target: 500 mixed wires under 100 ms. */
export const packCirclesBench: Bench = {
  name: 'bundle packing',
  cases: [7, 20, 61, 200, 500].map((n) => ({
    name: `${n} mixed wires`,
    ...(n === 500 ? { targetMs: 100 } : {}),
    run: () => void packCircles(mixed(n)),
  })),
};
