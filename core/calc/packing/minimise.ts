/** Writes the gradient at `at` into `gradient` and gives the value. */
export type Objective = (at: Float64Array, gradient: Float64Array) => number;

const MEMORY = 8;

/**
 * Goes downhill in place until the steps no longer pay: limited-memory BFGS with a backtracking step length (Nocedal
 * and Wright, Numerical Optimization, 2nd edition, algorithms 3.1, 7.4 and 7.5).
 */
export function minimise(at: Float64Array, objective: Objective, maxSteps: number, enough: number): void {
  const size = at.length;
  let gradient = new Float64Array(size);
  let nextGradient = new Float64Array(size);
  const next = new Float64Array(size);
  const direction = new Float64Array(size);
  const steps: Float64Array[] = [];
  const changes: Float64Array[] = [];
  const curvatures: number[] = [];
  const weights = new Float64Array(MEMORY);
  let value = objective(at, gradient);

  for (let step = 0; step < maxSteps; step++) {
    for (let i = 0; i < size; i++) direction[i] = -gradient[i]!;
    for (let m = steps.length - 1; m >= 0; m--) {
      const w = dot(steps[m]!, direction) / curvatures[m]!;
      weights[m] = w;
      add(direction, changes[m]!, -w);
    }
    const last = steps.length - 1;
    if (last >= 0) {
      const scale = curvatures[last]! / dot(changes[last]!, changes[last]!);
      for (let i = 0; i < size; i++) direction[i] = direction[i]! * scale;
    }
    for (let m = 0; m < steps.length; m++)
      add(direction, steps[m]!, weights[m]! - dot(changes[m]!, direction) / curvatures[m]!);

    let slope = dot(direction, gradient);
    if (slope >= 0) {
      for (let i = 0; i < size; i++) direction[i] = -gradient[i]!;
      slope = -dot(gradient, gradient);
      steps.length = changes.length = curvatures.length = 0;
    }
    if (slope > -1e-30) return;
    let length = steps.length ? 1 : Math.min(1, 0.1 / Math.sqrt(-slope));
    let nextValue = value;
    for (let half = 0; ; half++) {
      for (let i = 0; i < size; i++) next[i] = at[i]! + length * direction[i]!;
      nextValue = objective(next, nextGradient);
      if (nextValue <= value + 1e-4 * length * slope) break;
      if (half >= 20) return;
      length /= 2;
    }
    const moved = steps.length === MEMORY ? steps.shift()! : new Float64Array(size);
    const turned = changes.length === MEMORY ? changes.shift()! : new Float64Array(size);
    if (curvatures.length === MEMORY) curvatures.shift();
    for (let i = 0; i < size; i++) {
      moved[i] = next[i]! - at[i]!;
      turned[i] = nextGradient[i]! - gradient[i]!;
      at[i] = next[i]!;
    }
    const curvature = dot(moved, turned);
    if (curvature > 1e-18) {
      steps.push(moved);
      changes.push(turned);
      curvatures.push(curvature);
    }
    [gradient, nextGradient] = [nextGradient, gradient];
    const gain = value - nextValue;
    value = nextValue;
    if (gain < enough * Math.abs(value)) return;
  }
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

function add(to: Float64Array, what: Float64Array, times: number): void {
  for (let i = 0; i < to.length; i++) to[i] = to[i]! + times * what[i]!;
}
