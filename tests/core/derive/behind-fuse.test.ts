import { wiresBehindFuse } from '@latchwork/core/derive/behind-fuse';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { describe, expect, it } from 'vitest';

/** X3:1 (source) = X1:1 --W1-- splice --B1-- X2:1, --B2-- X2:3; the fuse F1 in W1. Returns designators behind F1. */
function behind(change: (t: TinyDraft, branch: (name: string, cavity: string) => string) => void = () => {}) {
  const project = tiny((t) => {
    const w1 = t.wire('W1');
    const splice = { id: t.newId(), designator: 'J1', position: { x: 60, y: 0 } };
    t.project.splices.push(splice);
    const branch = (designator: string, cavity: string): string => {
      const id = t.newId();
      const end = w1.ends[1];
      const connector = end.at === 'cavity' ? end.connector : t.connector('X2').id;
      t.project.wires.push({ part: w1.part, signal: w1.signal, id, designator, ends: [{ at: 'splice', splice: splice.id }, { at: 'cavity', connector, cavity }] }); // prettier-ignore
      return id;
    };
    branch('B1', '1');
    branch('B2', '3');
    w1.ends[1] = { at: 'splice', splice: splice.id };
    t.project.fuses.push({ id: t.newId(), designator: 'F1', wire: w1.id, ratedA: 3 });
    change(t, branch);
  });
  const harness = deriveHarness(project);
  const result = wiresBehindFuse(harness, project.fuses[0]!);
  return result && { ...result, wires: result.wires.map((w) => w.wire.designator).sort() };
}

describe('the wires behind a fuse', () => {
  it('are its own and all that branch off, through splices', () => {
    expect(behind()).toEqual({ wires: ['B1', 'B2', 'W1'], isBypassed: false });
  });

  it('end at the next fuse, whose wire still counts', () => {
    const result = behind((t, branch) => {
      const b3 = branch('B3', '2');
      t.project.fuses.push({ id: t.newId(), designator: 'F2', wire: b3, ratedA: 1 });
      // Beyond F2 and its mate nothing is F1's concern any more.
    });
    expect(result?.wires).toEqual(['B1', 'B2', 'B3', 'W1']);
  });

  it('do not depend on which way round the wire was drawn', () => {
    expect(behind((t) => { t.wire('W1').ends.reverse(); })?.wires).toEqual(['B1', 'B2', 'W1']); // prettier-ignore
  });

  it('a second way to the source bypasses the fuse', () => {
    const result = behind((t) => {
      const w1 = t.wire('W1');
      t.project.wires.push({ part: w1.part, id: t.newId(), designator: 'P1', ends: [{ ...w1.ends[0] }, { ...w1.ends[1] }] }); // prettier-ignore
    });
    expect(result?.isBypassed).toBe(true);
  });

  it('are not known without a source, or without a way to it', () => {
    expect(behind((t) => { delete t.project.signals[0]!.source; })).toBeUndefined(); // prettier-ignore
    expect(behind((t) => { t.project.mates = []; })).toBeUndefined(); // prettier-ignore
  });
});
