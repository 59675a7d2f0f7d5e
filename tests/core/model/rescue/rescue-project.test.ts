import { describe, expect, it } from 'vitest';
import { countingIds } from '@latchwork/core/model/ids';
import { parseProject } from '@latchwork/core/model/parse';
import { type Rescued, rescueProject } from '@latchwork/core/model/rescue/rescue-project';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { tiny } from '@latchwork/core/model/tiny';
import { mutated } from '../../fuzz/mutate';
import { createRandom } from '../../../generate/harness/random';
import { changed, SAMPLE_TEXT, sampleProject, V1_TEXT } from '../sample-file';

const newId = countingIds(900_000);
const ids = () => ({ id: newId(), revisionId: newId() });
const rescued = (text: string): Rescued => {
  const result = rescueProject(text, ids());
  if (!result.ok) throw new Error(result.problem);
  expect(parseProject(serialiseProject(result.value.project)).ok).toBe(true);
  return result.value;
};

describe('what can be rescued', () => {
  it('of a whole file is all of it', () => {
    expect(rescued(SAMPLE_TEXT)).toEqual({ project: sampleProject(), lost: [] });
  });

  it('of a file of an older version, too', () => {
    expect(rescued(V1_TEXT).lost).toEqual([]);
  });

  it('of a file that breaks off is what stands whole on its lines, and what is gone is named', () => {
    const text = serialiseProject(tiny());
    const { project, lost } = rescued(text.slice(0, text.indexOf('"designator":"W2"')));
    expect(project.connectors.map((c) => c.designator)).toEqual(['X1', 'X2', 'X3', 'X4']);
    expect(project.wires.map((w) => w.designator)).toEqual(['W1']);
    expect(project.titleBlock.title).toBe('Tiny example');
    expect(lost.join('\n')).toMatch(/line \d+: not readable/);
    expect(lost).toContain('segments: not in the file any more');
  });

  it('of a file with one bad object is all but that', () => {
    const { project, lost } = rescued(changed((raw) => (raw.wires[1].lengthMm = 'long')));
    expect(project.wires.map((w) => w.designator)).toEqual(['W1']);
    expect(lost[0]).toContain('wires[1] (W2): lengthMm');
  });

  it('keeps an object that names something gone, without the name', () => {
    const { project, lost } = rescued(changed((raw) => raw.equipment.splice(0)));
    expect(project.connectors).toHaveLength(sampleProject().connectors.length);
    expect(lost.join('\n')).toMatch(/connectors\[\d\]\.equipment: .* the name was taken out/);
  });

  it('takes no more than the name out of a list', () => {
    const { project } = rescued(changed((raw) => raw.signals.splice(0)));
    expect(project.connectors.map((c) => c.cavities.length)).toEqual(
      sampleProject().connectors.map((c) => c.cavities.length),
    );
  });

  it('leaves out an object that cannot be without what is gone', () => {
    const { project, lost } = rescued(changed((raw) => raw.nodes.splice(1)));
    expect(project.segments).toEqual([]);
    expect(lost.join('\n')).toMatch(/segments\[0\]\.to: .* the object was left out/);
  });

  it.each([
    ['{"format":"latchwork-catalogue"}', /another kind/],
    ['hello', /Nothing in this file/],
    ['{"format":"latchwork-project","formatVersion":99}', /newer program/],
  ])('of %s is nothing, and that is said', (text, words) => {
    const result = rescueProject(text, ids());
    expect(result.ok ? '' : result.problem).toMatch(words);
  });

  it('always opens, however the file was injured', { timeout: 60_000 }, () => {
    const random = createRandom(3);
    for (let i = 0; i < 300; i++) {
      const text = mutated(Buffer.from(i % 2 ? SAMPLE_TEXT : serialiseProject(tiny())), random).toString(
        'utf8',
      );
      const result = rescueProject(text, ids());
      if (result.ok) expect(parseProject(serialiseProject(result.value.project)).ok).toBe(true);
    }
  });
});
