import { useMemo } from 'react';
import { buildBoardScene } from '@latchwork/core/derive/formboard/scene/build-board-scene';
import type { BoardScene } from '@latchwork/core/derive/formboard/scene/board-items';
import { useComparing } from '../../app/compare';
import { type AppStore, appStore } from '../../app/store';
import type { Pen } from '../draw/pen';
import { boxesOf } from '../formboard/board-boxes';
import { type ChangeMark, changeMarks } from './change-marks';
import { paintMarks } from './paint-marks';

export interface BoardChanges {
  readonly marks: readonly ChangeMark[];
  /** Runs that are no longer there, as they lay, mm. */
  readonly ghosts: readonly (readonly { readonly x: number; readonly y: number }[])[];
}

const NOTHING: BoardChanges = { marks: [], ghosts: [] };

/** What the formboard shows of a comparison. Wires run in the trunk and have no place of their own there. */
export function useBoardChanges(store: AppStore, scene: BoardScene): BoardChanges {
  const comparing = useComparing();
  const before = comparing?.before.harness;
  const then = useMemo(() => before && buildBoardScene(before), [before]);
  return useMemo(() => {
    if (!comparing || !then || store !== appStore) return NOTHING;
    const { comparison } = comparing;
    const gone = new Set(comparison.rows.flatMap((r) => r.gone.map((g) => g.id)));
    return {
      marks: changeMarks(comparison, boxIn(scene), boxIn(then), ({ type }) => ON_BOARD.has(type)),
      ghosts: then.segments.filter((s) => gone.has(s.id)).map((s) => s.points),
    };
  }, [comparing, then, scene, store]);
} // prettier-ignore

const boxIn = (scene: BoardScene) => {
  const { ofKeys } = boxesOf(scene);
  return (keys: readonly string[]) => ofKeys(new Set(keys));
};

const ON_BOARD: ReadonlySet<string> = new Set([
  'connector', 'splice', 'node', 'segment', 'covering', 'tie', 'fixing', 'label', 'dimension',
]); // prettier-ignore

export function paintBoardChanges(pen: Pen, { marks, ghosts }: BoardChanges): void {
  const { ctx, look } = pen;
  ctx.save();
  ctx.strokeStyle = look.tokens.critical;
  ctx.globalAlpha = 0.5;
  ctx.lineWidth = 4;
  ctx.setLineDash([6, 6]);
  for (const points of ghosts) {
    ctx.beginPath();
    points.forEach((p, i) => (i === 0 ? ctx.moveTo(pen.x(p.x), pen.y(p.y)) : ctx.lineTo(pen.x(p.x), pen.y(p.y))));
    ctx.stroke();
  }
  ctx.restore();
  if (!pen.hasty) paintMarks(pen, marks);
} // prettier-ignore
