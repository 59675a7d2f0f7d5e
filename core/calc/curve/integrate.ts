/** Nodes and weights, from memory, of the 15-point Kronrod rule and of the 7-point Gauss rule inside it (Kronrod, 1964; QUADPACK qk15). */
const NODES = [
  0.991455371120812639206854697526329, 0.949107912342758524526189684047851,
  0.864864423359769072789712788640926, 0.741531185599394439863864773280788,
  0.586087235467691130294144691693013, 0.405845151377397166906606412076961,
  0.207784955007898467600689403773245, 0,
] as const;
const KRONROD = [
  0.022935322010529224963732008058970, 0.063092092629978553290700663189204,
  0.104790010322250183839876322541518, 0.140653259715525918745189590510238,
  0.169004726639267902826583426598550, 0.190350578064785409913256402421014,
  0.204432940075298892414161999234649, 0.209482141084727828012999174891714,
] as const; // prettier-ignore
const GAUSS = [
  0.129484966168869693270611432679082, 0.279705391489276667901467771423780,
  0.381830050505118944950369775488975, 0.417959183673469387755102040816327,
] as const; // prettier-ignore

const DEEPEST = 24;

/** Integral of f from a to b by adaptive Gauss–Kronrod quadrature, to an absolute error of about `tolerance`. */
export function integrate(f: (x: number) => number, a: number, b: number, tolerance: number): number {
  return a === b ? 0 : part(f, a, b, tolerance, 0);
}

function part(f: (x: number) => number, a: number, b: number, tolerance: number, depth: number): number {
  const middle = (a + b) / 2;
  const half = (b - a) / 2;
  const centre = f(middle);
  let kronrod = centre * KRONROD[7];
  let gauss = centre * GAUSS[3];
  for (let i = 0; i < 7; i++) {
    const x = half * NODES[i]!;
    const both = f(middle - x) + f(middle + x);
    kronrod += KRONROD[i]! * both;
    if (i % 2 === 1) gauss += GAUSS[(i - 1) / 2]! * both;
  }
  if (Math.abs((kronrod - gauss) * half) <= tolerance || depth >= DEEPEST) return kronrod * half;
  return part(f, a, middle, tolerance / 2, depth + 1) + part(f, middle, b, tolerance / 2, depth + 1);
}
