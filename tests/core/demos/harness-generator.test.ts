import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { referenceIssues } from '@latchwork/core/model/references';
import { parseProject } from '@latchwork/core/model/parse';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { generateProject } from '../../generate/harness-generator';
import { checked, sentences } from './demo-files';
import { drawn, inside, meeting } from './layout';

describe('a generated harness', () => {
  it.each([1, 7, 10, 95, 96, 97, 400])('of %d wires has as many wires and no finding', (wires) => {
    const project = generateProject({ wires });
    expect(project.wires).toHaveLength(wires);
    expect(sentences(checked(project))).toEqual([]);
  });

  it('is a project that can be saved and opened, whatever its size and seed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.nat(), (wires, seed) => {
        const text = serialiseProject(generateProject({ wires, seed }));
        expect(parseProject(text).ok).toBe(true);
        expect(text).toBe(serialiseProject(generateProject({ wires, seed })));
      }),
      { numRuns: 15 },
    );
  });

  it('differs with the seed', () => {
    const [a, b] = [1, 2].map((seed) => serialiseProject(generateProject({ wires: 300, seed })));
    expect(a === b).toBe(false);
  });

  it('of 10,000 wires is valid, has its lengths from routes, and repeats no object', () => {
    const project = generateProject({ wires: 10_000 });
    expect(project.wires).toHaveLength(10_000);
    expect(referenceIssues(project)).toEqual([]);
    const result = checked(project);
    expect(result.harness.wires.every((w) => w.length.kind === 'routed')).toBe(true);
    expect(sentences(result).slice(0, 3)).toEqual([]);
    // Not a budget: slow machines may take their time.
  }, 60_000);

  it('draws no symbol over another', () => {
    const { symbols, areas } = drawn(generateProject({ wires: 700, seed: 3 }));
    expect(meeting(symbols)).toEqual([]);
    for (const s of symbols) {
      const area = s.equipment && areas.get(s.equipment);
      if (area) expect(inside(s.box, area), s.designator).toBe(true);
    }
  });
});
