import { useEffect, useLayoutEffect, useMemo, useState, type ReactNode } from 'react';
import { useStore } from 'zustand';
import { boxAround, type Box } from '@latchwork/core/base/point';
import type { PartKind } from '@latchwork/core/model/parts/part';
import { snapped } from '@latchwork/core/tools/snap';
import { appStore, type AppStore } from '../app/store';
import { useTokens } from '../ui/use-tokens';
import { toSheet } from './camera';
import { paintGrid } from './draw/grid';
import { lookOf } from './draw/look';
import type { Pen } from './draw/pen';
import { boardHit, boardKeysInBox } from './formboard/board-hit';
import { boardKey } from './formboard/board-keys';
import { BoardOutline } from './formboard/board-outline';
import { boardBounds, buildBoardScene, litBy, type BoardScene } from './formboard/board-scene';
import { paintBoardTop } from './formboard/board-top';
import { paintBoard, type BoardLook } from './formboard/paint-board';
import { CONNECTOR_DRAG_TYPE, placeOnBoard, Unplaced } from './formboard/unplaced';
import { createInteraction, type Interaction, type SheetAccess } from './interaction';
import { SheetVoice } from './sheet-outline';
import { SheetQuestion } from './sheet-question';
import { SheetRoot } from './sheet-root';
import { part, SheetSurface } from './sheet-surface';
import { SheetTools, SheetZoom } from './sheet-tools';
import { FORMBOARD_TOOLS } from './sheet-tool-ids';
import { useSheet, type SheetBoxes } from './use-sheet';

const HINT =
  'Tab walks over the nodes, arrows move them, N sets a node, G draws a segment from node to node.';
/** Everything is drawn on the top canvas while nodes move, for every segment may follow. */
const ALL: ReadonlySet<string> = new Set(['all']);

const ON_BOARD: ReadonlySet<PartKind> = new Set(['covering', 'tie']);

/** What the interaction asks about, told by each render. */
function createBoardModel(store: AppStore, camera: Pick<SheetAccess, 'camera' | 'panBy'>) {
  let scene = buildBoardScene(store.getState().harness);
  const hit: SheetAccess['hit'] = (at) => boardHit(scene, at, camera.camera().pxPerMm);
  return {
    hit,
    show(next: BoardScene): void {
      scene = next;
    },
    interaction: createInteraction(store, {
      tools: FORMBOARD_TOOLS,
      ...camera,
      hit,
      keysInBox: (box) => boardKeysInBox(scene, box),
      liftedBy: () => ALL,
      unsuited: (p) =>
        ON_BOARD.has(p.kind)
          ? null
          : 'Only what is put on a run has its place here. Connectors are placed on the diagram.',
    }),
  };
}

/** The formboard: nodes and segments at true scale. Fills its parent and works on the store's project. */
export function FormboardSheet({ store = appStore }: { store?: AppStore }): ReactNode {
  const look = lookOf(useTokens());
  const harness = useStore(store, (s) => s.harness);
  const selection = useStore(store, (s) => s.view.selection);
  const lengthUnit = useStore(store, (s) => s.view.lengthUnit);
  const scene = useMemo(() => buildBoardScene(harness), [harness]);
  const boxes = useMemo(() => boxesOf(scene), [scene]);
  const { viewport, onSize } = useSheet(store, 'formboardCamera', boxes);
  const [model] = useState(() => createBoardModel(store, viewport));
  const { interaction } = model;
  useLayoutEffect(() => model.show(scene), [model, scene]);

  const lifted = useStore(interaction.state, (s) => s.lifted.size > 0);
  const boardLook = useMemo<BoardLook>(
    () => ({ lengthUnit, lit: litBy(scene, selection) }),
    [lengthUnit, scene, selection],
  );
  const parts = useMemo(
    () => [part('board', paintStill, { scene, look: boardLook, lifted })],
    [scene, boardLook, lifted],
  );
  const top = useMemo(
    () => part('top', paintTop, { scene, look: boardLook, interaction }),
    [scene, boardLook, interaction],
  );
  useEffect(() => {
    viewport.showTop(false);
    return interaction.state.subscribe((now, was) => {
      if (now.gesture === was.gesture || now.gesture?.is === 'pan') return;
      viewport.showTop(now.gesture !== null);
      viewport.drawTop();
    });
  }, [interaction, viewport]);
  const cursor = useStore(interaction.state, ({ gesture, hover }) =>
    gesture?.is === 'pan'
      ? 'grabbing'
      : hover?.target.on === 'node'
        ? 'move'
        : hover?.target.on === 'sheet'
          ? 'default'
          : 'pointer',
  );

  return (
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
      onDoubleClick={(screen) => {
        const at = toSheet(viewport.camera(), screen);
        if (model.hit(at).on !== 'sheet') return;
        const { dispatch, view } = store.getState();
        dispatch({ id: 'node.add', args: { position: snapped(at, view.snap) } });
      }}
      onDropOther={(transfer, screen) => {
        const id = transfer.getData(CONNECTOR_DRAG_TYPE);
        const at = toSheet(viewport.camera(), screen);
        if (id) placeOnBoard(store, id, snapped(at, store.getState().view.snap), model.hit(at));
        return id !== '';
      }}
    >
      <SheetSurface viewport={viewport} look={look} parts={parts} top={top} onSize={onSize} />
      <Unplaced
        store={store}
        middle={() => {
          const { width, height } = viewport.size();
          return snapped(toSheet(viewport.camera(), { x: width / 2, y: height / 2 }), true);
        }}
      />
      <SheetTools store={store} tools={FORMBOARD_TOOLS} />
      <SheetZoom store={store} viewport={viewport} />
      <SheetQuestion interaction={interaction} viewport={viewport} />
      <BoardOutline store={store} scene={scene} />
      <SheetVoice store={store} interaction={interaction} />
    </SheetRoot>
  );
}

interface Still {
  readonly scene: BoardScene;
  readonly look: BoardLook;
  readonly lifted: boolean;
}

const paintStill = (pen: Pen, { scene, look, lifted }: Still): void => {
  paintGrid(pen);
  if (!lifted) paintBoard(pen, scene, look);
};

const paintTop = (
  pen: Pen,
  { scene, look, interaction }: { scene: BoardScene; look: BoardLook; interaction: Interaction },
): void => paintBoardTop(pen, scene, look, interaction.state.getState());

function boxesOf(scene: BoardScene): SheetBoxes {
  const ofIds = (ids: Iterable<string>): Box | null => {
    const lit = litBy(scene, new Set(ids));
    const points = [
      ...scene.nodes.filter((n) => lit.has(n.node.id)).map((n) => n.at),
      ...scene.segments.filter((s) => lit.has(s.segment.id)).flatMap((s) => s.points),
      ...scene.connectors.filter((c) => lit.has(c.use.resolved.connector.id)).map((c) => c.at),
    ];
    const box = boxAround(points.map((p) => ({ minX: p.x, minY: p.y, maxX: p.x, maxY: p.y })));
    return box && { minX: box.minX - 20, minY: box.minY - 20, maxX: box.maxX + 20, maxY: box.maxY + 20 };
  };
  return { all: () => boardBounds(scene), ofKeys: ofIds, ofRefs: (refs) => ofIds(refs.map((r) => r.id)) };
}
