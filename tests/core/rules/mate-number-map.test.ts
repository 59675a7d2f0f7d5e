import { dispatch } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { countingIds } from '@latchwork/core/model/ids';
import type { Project } from '@latchwork/core/model/project';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import type { Finding } from '@latchwork/core/rules/finding';
import { findingText } from '@latchwork/core/rules/finding-text';
import { mateNumberMap } from '@latchwork/core/rules/mate-number-map';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const CORNERS = ['top-left', 'top-right', 'bottom-left', 'bottom-right'] as const;
const SCHEMES = ['row-wise', 'zig-zag', 'loop'] as const;

/** X1 on X3 alone, both of that shape, each numbered its own way. */
const pair = (
  shape: { ways: number; rows: number },
  a: { numbering: (typeof SCHEMES)[number]; cavityOneCorner: (typeof CORNERS)[number] },
  b: typeof a,
  map?: { a: string; b: string }[],
): Project =>
  tiny((t) => {
    Object.assign(t.part('housing', 'H-SOCKET'), shape, a);
    Object.assign(t.part('header', 'HEADER'), shape, b);
    t.project.mates = t.project.mates.slice(0, 1);
    if (map) t.project.mates[0]!.map = map;
  });

const findingsOf = (project: Project): readonly Finding[] =>
  checkHarness(deriveHarness(project), [mateNumberMap]).findings;

describe('numbers of mated halves', () => {
  // Common practice: 9-way, both halves numbered from the left of their own face, so 1 meets 5 and 6 meets 9.
  it('are shown on both sides where they differ', () => {
    const left = { numbering: 'row-wise', cavityOneCorner: 'top-left' } as const;
    const [finding] = findingsOf(pair({ ways: 9, rows: 2 }, left, left));
    expect(findingText(finding!, mateNumberMap.meta)).toBe(
      'X1 with X3: cavities of different numbers meet and no map is declared: ' +
        '1 with 5, 2 with 4, 4 with 2, 5 with 1, 6 with 9, 7 with 8, 8 with 7, 9 with 6',
    );
  });

  it('are cut short in the sentence where there are many', () => {
    const left = { numbering: 'row-wise', cavityOneCorner: 'top-left' } as const;
    const [finding] = findingsOf(pair({ ways: 40, rows: 2 }, left, left));
    expect(findingText(finding!, mateNumberMap.meta)).toMatch(/8 with 13 and 32 more$/);
  });

  it('tell when rows of different length face each other', () => {
    const top = { numbering: 'row-wise', cavityOneCorner: 'top-left' } as const;
    const [finding] = findingsOf(
      pair({ ways: 9, rows: 2 }, top, { ...top, cavityOneCorner: 'bottom-right' }),
    );
    expect(finding?.data.problem).toContain('meets nothing');
    expect(finding?.fix).toBeUndefined();
  });

  it('are not its subject where the halves differ in ways', () => {
    const project = tiny((t) => void (t.part('header', 'HEADER').ways = 4));
    expect(findingsOf(project)).toEqual([]);
  });

  it('pass once the map that the faces show is declared, whatever the numbering', () => {
    const any = fc.record({
      numbering: fc.constantFrom(...SCHEMES),
      cavityOneCorner: fc.constantFrom(...CORNERS),
    });
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 12 }), any, any, (columns, a, b) => {
        const project = pair({ ways: 2 * columns, rows: 2 }, a, b);
        const [finding, ...more] = findingsOf(project);
        expect(more).toEqual([]);
        if (!finding) return;
        // Two full rows always cover each other, so there is always a map to declare.
        if (!finding.fix) throw new Error('no fix');
        const { command: id, args } = finding.fix;
        const call = { id, args } as Parameters<typeof dispatch>[1];
        const done = dispatch(startHistory(project), call, { newId: countingIds(50_000), catalogue: [] });
        expect(done.ok && findingsOf(done.value.project)).toEqual([]);
      }),
    );
  });

  it('fail for every declared map but the one that the faces show', () => {
    const scheme = { numbering: 'row-wise', cavityOneCorner: 'top-left' } as const;
    const mirrored = { numbering: 'row-wise', cavityOneCorner: 'top-right' } as const;
    const numbers = ['1', '2', '3', '4'];
    fc.assert(
      fc.property(fc.shuffledSubarray(numbers, { minLength: 4, maxLength: 4 }), (order) => {
        const map = numbers.map((a, i) => ({ a, b: order[i]! }));
        const right = order.join('') === numbers.join('');
        expect(findingsOf(pair({ ways: 4, rows: 1 }, scheme, mirrored, map))).toHaveLength(right ? 0 : 1);
      }),
    );
  });
});
