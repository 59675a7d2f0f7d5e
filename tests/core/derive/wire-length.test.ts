import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { produce } from 'immer';
import { describe, expect, it } from 'vitest';

/** W1 and W2 as a twisted pair of 2.0 mm wires on the 300 mm of the tiny project. */
const pair = (change?: (t: TinyDraft) => void): Project =>
  tiny((t) => {
    t.part('wire', 'WIRE-22').odMm = 2;
    t.project.groups.push({
      id: t.newId(),
      designator: 'WG1',
      form: 'twisted',
      wires: [t.wire('W1').id, t.wire('W2').id],
      layMm: 25,
    });
    change?.(t);
  });
const lengthOf = (project: Project, designator = 'W1') =>
  deriveHarness(project).wires.find((w) => w.wire.designator === designator)!.length;

describe('the cut length of a twisted wire', () => {
  const straight = lengthOf(tiny());

  // By hand: 300 x (sqrt(25^2 + (pi x 2)^2)/25 - 1) = 300 x 0.031099 = 9.330 mm.
  it('counts what its helix takes up on the route', () => {
    const twisted = lengthOf(pair());
    expect(straight.takeUpMm).toBe(0);
    expect(twisted.takeUpMm).toBeCloseTo(9.3297, 4);
    const exact = 300 + twisted.allowancesMm[0] + twisted.allowancesMm[1] + twisted.takeUpMm;
    expect(twisted.cutMm).toBe(Math.ceil(exact));
    expect(twisted.cutMm! - straight.cutMm!).toBeGreaterThan(8);
    expect(twisted.needs).toEqual([]);
  });

  it('says that it needs the lay, or the diameters of all wires of the group', () => {
    expect(lengthOf(pair((t) => delete t.project.groups[0]!.layMm)).needs).toEqual(['lay of WG1']);
    const noDiameter = pair((t) => {
      delete t.part('wire', 'WIRE-22').odMm;
      delete t.part('wire', 'WIRE-22').odMaxMm;
    });
    expect(lengthOf(noDiameter)).toMatchObject({
      takeUpMm: 0,
      needs: ['outside diameter of every wire of WG1'],
    });
  });

  it('stands as it was typed', () => {
    expect(lengthOf(pair((t) => void (t.wire('W1').lengthMm = 333)))).toMatchObject({
      cutMm: 333,
      needs: [],
    });
  });

  it.each(['shielded', 'bundled'] as const)('has no take-up in a %s group', (form) => {
    expect(lengthOf(pair((t) => void (t.project.groups[0]!.form = form)))).toEqual(straight);
  });

  it('follows the wire it is twisted with: another part there changes the length here', () => {
    const before = deriveHarness(pair());
    const thin = before.project.parts.find((p) => p.partNumber === 'WIRE-26')!.id;
    const after = deriveHarness(
      produce(before.project, (p) => {
        p.wires.find((w) => w.designator === 'W2')!.part = thin;
      }),
      before,
    );
    const takeUp = (h: typeof before) => h.wires.find((w) => w.wire.designator === 'W1')!.length.takeUpMm;
    expect(takeUp(after)).toBeLessThan(takeUp(before));
    expect(takeUp(after)).toBe(lengthOf(after.project).takeUpMm);
  });
});

describe('a typed length', () => {
  it('is kept and compared with the route', () => {
    const { routeMm, byRouteMm } = lengthOf(tiny());
    expect([routeMm, byRouteMm]).toEqual([300, 308]);
    expect(lengthOf(tiny((t) => void (t.wire('W1').lengthMm = 320)))).toMatchObject({
      kind: 'typed',
      cutMm: 320,
      byRouteMm: 308,
      differenceMm: 12,
    });
    expect(lengthOf(tiny((t) => void (t.wire('W1').lengthMm = 300)))).toMatchObject({ differenceMm: -8 });
  });

  it('without a route has nothing to be compared with', () => {
    const loose = tiny((t) => {
      t.wire('W1').lengthMm = 320;
      delete t.connector('X1').node;
    });
    expect(lengthOf(loose)).toMatchObject({ cutMm: 320, byRouteMm: undefined, differenceMm: undefined });
    expect(lengthOf(tiny()).differenceMm).toBeUndefined();
  });
});
