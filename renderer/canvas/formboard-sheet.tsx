import { useEffect, useLayoutEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import { useStore } from 'zustand';
import { snapped } from '@latchwork/core/tools/snap';
import { appStore, keyOfRef, type AppStore } from '../app/store';
import { useTokens } from '../ui/use-tokens';
import { toSheet } from './camera';
import { paintGrid } from './draw/grid';
import { lookOf } from './draw/look';
import type { Pen } from './draw/pen';
import { FindingTip } from './finding-tip';
import { paintBoardChanges, useBoardChanges } from './compare/use-board-changes';
import './formboard/board.css';
import { boxesOf } from './formboard/board-boxes';
import { BoardEmpty } from './formboard/board-empty';
import { boardKey } from './formboard/board-keys';
import { createBoardModel } from './formboard/board-model';
import { BoardNotes } from './formboard/board-notes';
import { BoardOutline, describeOnBoard } from './formboard/board-outline';
import { paintBoardTop, type BoardOver } from './formboard/board-top';
import { paintBoardBadges } from './formboard/draw/board-badges';
import { paintBoard, type BoardPaint } from './formboard/draw/paint-board';
import { doubleClick } from './formboard/double-click';
import { offerBoard } from './formboard/board-handle';
import { cursorOf, useBoardTop } from './formboard/use-board-top';
import { ScaleBar } from './formboard/scale-bar';
import { buildBoardScene } from '@latchwork/core/derive/formboard/scene/build-board-scene';
import { litBy } from './formboard/scene/lit';
import { CONNECTOR_DRAG_TYPE, placeOnBoard, placeSplice, SPLICE_DRAG_TYPE } from './formboard/unplaced';
import { useBoardBadges } from './formboard/use-board-badges';
import type { Interaction } from './interaction';
import type { Badge } from './scene/badges';
import { SheetVoice } from './sheet-outline';
import { SheetQuestion } from './sheet-question';
import { SheetRoot } from './sheet-root';
import { part, SheetSurface } from './sheet-surface';
import { SheetTools, SheetZoom } from './sheet-tools';
import { FORMBOARD_TOOLS } from './sheet-tool-ids';
import { useSheet } from './use-sheet';

const HINT =
  'Tab walks over nodes, segments and what lies on them, arrows move what is selected, X splits a segment, A inserts a branch, ' +
  'N sets a node, G draws a segment, M measures. F1 lists all keys.';

/** The formboard: the harness at true scale. Fills its parent and works on the store's project. */
export function FormboardSheet({ store = appStore }: { store?: AppStore }): ReactNode {
  const look = lookOf(useTokens());
  const harness = useStore(store, (s) => s.harness);
  const selection = useStore(store, (s) => s.view.selection);
  const pointed = useStore(store, (s) => s.view.hover);
  const unit = useStore(store, (s) => s.view.lengthUnit);
  const camera = useStore(store, (s) => s.view.formboardCamera);
  const scene = useMemo(() => buildBoardScene(harness), [harness]);
  const badges = useBoardBadges(store, scene);
  const boxes = useMemo(() => boxesOf(scene), [scene]);
  const { viewport, onSize } = useSheet(store, 'formboardCamera', boxes);
  const [model] = useState(() => createBoardModel(store, viewport));
  const { interaction } = model;
  useLayoutEffect(() => model.show(scene, badges), [model, scene, badges]);

  const changes = useBoardChanges(store, scene);
  const lifted = useStore(interaction.state, (s) => s.lifted);
  const parts = useMemo(
    () => [
      part('board', paintStill, { scene, unit, skip: lifted }),
      part('findings', paintMarks, { badges, skip: lifted }),
      part('changes', paintBoardChanges, changes),
    ],
    [scene, unit, lifted, badges, changes],
  );
  const over = useMemo<BoardOver>(
    () => ({
      scene,
      unit,
      selected: litBy(scene, selection),
      pointed: litBy(scene, pointed ? [keyOfRef(pointed)] : []),
    }),
    [scene, unit, selection, pointed],
  );
  const top = useMemo(() => part('top', paintTop, { over, interaction }), [over, interaction]);
  useBoardTop(interaction, viewport, over);
  const cursor = useStore(interaction.state, cursorOf);
  const hovered = useStore(interaction.state, (s) => (s.hover?.target.on === 'badge' ? s.hover : null));
  const badge = hovered?.target.on === 'badge' ? hovered.target.key : null;

  const root = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (root.current) offerBoard(store, { viewport, interaction, element: root.current });
  }, [store, viewport, interaction]);

  return (
    <div
      ref={root}
      className="sheet-fill"
      // Where the board lies, for tests that point at it with a real mouse.
      data-camera={camera ? `${camera.x} ${camera.y} ${camera.pxPerMm}` : undefined}
    >
      <SheetRoot
        label="Formboard"
        hint={HINT}
        viewport={viewport}
        interaction={interaction}
        cursor={cursor}
        onKey={(e) => {
          if (!boardKey(e, store, interaction)) return;
          e.preventDefault();
          e.stopPropagation();
        }}
        onDoubleClick={(screen, alt) => doubleClick(store, model, toSheet(viewport.camera(), screen), alt)}
        onDropOther={(transfer, screen) => {
          const id = transfer.getData(CONNECTOR_DRAG_TYPE);
          const splice = transfer.getData(SPLICE_DRAG_TYPE);
          const at = toSheet(viewport.camera(), screen);
          if (id) placeOnBoard(store, id, snapped(at, store.getState().view.snap), model.hit(at));
          if (splice) placeSplice(store, interaction, splice, at, model.hit(at));
          return id !== '' || splice !== '';
        }}
      >
        <SheetSurface viewport={viewport} look={look} parts={parts} top={top} onSize={onSize} />
        <BoardEmpty store={store} />
        <BoardNotes
          store={store}
          middle={() => {
            const { width, height } = viewport.size();
            return snapped(toSheet(viewport.camera(), { x: width / 2, y: height / 2 }), true);
          }}
        />
        <ScaleBar viewport={viewport} unit={unit} />
        <SheetTools store={store} tools={FORMBOARD_TOOLS} />
        <SheetZoom store={store} viewport={viewport} findings />
        {hovered && (
          <FindingTip findings={badges.find((b) => b.key === badge)?.findings ?? []} at={hovered.screen} />
        )}
        <SheetQuestion interaction={interaction} viewport={viewport} />
        <BoardOutline store={store} scene={scene} />
        <SheetVoice
          store={store}
          interaction={interaction}
          describe={(key) => describeOnBoard(scene, key, unit)}
        />
      </SheetRoot>
    </div>
  );
}

const paintStill = (pen: Pen, content: BoardPaint): void => {
  paintGrid(pen);
  paintBoard(pen, content);
};

const paintMarks = (
  pen: Pen,
  { badges, skip }: { badges: readonly Badge[]; skip: ReadonlySet<string> },
): void => paintBoardBadges(pen, skip.size ? badges.filter((b) => !skip.has(b.key)) : badges);

const paintTop = (pen: Pen, { over, interaction }: { over: BoardOver; interaction: Interaction }): void =>
  paintBoardTop(pen, over, interaction.state.getState());
