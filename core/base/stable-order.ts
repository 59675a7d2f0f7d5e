/**
 * Order of designators and numbers as people expect it: X2 before X10, and the same on every machine
 * (no locale). Letters compare by code unit after folding case; ties fall back to plain comparison.
 */
export function compareNatural(a: string, b: string): number {
  if (a === b) return 0;
  let i = 0;
  let j = 0;
  while (i < a.length && j < b.length) {
    const x = a.slice(i, (i = runEnd(a, i)));
    const y = b.slice(j, (j = runEnd(b, j)));
    if (x === y) continue;
    if (isDigit(x, 0) && isDigit(y, 0)) {
      if (Number(x) !== Number(y)) return Number(x) - Number(y);
      continue;
    }
    const fx = x.toLowerCase();
    const fy = y.toLowerCase();
    if (fx !== fy) return fx < fy ? -1 : 1;
  }
  if (i < a.length || j < b.length) return i < a.length ? 1 : -1;
  return compareText(a, b);
}

/** Plain code-unit order, for ids and keys. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

const isDigit = (text: string, at: number): boolean => {
  const code = text.charCodeAt(at);
  return code >= 48 && code <= 57;
};

/** Where the run of digits, or of other characters, that begins at `from` ends. */
function runEnd(text: string, from: number): number {
  const digits = isDigit(text, from);
  let i = from + 1;
  while (i < text.length && isDigit(text, i) === digits) i++;
  return i;
}
