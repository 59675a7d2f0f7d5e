import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory, undo, type History } from '@latchwork/core/commands/history';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Harness } from '@latchwork/core/derive/harness';
import { countingIds } from '@latchwork/core/model/ids';
import type { Project } from '@latchwork/core/model/project';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { generateProject } from '../../generate/harness-generator';
import { demoFromFile } from '../demos/demo-files';

/** An edit of the formboard for a number, on whatever is there now. */
function editFor(n: number, { project: p }: History, harness: Harness): Call | null {
  const pick = <T>(list: readonly T[]): T | undefined => list[(n >> 4) % Math.max(1, list.length)];
  const [node, segment, wire, connector] = [
    pick(p.nodes),
    pick(p.segments),
    pick(harness.wires),
    pick(p.connectors),
  ];
  if (!node || !segment || !wire || !connector) return null;
  const use = harness.segments.find((u) => u.segment.id === segment.id);
  const at = { node: n & 16 ? segment.from : segment.to, segment: segment.id };
  const path = wire.route.found ? [...wire.route.segments] : [];
  switch (n % 11) {
    case 0:
      return {
        id: 'nodes.move',
        args: {
          moves: [{ id: node.id, to: { x: node.position.x + (n % 90) - 45, y: node.position.y + 9 } }],
        },
      };
    case 1:
      return {
        id: 'segment.split',
        args: { station: { segment: segment.id, atMm: (use?.lengthMm ?? 0) * 0.4 } },
      };
    case 2:
      return { id: 'segment.join', args: { node: node.id } };
    case 3:
      return { id: 'branch.rotate', args: { ...at, byDeg: n % 360 } };
    case 4:
      return {
        id: 'branch.insert',
        args: { at: { node: node.id }, to: { x: n, y: -n }, connectors: n & 32 ? [connector.id] : [] },
      };
    case 5:
      return { id: 'wire.pin-path', args: { wires: [wire.wire.id], path } };
    case 6:
      return {
        id: 'segment.edit',
        args: { id: segment.id, change: { lengthMm: n & 32 ? 100 + (n % 50) : null, plusMm: 3 } },
      };
    case 7:
      return { id: 'objects.remove', args: { ids: [n & 64 ? node.id : segment.id] } };
    case 8:
      return { id: 'segment.add', args: { from: node.id, to: segment.to } };
    case 9:
      return {
        id: 'connector.edit',
        args: { ids: [connector.id], change: { node: n & 32 ? node.id : null } },
      };
    default:
      return { id: 'wire.unpin-path', args: { wires: [wire.wire.id] } };
  }
}

const seen = (h: Harness) => ({
  wires: h.wires.map((w) => ({ wire: w.wire, route: w.route, segments: w.segments, length: w.length })),
  segments: h.segments.map((u) => ({
    segment: u.segment, lengthMm: u.lengthMm, from: u.fromNode, to: u.toNode,
    wires: u.wires.map((w) => w.wire.id), diameters: u.diametersMm,
    coverings: u.coverings.map((c) => [c.covering.id, c.fromMm, c.toMm]), ties: u.ties.map((t) => [t.tie.id, t.atMm]),
    connectors: [u.fromConnectors, u.toConnectors].map((list) => list.map((c) => c.connector.id)),
  })),
}); // prettier-ignore

it.each([
  ['a generated harness', generateProject({ wires: 40 }), 12],
  // Its thick bundles take long to pack.
  ['the weather station', demoFromFile('weather-station'), 4],
] as [string, Project, number][])(
  'after any edits of the formboard of %s, deriving on gives what deriving from the start gives',
  (_, start, numRuns) => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 20_000 }), { minLength: 1, maxLength: 9 }), (edits) => {
        const newId = countingIds(83_000_000);
        let history = startHistory(start);
        let harness = deriveHarness(start);
        let check = checkHarness(harness, RULES);
        for (const n of edits) {
          const call = editFor(n, history, harness);
          const result = call && dispatch(history, call, { newId, catalogue: [] });
          history = n % 13 === 0 ? undo(history) : result?.ok ? result.value : history;
          harness = deriveHarness(history.project, harness);
          check = checkHarness(harness, RULES, check);
          expect(seen(harness)).toEqual(seen(deriveHarness(structuredClone(history.project))));
        }
        const fresh = deriveHarness(structuredClone(history.project));
        expect(check.findings).toEqual(checkHarness(fresh, RULES).findings);
      }),
      // The example: a wire pinned to its shortest way, that way then not the shortest any more, then longer.
      { numRuns, examples: [[[10_224, 19_995, 12_782]]] },
    );
  },
  60_000,
);
