import { byId } from '@latchwork/core/base/by-id';
import { distance } from '@latchwork/core/base/point';
import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory, undo, type History } from '@latchwork/core/commands/history';
import { segmentLengths } from '@latchwork/core/derive/formboard/segment-path';
import { countingIds } from '@latchwork/core/model/ids';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { referenceIssues } from '@latchwork/core/model/references';
import type { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lengthsOf, randomTree } from './random-tree';
import { after, refusal } from './try-call';

/** X1 on N1, 0/0 – S1 – N2, 300/0 – S2 – N3, 300/100 (X2, looking down) and N2 – S3 – N4, 500/0. */
const tee = (change?: (t: TinyDraft) => void): Project =>
  tiny((t) => {
    const n2 = t.project.nodes[1]!.id;
    const [n3, n4] = [t.newId(), t.newId()];
    t.project.nodes.push(
      { id: n3, designator: 'N3', position: { x: 300, y: 100 } },
      { id: n4, designator: 'N4', position: { x: 500, y: 0 } },
    );
    t.project.segments.push(
      { id: t.newId(), designator: 'S2', from: n2, to: n3, via: [{ x: 310, y: 50 }] },
      { id: t.newId(), designator: 'S3', from: n4, to: n2 },
    );
    Object.assign(t.connector('X2'), { node: n3, formboardAngleDeg: 90 });
    change?.(t);
  });
const at = (p: Project, node: string) => p.nodes.find((n) => n.designator === node)!;
const run = (p: Project, segment: string) => p.segments.find((s) => s.designator === segment)!;
const names = (p: Project) => ({ node: at(p, 'N2').id, segment: run(p, 'S2').id });

describe('rotating a branch', () => {
  it('turns nodes, via points and the direction of connectors about the node', () => {
    const turned = after(tee(), { id: 'branch.rotate', args: { ...names(tee()), byDeg: -90 } });
    expect(at(turned, 'N3').position).toEqual({ x: 400, y: 0 });
    expect(run(turned, 'S2').via).toEqual([{ x: 350, y: -10 }]);
    expect(turned.connectors.find((c) => c.designator === 'X2')!.formboardAngleDeg).toBe(0);
    expect(at(turned, 'N4')).toEqual(at(tee(), 'N4'));
  });

  it('is refused for a loop, and for a segment that is not at the node', () => {
    const loop = tee((t) => {
      const [n3, n4] = t.project.nodes.slice(2).map((n) => n.id) as [string, string];
      t.project.segments.push({ id: t.newId(), designator: 'S4', from: n3, to: n4 });
    });
    expect(refusal(loop, { id: 'branch.rotate', args: { ...names(loop), byDeg: 10 } })).toBe(
      'S2 is part of a closed loop, so that nothing beyond it can turn by itself.',
    );
    expect(
      refusal(tee(), {
        id: 'branch.rotate',
        args: { node: at(tee(), 'N1').id, segment: run(tee(), 'S2').id, byDeg: 10 },
      }),
    ).toBe('S2 does not end at N1.');
  });
});

describe('mirroring a branch', () => {
  it('puts it on the other side of the trunk', () => {
    const turned = after(tee(), { id: 'branch.mirror', args: names(tee()) });
    expect(at(turned, 'N3').position).toEqual({ x: 300, y: -100 });
    expect(run(turned, 'S2').via).toEqual([{ x: 310, y: -50 }]);
    expect(turned.connectors.find((c) => c.designator === 'X2')!.formboardAngleDeg).toBe(-90);
  });

  it('twice is as before', () => {
    const call: Call = { id: 'branch.mirror', args: names(tee()) };
    expect(after(after(tee(), call), call).nodes).toEqual(tee().nodes);
  });
});

describe('straightening a trunk', () => {
  it('lays nodes on a line with their lengths; branches keep their angle to it', () => {
    const bent = tee((t) => (t.project.nodes[0]!.position = { x: 300, y: -300 }));
    const straight = after(bent, {
      id: 'trunk.straighten',
      args: { from: at(bent, 'N1').id, to: at(bent, 'N4').id, angleDeg: 0 },
    });
    expect(['N1', 'N2', 'N4'].map((n) => at(straight, n).position)).toEqual([
      { x: 300, y: -300 },
      { x: 600, y: -300 },
      { x: 800, y: -300 },
    ]);
    expect(lengthsOf(straight).cut).toEqual(lengthsOf(bent).cut);
  });

  it('takes corners out of the run, and draws typed lengths as long as they are', () => {
    const bent = tee((t) => {
      t.project.segments[0]!.via = [{ x: 150, y: 80 }];
      t.project.segments[2]!.lengthMm = 250;
    });
    const args = { from: at(bent, 'N1').id, to: at(bent, 'N4').id };
    const straight = after(bent, { id: 'trunk.straighten', args });
    expect(run(straight, 'S1').via).toBeUndefined();
    expect(at(straight, 'N2').position.x).toBeCloseTo(340, 6);
    expect(at(straight, 'N4').position).toEqual({ x: 590, y: 0 });
  });

  it('is refused where a loop hangs on it, or nothing joins the ends', () => {
    const loop = tee((t) => {
      const [n3, n4] = t.project.nodes.slice(2).map((n) => n.id) as [string, string];
      t.project.segments.push({ id: t.newId(), designator: 'S4', from: n3, to: n4, lengthMm: 900 });
    });
    const say = (p: Project) =>
      refusal(p, { id: 'trunk.straighten', args: { from: at(p, 'N1').id, to: at(p, 'N4').id } });
    expect(say(loop)).toMatch(/^S[24] closes a loop with the run, so that it cannot be laid straight\.$/);
    expect(say({ ...tee(), segments: tee().segments.slice(0, 2) })).toBe('No segments join N1 and N4.');
  });
});

it('any sequence of these and of splits and joins keeps every length, and is undone to the same bytes', () => {
  const step = fc.record({
    kind: fc.nat(4),
    pick: fc.nat(1000),
    value: fc.double({ min: 0.02, max: 0.98, noNaN: true }),
  });
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 1e6 }),
      fc.array(step, { minLength: 1, maxLength: 10 }),
      (seed, steps) => {
        const project = randomTree(seed, 8);
        const newId = countingIds(100_000);
        let history: History = startHistory(project);
        for (const { kind, pick, value } of steps) {
          const now = history.project;
          const s = now.segments[pick % now.segments.length]!;
          const args = { node: pick % 2 ? s.from : s.to, segment: s.id };
          const { usedMm } = segmentLengths(s, byId(now.nodes));
          const calls: Call[] = [
            { id: 'segment.split', args: { station: { segment: s.id, atMm: value * usedMm } } },
            { id: 'segment.join', args: { node: args.node } },
            { id: 'branch.rotate', args: { ...args, byDeg: 360 * value } },
            { id: 'branch.mirror', args },
            { id: 'trunk.straighten', args: { from: s.from, to: now.nodes[pick % now.nodes.length]!.id } },
          ];
          const result = dispatch(history, calls[kind]!, { newId, catalogue: [] });
          if (result.ok) history = result.value;
        }
        expect(referenceIssues(history.project)).toEqual([]);
        const [was, is] = [lengthsOf(project), lengthsOf(history.project)];
        expect(Math.abs(is.totalMm - was.totalMm)).toBeLessThan(1e-6);
        expect(is.cut).toEqual(was.cut);
        was.wires.forEach(
          (x, i) => typeof x === 'number' && expect(Math.abs(x - (is.wires[i] as number))).toBeLessThan(1e-6),
        );
        was.coverings.forEach((x, i) => expect(Math.abs(x - is.coverings[i]!)).toBeLessThan(1e-6));
        let back = history;
        while (back.undo.length > 0) back = undo(back);
        expect(serialiseProject(back.project)).toBe(serialiseProject(project));
      },
    ),
    { numRuns: 120 },
  );
}, 60_000);

it('rotation moves no node nearer to another of its branch, or farther away', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: -720, max: 720 }), (seed, byDeg) => {
      const project = randomTree(seed, 8);
      const s = project.segments[seed % project.segments.length]!;
      const turned = after(project, { id: 'branch.rotate', args: { node: s.from, segment: s.id, byDeg } });
      const moved = turned.nodes.filter((n, i) => n.position !== project.nodes[i]!.position);
      const old = byId(project.nodes);
      for (const a of moved)
        for (const b of moved)
          expect(distance(a.position, b.position)).toBeCloseTo(
            distance(old.get(a.id)!.position, old.get(b.id)!.position),
            6,
          );
    }),
    { numRuns: 50 },
  );
}, 60_000);
