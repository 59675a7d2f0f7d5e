import type { PartLine } from './part-lines';

/** The number on the drawing's balloon: one per part, so the colours of one wire share it. */
export function findNumbers(lines: readonly PartLine[]): (line: PartLine) => number {
  const out = new Map<string, number>();
  for (const line of lines) {
    const key = findKey(line);
    if (!out.has(key)) out.set(key, out.size + 1);
  }
  return (line) => out.get(findKey(line)) ?? 0;
}

const findKey = (line: PartLine): string => `${line.kind} ${line.part?.id ?? ''}`;
