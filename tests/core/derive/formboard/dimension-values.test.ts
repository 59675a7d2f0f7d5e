import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { dimensionValues } from '@latchwork/core/derive/formboard/dimension-values';
import type { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import type { Datum, Dimension } from '@latchwork/core/model/topology';
import { describe, expect, it } from 'vitest';

/** X1 on N1 – S1, 300 – N2 – S2, typed 150 – N3 with X2; N2 – S3, 80 – N4. */
const tee = (change?: (t: TinyDraft) => void): Project =>
  tiny((t) => {
    const n2 = t.project.nodes[1]!.id;
    const [n3, n4] = [t.newId(), t.newId()];
    t.project.nodes.push(
      { id: n3, designator: 'N3', position: { x: 400, y: 0 } },
      { id: n4, designator: 'N4', position: { x: 300, y: 80 } },
    );
    t.project.segments.push(
      { id: t.newId(), designator: 'S2', from: n3, to: n2, lengthMm: 150 },
      { id: t.newId(), designator: 'S3', from: n2, to: n4 },
    );
    t.connector('X2').node = n3;
    change?.(t);
  });
const node = (p: Project, name: string): Datum => ({
  at: 'node',
  node: p.nodes.find((n) => n.designator === name)!.id,
});
const connector = (p: Project, name: string): Datum => ({
  at: 'connector',
  connector: p.connectors.find((c) => c.designator === name)!.id,
});
const station = (p: Project, name: string, atMm: number): Datum => ({
  at: 'station',
  station: { segment: p.segments.find((s) => s.designator === name)!.id, atMm },
});
const values = (p: Project, form: Dimension['form'], ...datums: Datum[]) =>
  dimensionValues(deriveHarness(p), { form, datums }).map((v) => v.valueMm);

describe('the values of a dimension', () => {
  const p = tee();

  it('of a chain go from each datum to the next, of a baseline from the first', () => {
    const datums = [connector(p, 'X1'), station(p, 'S1', 100), node(p, 'N2'), connector(p, 'X2')];
    expect(values(p, 'chain', ...datums)).toEqual([100, 200, 150]);
    expect(values(p, 'baseline', ...datums)).toEqual([100, 300, 450]);
  });

  it('are measured along the harness, with typed lengths, whichever way segments were drawn', () => {
    // S2 runs from N3: 20 mm from there are 130 mm from N2.
    expect(values(p, 'chain', node(p, 'N4'), station(p, 'S2', 20))).toEqual([210]);
    expect(values(p, 'chain', station(p, 'S1', 290), station(p, 'S1', 40))).toEqual([250]);
  });

  it('take the shortest way of a mesh', () => {
    const mesh = tee((t) => {
      const [n1, , , n4] = t.project.nodes.map((n) => n.id) as [string, string, string, string];
      t.project.segments.push({ id: t.newId(), designator: 'S4', from: n1, to: n4, lengthMm: 60 });
    });
    expect(values(mesh, 'chain', node(mesh, 'N1'), node(mesh, 'N2'))).toEqual([140]);
  });

  it('that cannot be measured say what they need', () => {
    const loose = tee((t) => delete t.connector('X1').node);
    const apart = { ...p, segments: p.segments.filter((s) => s.designator !== 'S2') };
    const needs = (q: Project) => dimensionValues(deriveHarness(q), { form: 'chain', datums: [connector(q, 'X1'), connector(q, 'X2')] })[0]; // prettier-ignore
    expect(needs(loose)).toMatchObject({ valueMm: undefined, needs: ['a formboard node for X1'] });
    expect(needs(apart)).toMatchObject({ valueMm: undefined, needs: ['segments that join X1 and X2'] });
  });

  it('name the stretches that they go over', () => {
    const [value] = dimensionValues(deriveHarness(p), {
      form: 'chain',
      datums: [station(p, 'S1', 250), station(p, 'S2', 100)],
    });
    expect(value?.extents).toEqual([
      { segment: p.segments[0]!.id, fromMm: 250, toMm: 300 },
      { segment: p.segments[1]!.id, fromMm: 100, toMm: 150 },
    ]);
  });
});
