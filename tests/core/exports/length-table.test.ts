import { byId } from '@latchwork/core/base/by-id';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { segmentLengths } from '@latchwork/core/derive/formboard/segment-path';
import { connectionTable } from '@latchwork/core/exports/connection-table';
import { lengthTable } from '@latchwork/core/exports/length-table';
import type { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { describe, expect, it, test } from 'vitest';
import { generateProject } from '../../generate/harness-generator';
import { randomTree } from '../commands/random-tree';
import { demoFromFile } from '../demos/demo-files';

function tables(project: Project) {
  const harness = deriveHarness(project);
  const input = { harness, check: checkHarness(harness, []), date: '2026-03-01' };
  return { lengths: lengthTable.table(input), connections: connectionTable.table(input) };
}
const rowOf = (wire: string, change?: (t: TinyDraft) => void) =>
  tables(tiny(change)).lengths.rows.find((r) => r.wire === wire)!;

describe('the length table', () => {
  it('states what a cut length is made of', () => {
    expect(rowOf('W1', (t) => void (t.wire('W1').extraMm = 5))).toEqual({
      wire: 'W1', signal: 'SUP', from: 'X1:1', to: 'X2:1', path: 'S1', pinned: 'no',
      routeMm: 300, fromAllowanceMm: 4, toAllowanceMm: 4, takeUpMm: 0, extraMm: 5,
      byRouteMm: 313, typedMm: null, excessMm: null, lengthMm: 313, remarks: null,
    }); // prettier-ignore
  });

  it('keeps a typed length and shows its excess over the route', () => {
    const row = rowOf(
      'W1',
      (t) => void Object.assign(t.wire('W1'), { lengthMm: 330, path: [t.project.segments[0]!.id] }),
    );
    expect(row).toMatchObject({ byRouteMm: 308, typedMm: 330, excessMm: 22, lengthMm: 330, pinned: 'yes' });
  });

  it('says why a wire has no route, and what a length lacks', () => {
    const loose = rowOf('W1', (t) => delete t.connector('X1').node);
    expect(loose).toMatchObject({ path: null, routeMm: null, takeUpMm: null, lengthMm: null, remarks: 'no route: X1 has no node on the formboard' }); // prettier-ignore
    const both = rowOf('W1', (t) => ['X1', 'X2'].forEach((c) => delete t.connector(c).node));
    expect(both.remarks).toBe('no route: X1 and X2 have no node on the formboard');
    const apart = rowOf('W1', (t) => void (t.project.segments = []));
    expect(apart.remarks).toBe('no route: no segments join N1 and N2');
    const broken = rowOf('W1', (t) => void (t.wire('W1').path = []));
    expect(broken.remarks).toBe('no route: its pinned path does not lead from N1 to N2 without a gap');
    const vague = rowOf('W1', (t) => delete t.part('housing', 'H-PIN').datumMm);
    expect(vague.remarks).toBe('incomplete, not stated: datum of H-PIN');
  });
});

// Invariant of the trade: segment lengths on the path + allowances of the ends + extras = cut length, to rounding.
test.each([
  ['bench-lamp', () => demoFromFile('bench-lamp')],
  ['weather-station', () => demoFromFile('weather-station')],
  ['workshop-faults', () => demoFromFile('workshop-faults')],
  ['a generated harness', () => generateProject({ wires: 300, seed: 3 })],
  ['a random tree with curves and typed lengths', () => randomTree(11, 14)],
  ['another one', () => randomTree(12, 14)],
] as const)('the lengths of %s are the sums of what the formboard shows', (_, make) => {
  const project = make();
  const { lengths, connections } = tables(project);
  const nodes = byId(project.nodes);
  const drawn = new Map(project.segments.map((s) => [s.designator, segmentLengths(s, nodes).usedMm]));
  let checked = 0;
  for (const [i, row] of lengths.rows.entries()) {
    expect([row.wire, row.lengthMm]).toEqual([connections.rows[i]!.wire, connections.rows[i]!.lengthMm]);
    if (row.routeMm === null) continue;
    const onPath = String(row.path ?? '').split(' ').filter(Boolean); // prettier-ignore
    const sum = onPath.reduce((mm, name) => mm + drawn.get(name)!, 0);
    expect(Math.abs((row.routeMm as number) - sum)).toBeLessThan(0.001);
    const exact = [row.routeMm, row.fromAllowanceMm, row.toAllowanceMm, row.takeUpMm, row.extraMm].reduce<number>((mm, x) => mm + (x as number), 0); // prettier-ignore
    const up = (row.byRouteMm as number) - exact;
    expect(up > -0.01 && up < 1.01, `${row.wire}: ${row.byRouteMm} from ${exact}`).toBe(true);
    expect(Number.isInteger(row.byRouteMm)).toBe(true);
    if (row.typedMm === null) expect(row.lengthMm).toBe(row.byRouteMm);
    else expect(row.lengthMm).toBe(row.typedMm);
    checked++;
  }
  expect(checked).toBeGreaterThan(4);
});
