import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory, undo } from '@latchwork/core/commands/history';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { createRouter } from '@latchwork/core/derive/route';
import { countingIds } from '@latchwork/core/model/ids';
import type { Project } from '@latchwork/core/model/project';
import type { Node, Segment } from '@latchwork/core/model/topology';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { generateProject } from '../../generate/harness-generator';

const project = generateProject({ wires: 400 });
const harness = deriveHarness(project);
const edited = (p: Project, call: Call): Project => {
  const result = dispatch(startHistory(p), call, { newId: countingIds(95_000_000), catalogue: [] });
  if (!result.ok) throw new Error(result.problem.reason);
  return result.value.project;
};

describe('routing after an edit', () => {
  it('looks for the ways over the changed segment only, and leaves other wires the very objects they were', () => {
    const branch = harness.segments.find((s) => s.wires.length > 0 && s.toConnectors.length > 0)!;
    const over = new Set(branch.wires.map((w) => w.wire.id));
    expect(over.size).toBeLessThan(20);
    const node = branch.toNode!;
    const after = deriveHarness(
      edited(project, {
        id: 'nodes.move',
        args: { moves: [{ id: node.id, to: { x: node.position.x + 7, y: node.position.y } }] },
      }),
      harness,
    );
    // As many questions as there are different pairs of nodes among these wires.
    const pairs = new Set(branch.wires.map((w) => `${w.from.node} ${w.to.node}`));
    expect(after.router.searches()).toBe(pairs.size);
    for (const w of after.wires)
      if (over.has(w.wire.id)) expect(w.route).not.toBe(harness.wireById.get(w.wire.id)!.route);
      else expect(w).toBe(harness.wireById.get(w.wire.id));
    expect(harness.wires.length - over.size).toBeGreaterThan(350);
  });

  it('looks for nothing where a segment keeps its length', () => {
    const s = harness.segments.find((u) => u.wires.length > 0)!.segment;
    const after = deriveHarness(
      edited(project, { id: 'segment.edit', args: { id: s.id, change: { bendRadiusMm: 50 } } }),
      harness,
    );
    expect(after.router.searches()).toBe(0);
    expect(after.wires.find((w) => w.segments.some((x) => x.id === s.id))!.segments.find((x) => x.id === s.id)!.bendRadiusMm).toBe(50); // prettier-ignore
  });

  it('takes a new segment into account for those whom it serves', () => {
    const [a, b] = [project.nodes[0]!.id, project.nodes[3]!.id];
    const call: Call = { id: 'segment.add', args: { from: a, to: b, lengthMm: 1 } };
    const after = deriveHarness(edited(project, call), harness);
    const fresh = deriveHarness(edited(project, call));
    expect(after.wires.map((w) => w.route)).toEqual(fresh.wires.map((w) => w.route));
    const same = after.wires.filter((w) => w === harness.wireById.get(w.wire.id));
    expect(same.length).toBeGreaterThan(0);
    expect(same.length).toBeLessThan(after.wires.length);
  });
});

it('gives after any edits of a mesh the ways that a new router finds', () => {
  const edge = fc.tuple(fc.nat(7), fc.nat(7), fc.integer({ min: 1, max: 30 }));
  const edit = fc.record({ kind: fc.nat(3), pick: fc.nat(100), edge });
  fc.assert(
    fc.property(
      fc.array(edge, { minLength: 4, maxLength: 14 }),
      fc.array(edit, { minLength: 1, maxLength: 6 }),
      (edges, edits) => {
        const nodes: Node[] = Array.from({ length: 8 }, (_, i) => ({
          id: `n${i}`,
          designator: `N${i}`,
          position: { x: 0, y: 0 },
        }));
        let made = 0;
        const segment = ([a, b, lengthMm]: [number, number, number]): Segment => ({
        id: `s${made++}`, designator: 'S', from: `n${a}`, to: `n${b}`, lengthMm,
      }); // prettier-ignore
        let segments = edges.filter(([a, b]) => a !== b).map(segment);
        let router = createRouter(nodes, segments);
        const ask = (r: typeof router) => nodes.map((a) => nodes.map((b) => r.between(a.id, b.id)));
        ask(router);
        for (const { kind, pick, edge: e } of edits) {
          const at = pick % Math.max(1, segments.length);
          if (kind === 0 && e[0] !== e[1]) segments = [...segments, segment(e)];
          else if (kind === 1) segments = segments.filter((_, i) => i !== at);
          else segments = segments.map((s, i) => (i === at ? { ...s, lengthMm: e[2] } : s));
          router = createRouter(nodes, segments, router);
          expect(ask(router)).toEqual(ask(createRouter(nodes, segments)));
        }
      },
    ),
    { numRuns: 300 },
  );
}, 60_000);

it('keeps pinned ways whose segments stay, and follows an undo', () => {
  const w = harness.wires.find((x) => x.route.found && x.route.segments.length > 1)!;
  const path = w.route.found ? [...w.route.segments] : [];
  const pinned = edited(project, { id: 'wire.pin-path', args: { wires: [w.wire.id], path } });
  const first = deriveHarness(pinned, harness);
  const far = first.segments.find((s) => !path.includes(s.segment.id) && s.toConnectors.length > 0)!;
  const start = startHistory(pinned);
  const result = dispatch(start, { id: 'segment.edit', args: { id: far.segment.id, change: { lengthMm: 999 } } }, { newId: countingIds(1), catalogue: [] }); // prettier-ignore
  if (!result.ok) throw new Error(result.problem.reason);
  const second = deriveHarness(result.value.project, first);
  expect(second.wireById.get(w.wire.id)!.route).toBe(first.wireById.get(w.wire.id)!.route);
  const back = deriveHarness(undo(result.value).project, second);
  expect(back.wires.map((x) => x.route)).toEqual(first.wires.map((x) => x.route));
});
