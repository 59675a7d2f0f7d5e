/**
 * Order of designators and numbers as people expect it: X2 before X10, and the same on every machine
 * (no locale). Letters compare by code unit after folding case; ties fall back to plain comparison.
 */
export function compareNatural(a: string, b: string): number {
  const left = chunks(a);
  const right = chunks(b);
  for (let i = 0; i < Math.min(left.length, right.length); i++) {
    const x = left[i] as string;
    const y = right[i] as string;
    if (x === y) continue;
    const bothNumbers = isDigits(x) && isDigits(y);
    if (bothNumbers && Number(x) !== Number(y)) return Number(x) - Number(y);
    if (!bothNumbers) {
      const fx = x.toLowerCase();
      const fy = y.toLowerCase();
      if (fx !== fy) return fx < fy ? -1 : 1;
    }
  }
  if (left.length !== right.length) return left.length - right.length;
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Plain code-unit order, for ids and keys. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

const chunks = (text: string): string[] => text.match(/\d+|\D+/g) ?? [];
const isDigits = (text: string): boolean => /^\d/.test(text);
