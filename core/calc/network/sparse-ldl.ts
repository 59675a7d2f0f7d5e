/** A symmetric matrix: the diagonal, and for each row the entries off it (both halves are kept). */
export interface SparseSymmetric {
  readonly diagonal: Float64Array;
  readonly rows: readonly Map<number, number>[];
}

export function sparseSymmetric(size: number): SparseSymmetric {
  return { diagonal: new Float64Array(size), rows: Array.from({ length: size }, () => new Map()) };
}

/** Adds a value to entry (i, j) and to its mirror. */
export function addTo(m: SparseSymmetric, i: number, j: number, value: number): void {
  if (i === j) {
    m.diagonal[i]! += value;
    return;
  }
  m.rows[i]!.set(j, (m.rows[i]!.get(j) ?? 0) + value);
  m.rows[j]!.set(i, (m.rows[j]!.get(i) ?? 0) + value);
}

/** LDL^T with the rows in the order in which they were eliminated. */
export interface Factors {
  readonly order: Int32Array;
  readonly pivots: Float64Array;
  /** For each eliminated row: the rows it feeds, and the multipliers. */
  readonly columns: readonly { readonly rows: Int32Array; readonly values: Float64Array }[];
}

/** A pivot below this share of the row's first diagonal counts as zero: the row depends on those before it. */
const ZERO_PIVOT = 1e-13;

/**
 * Factors a symmetric positive definite matrix as P A P^T = L D L^T, always eliminating a row of smallest degree next
 * (Markowitz 1957; Rose 1970), with the fill kept in hash maps. A harness is nearly a tree, and on a tree this order makes
 * no fill at all: time and memory grow with the number of branches. Returns the row at which the matrix is singular
 * instead of factors if it is not positive definite. Own code because core takes no package; compared with a general
 * linear-algebra library in the tests. The matrix given is used up.
 */
export function factorLdl(m: SparseSymmetric): Factors | { readonly singularRow: number } {
  const n = m.diagonal.length;
  const first = Float64Array.from(m.diagonal);
  const order = new Int32Array(n);
  const pivots = new Float64Array(n);
  const columns: { rows: Int32Array; values: Float64Array }[] = new Array(n);
  const queue = degreeQueue(m.rows);
  for (let step = 0; step < n; step++) {
    const p = queue.take();
    const row = m.rows[p]!;
    const d = m.diagonal[p]!;
    if (!(d > ZERO_PIVOT * first[p]!)) return { singularRow: p };
    const rows = Int32Array.from(row.keys());
    const values = Float64Array.from(row.values(), (v) => v / d);
    order[step] = p;
    pivots[step] = d;
    columns[step] = { rows, values };
    for (let a = 0; a < rows.length; a++) {
      const i = rows[a]!;
      m.rows[i]!.delete(p);
      m.diagonal[i]! -= values[a]! * values[a]! * d;
      for (let b = 0; b < a; b++) addTo(m, i, rows[b]!, -values[a]! * values[b]! * d);
    }
    for (const i of rows) queue.changed(i);
  }
  return { order, pivots, columns };
}

/** x of A x = b. */
export function solveLdl(f: Factors, b: Float64Array): Float64Array {
  const x = Float64Array.from(b);
  const n = x.length;
  for (let s = 0; s < n; s++) {
    const { rows, values } = f.columns[s]!;
    const xs = x[f.order[s]!]!;
    for (let k = 0; k < rows.length; k++) x[rows[k]!]! -= values[k]! * xs;
  }
  for (let s = n - 1; s >= 0; s--) {
    const { rows, values } = f.columns[s]!;
    const p = f.order[s]!;
    let xp = x[p]! / f.pivots[s]!;
    for (let k = 0; k < rows.length; k++) xp -= values[k]! * x[rows[k]!]!;
    x[p] = xp;
  }
  return x;
}

/** Rows by degree. Stale entries stay in their bucket and are skipped when met. */
function degreeQueue(rows: readonly ReadonlyMap<number, number>[]): {
  take(): number;
  changed(i: number): void;
} {
  const buckets: number[][] = [];
  const done = new Uint8Array(rows.length);
  let lowest = 0;
  const put = (i: number): void => {
    const degree = rows[i]!.size;
    (buckets[degree] ??= []).push(i);
    if (degree < lowest) lowest = degree;
  };
  for (let i = rows.length - 1; i >= 0; i--) put(i);
  lowest = 0;
  return {
    take() {
      for (;;) {
        const bucket = buckets[lowest];
        const i = bucket?.pop();
        if (i === undefined) lowest++;
        else if (!done[i] && rows[i]!.size === lowest) {
          done[i] = 1;
          return i;
        }
      }
    },
    changed: put,
  };
}
