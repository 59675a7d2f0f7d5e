import { useMemo } from 'react';
import { boxAround, type Box } from '@latchwork/core/base/point';
import { useComparing } from '../../app/compare';
import { type AppStore, appStore } from '../../app/store';
import { paintConnectors } from '../draw/connectors';
import type { Pen } from '../draw/pen';
import { paintSplices } from '../draw/splices';
import { paintWires } from '../draw/wires';
import { boxOfKey, buildDiagramScene, type DiagramScene } from '../scene/diagram-scene';
import { keysOnSheet } from '../scene/keys-on-sheet';
import { type ChangeMark, changeMarks } from './change-marks';
import { paintMarks } from './paint-marks';

export interface DiagramChanges {
  readonly marks: readonly ChangeMark[];
  /** What is no longer there, as it stood. */
  readonly ghosts: Pick<DiagramScene, 'connectors' | 'splices'> & {
    readonly wires: DiagramScene['wires']['list'];
  };
}

const NOTHING: DiagramChanges = { marks: [], ghosts: { connectors: [], splices: [], wires: [] } };

/** What the diagram shows of a comparison. */
export function useDiagramChanges(store: AppStore, scene: DiagramScene): DiagramChanges {
  const comparing = useComparing();
  const before = comparing?.before.harness;
  const then = useMemo(() => before && buildDiagramScene(before), [before]);
  return useMemo(() => {
    if (!comparing || !then || store !== appStore) return NOTHING;
    const { comparison } = comparing;
    const gone = new Set(comparison.rows.flatMap((r) => r.gone.map((g) => g.id)));
    const boxIn =
      (of: DiagramScene) =>
      (keys: readonly string[]): Box | null =>
        boxAround(keys.flatMap((key) => keysOnSheet(of, key)).flatMap((key) => boxOfKey(of, key) ?? []));
    return {
      marks: changeMarks(comparison, boxIn(scene), boxIn(then), ({ type }) => type !== 'node' && type !== 'segment'), // prettier-ignore
      ghosts: {
        connectors: then.connectors.filter((c) => gone.has(c.id)),
        splices: then.splices.filter((s) => gone.has(s.id)),
        wires: then.wires.list.filter((w) => gone.has(w.id)),
      },
    };
  }, [comparing, then, scene, store]);
}

const NONE: ReadonlySet<string> = new Set();

export function paintDiagramChanges(pen: Pen, { marks, ghosts }: DiagramChanges): void {
  if (pen.hasty || marks.length === 0) return;
  const { ctx } = pen;
  ctx.save();
  ctx.globalAlpha = 0.35;
  paintWires(pen, ghosts.wires, NONE);
  paintConnectors(pen, ghosts.connectors, NONE);
  paintSplices(pen, ghosts.splices, NONE);
  ctx.restore();
  paintMarks(pen, marks);
}
