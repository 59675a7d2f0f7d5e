import { dispatch } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { countingIds } from '@latchwork/core/model/ids';
import { tiny } from '@latchwork/core/model/tiny';
import type { Project } from '@latchwork/core/model/project';
import type { Direction } from '@latchwork/core/tools/nudge';
import { nudgeBoard } from '@latchwork/core/tools/formboard/nudge-board';
import { describe, expect, it } from 'vitest';

/** The tiny harness with its segment drawn from right to left, a tie at 100 mm and a label. */
const board = (): Project =>
  tiny(({ project: p, newId }) => {
    const s = p.segments[0]!;
    delete s.lengthMm;
    [s.from, s.to] = [s.to, s.from];
    const part = newId();
    p.parts.push({ kind: 'tie', id: part, maker: 'Invented', partNumber: 'T', description: 'Tie' });
    p.ties.push({ id: newId(), part, station: { segment: s.id, atMm: 100 } });
  });

function after(project: Project, id: string, direction: Direction, fine = false): Project {
  const call = nudgeBoard(project, new Set([id]), direction, fine);
  if (!call) return project;
  const done = dispatch(startHistory(project), call, { newId: countingIds(1), catalogue: [] });
  if (!done.ok) throw new Error(done.problem.reason);
  return done.value.project;
}

describe('an arrow on the formboard', () => {
  it('moves both ends of a segment', () => {
    const p = board();
    expect(after(p, p.segments[0]!.id, 'up').nodes.map((n) => n.position)).toEqual([
      { x: 0, y: -5 },
      { x: 300, y: -5 },
    ]);
  });

  it('slides a thing the way that the arrow points, whichever way its run was drawn', () => {
    const p = board();
    // From the node at the right: to the right means nearer to that.
    expect(after(p, p.ties[0]!.id, 'right').ties[0]!.station.atMm).toBe(95);
    expect(after(p, p.ties[0]!.id, 'left', true).ties[0]!.station.atMm).toBe(101);
  });

  it('stops at the end of the run', () => {
    const p = board();
    let at = p;
    for (let i = 0; i < 30; i++) at = after(at, p.ties[0]!.id, 'right');
    expect(at.ties[0]!.station.atMm).toBe(0);
    expect(nudgeBoard(at, new Set([p.ties[0]!.id]), 'right', false)).toBeNull();
  });

  it('turns a connector at its node, and leaves alone what has no place here', () => {
    const p = board();
    const x1 = p.connectors.find((c) => c.designator === 'X1')!;
    const turned = after(p, x1.id, 'left').connectors.find((c) => c.id === x1.id)!;
    // It looked to the left, away from its run: 180 degrees, less 15.
    expect(turned.formboardAngleDeg).toBe(165);
    expect(nudgeBoard(p, new Set([p.wires[0]!.id]), 'left', false)).toBeNull();
  });
});
