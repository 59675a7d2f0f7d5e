import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { cutOuts } from '@latchwork/core/exports/cut-outs';
import { boardPatterns, panelCuts } from '@latchwork/core/exports/cut-outs/cut-out-sources';
import { drawBoardPattern } from '@latchwork/core/exports/cut-outs/draw-board-pattern';
import { drawPanelCut } from '@latchwork/core/exports/cut-outs/draw-panel-cut';
import { Drawing, type DrawingItem } from '@latchwork/core/exports/drawing/drawing';
import { Paper } from '@latchwork/core/exports/paper/paper';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { demoFromFile } from '../demos/demo-files';

const harnessOf = (change?: (t: TinyDraft) => void) => deriveHarness(tiny(change));
const inputOf = (harness: ReturnType<typeof harnessOf>) => ({
  harness,
  check: checkHarness(harness, []),
  date: '2026-03-01',
});

/** X2 stands in a panel with a hole of 20 x 10 mm, corners of 2 mm. */
function inPanel(t: TinyDraft): void {
  const id = t.newId();
  t.project.equipment.push({
    kind: 'panel', id, designator: 'U1', position: { x: 0, y: 0 }, widthMm: 5, heightMm: 80, thicknessMm: 2, coatingsMm: 0.12,
  }); // prettier-ignore
  t.connector('X2').equipment = id;
  const part = t.part('housing', 'H-PIN');
  part.mounting = 'panel';
  part.panel = {
    thicknessMinMm: 1, thicknessMaxMm: 3, insertFrom: 'front', cutOut: { widthMm: 20, heightMm: 10, cornerRadiusMm: 2 },
  }; // prettier-ignore
}

/** Extent of the lines of a layer. */
function extentOf(items: readonly DrawingItem[], layer: string): { width: number; height: number } {
  const points = items.flatMap((i) => (i.layer === layer && i.kind === 'polyline' ? i.points : []));
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  return { width: Math.max(...xs) - Math.min(...xs), height: Math.max(...ys) - Math.min(...ys) };
}

describe('panel cut-outs', () => {
  it('are drawn at true size with rounded corners and a bar of 50 mm', () => {
    const [cut] = panelCuts(harnessOf(inPanel));
    const drawing = cut && drawPanelCut(cut);
    if (!drawing) throw new Error('no cut-out');
    expect(extentOf(drawing.items, 'outline')).toEqual({
      width: expect.closeTo(20, 9),
      height: expect.closeTo(10, 9),
    });
    const arcs = drawing.items.flatMap((i) => (i.kind === 'arc' ? [i.radiusMm] : []));
    expect(arcs).toEqual([2, 2, 2, 2]);
    expect(extentOf(drawing.items, 'scale').width).toBeCloseTo(50, 9);
    const texts = drawing.items.flatMap((i) => (i.kind === 'text' ? [i.text] : []));
    expect(texts).toEqual(expect.arrayContaining(['20', '10', 'R 2 at most, 4 corners']));
  });

  it('state thickness with coatings, tolerance and the side of insertion', () => {
    const [row] = cutOuts.table(inputOf(harnessOf(inPanel))).rows;
    expect(row).toMatchObject({
      connector: 'X2', kind: 'panel cut-out', equipment: 'U1', insertFrom: 'front', widthMm: 20, heightMm: 10,
      cornerRadiusMm: 2, thicknessMm: 2.12, thicknessMinMm: 1, thicknessMaxMm: 3, source: 'record of the part', remarks: null,
    }); // prettier-ignore
  });

  it('take the hole that is entered for the panel, and name what the record asks for instead', () => {
    const [row] = cutOuts.table(
      inputOf(
        harnessOf((t) => {
          inPanel(t);
          t.connector('X2').cutOut = { widthMm: 21, heightMm: 10, cornerRadiusMm: 0.5, insertFrom: 'rear' };
        }),
      ),
    ).rows;
    expect([row?.widthMm, row?.source]).toEqual([21, 'entered for the panel']);
    expect(row?.remarks).toBe('the record asks for 20 x 10 mm; the record asks for insertion from the front');
  });

  it('leave blank what is not known', () => {
    const harness = harnessOf((t) => {
      inPanel(t);
      delete t.part('housing', 'H-PIN').panel;
    });
    const [row] = cutOuts.table(inputOf(harness)).rows;
    expect([row?.widthMm, row?.insertFrom]).toEqual([null, null]);
    expect(row?.remarks).toContain('size of the cut-out not stated');
    const [cut] = panelCuts(harness);
    expect(cut && drawPanelCut(cut)).toBeUndefined();
  });
});

describe('board hole patterns', () => {
  const patternOf = (change?: (t: TinyDraft) => void) => {
    const [pattern] = boardPatterns(harnessOf(change));
    if (!pattern) throw new Error('no header');
    return pattern;
  };

  it('place every hole by pitch and numbering, seen from the header; from the far side mirrored', () => {
    const near = patternOf();
    const far = patternOf((t) => void (t.connector('X3').footprint = { seenFrom: 'far-side' }));
    expect(near.places.map((p) => Math.abs(p.xMm))).toEqual([3, 0, 3]);
    near.places.forEach((p, i) => expect(far.places[i]?.xMm).toBeCloseTo(-p.xMm, 9));
    expect(near.remarks).toContain('view of the layout not stated: drawn from the header side');
  });

  it('draw holes of the stated diameter at true pitch, position 1 in a square', () => {
    const pattern = patternOf((t) => void (t.part('header', 'HEADER').holeMm = 1.1));
    const { items } = drawBoardPattern(pattern);
    const holes = items.flatMap((i) => (i.kind === 'circle' ? [i] : []));
    expect(holes.map((h) => h.radiusMm)).toEqual([0.55, 0.55, 0.55]);
    expect(Math.abs((holes[0]?.at.x ?? NaN) - (holes[1]?.at.x ?? NaN))).toBeCloseTo(3, 9);
    expect(items.filter((i) => i.layer === 'position-1')).toHaveLength(1);
  });

  it('are centres without holes for a surface-mounted header and where no hole is stated', () => {
    const surface = patternOf((t) => void (t.part('header', 'HEADER').termination = 'surface-mount'));
    expect(surface.holeMm).toBeUndefined();
    expect(surface.remarks.join()).toContain('no holes');
    expect(drawBoardPattern(surface).items.some((i) => i.kind === 'circle')).toBe(false);
  });

  it('name board locks without inventing where they are', () => {
    const { remarks } = patternOf((t) => void (t.part('header', 'HEADER').boardLocks = [{ plated: true }]));
    expect(remarks.join()).toContain('their places are not stated');
  });
});

describe('cut-outs as a document', () => {
  it('make paper and one drawing, with the baseline in it', () => {
    const input = inputOf(deriveHarness(demoFromFile('weather-station')));
    expect(() => Paper.parse(cutOuts.paper?.(input))).not.toThrow();
    const drawing = Drawing.parse(cutOuts.drawing?.(input));
    const texts = drawing.items.flatMap((i) => (i.kind === 'text' ? [i.text] : [])).join(' ');
    expect(texts).toContain('X23');
    expect(texts).toContain('Baseline');
  });

  it('say so where there is nothing to cut', () => {
    const harness = harnessOf((t) => {
      t.project.connectors = t.project.connectors.filter(
        (c) => c.designator === 'X1' || c.designator === 'X2',
      );
      t.project.mates = [];
    });
    const input = inputOf(harness);
    expect(cutOuts.table(input).rows).toEqual([]);
    expect(JSON.stringify(cutOuts.paper?.(input))).toContain('No connector of this project');
    expect(() => Drawing.parse(cutOuts.drawing?.(input))).not.toThrow();
  });
});
