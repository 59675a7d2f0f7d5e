import { useEffect, useLayoutEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import { useStore } from 'zustand';
import { byId } from '@latchwork/core/base/by-id';
import { boxAround, type Box } from '@latchwork/core/base/point';
import { snapped } from '@latchwork/core/tools/snap';
import { appStore, keyOfRef, type AppStore } from '../app/store';
import { useTokens } from '../ui/use-tokens';
import { toSheet } from './camera';
import { paintGrid } from './draw/grid';
import { lookOf } from './draw/look';
import type { Pen } from './draw/pen';
import { FindingTip } from './finding-tip';
import './formboard/board.css';
import { bendAt } from './formboard/board-commands';
import { BoardEmpty } from './formboard/board-empty';
import { boardKey } from './formboard/board-keys';
import { createBoardModel, type BoardModel } from './formboard/board-model';
import { BoardNotes } from './formboard/board-notes';
import { BoardOutline, describeOnBoard } from './formboard/board-outline';
import { paintBoardTop, topIsEmpty, type BoardOver } from './formboard/board-top';
import { paintBoardBadges } from './formboard/draw/board-badges';
import { paintBoard, type BoardPaint } from './formboard/draw/paint-board';
import { offerBoard } from './formboard/board-handle';
import { ScaleBar } from './formboard/scale-bar';
import type { BoardScene } from '@latchwork/core/derive/formboard/scene/board-items';
import { boardBounds, buildBoardScene } from '@latchwork/core/derive/formboard/scene/build-board-scene';
import { litBy } from './formboard/scene/lit';
import { CONNECTOR_DRAG_TYPE, placeOnBoard, placeSplice, SPLICE_DRAG_TYPE } from './formboard/unplaced';
import { useBoardBadges } from './formboard/use-board-badges';
import type { Interaction, InteractionState } from './interaction';
import type { Badge } from './scene/badges';
import { SheetVoice } from './sheet-outline';
import { SheetQuestion } from './sheet-question';
import { SheetRoot } from './sheet-root';
import { part, SheetSurface } from './sheet-surface';
import { SheetTools, SheetZoom } from './sheet-tools';
import { FORMBOARD_TOOLS } from './sheet-tool-ids';
import { useSheet, type SheetBoxes } from './use-sheet';

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

  const lifted = useStore(interaction.state, (s) => s.lifted);
  const parts = useMemo(
    () => [
      part('board', paintStill, { scene, unit, skip: lifted }),
      part('findings', paintMarks, { badges, skip: lifted }),
    ],
    [scene, unit, lifted, badges],
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
  useTopDrawing(interaction, viewport, over);
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

/** A double click sets a node: alone on the board, or into a run, which it splits. With Alt it bends the run. */
function doubleClick(store: AppStore, model: BoardModel, at: { x: number; y: number }, alt: boolean): void {
  const { dispatch, view, history } = store.getState();
  const target = model.hit(at);
  const on =
    target.on === 'segment' ? target : target.on === 'covering' && target.end === null ? target : undefined;
  if (target.on === 'sheet') dispatch({ id: 'node.add', args: { position: snapped(at, view.snap && !alt) } });
  if (!on) return;
  const id = on.on === 'segment' ? on.id : byId(history.project.coverings).get(on.id)?.from.segment;
  const segment = byId(history.project.segments).get(id ?? '');
  if (!segment || on.atMm === undefined) return;
  const atMm = Math.round(on.atMm);
  const call = alt
    ? bendAt(history.project, segment, snapped(at, view.snap))
    : ({ id: 'segment.split', args: { station: { segment: segment.id, atMm } } } as const);
  if (call) dispatch(call);
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

/** Draws the top canvas when a gesture or the thing under the pointer changes, and hides it while it is empty. */
function useTopDrawing(
  interaction: Interaction,
  viewport: ReturnType<typeof useSheet>['viewport'],
  over: BoardOver,
): void {
  useEffect(() => {
    const show = (s: InteractionState): void => viewport.showTop(!topIsEmpty(over, s));
    show(interaction.state.getState());
    return interaction.state.subscribe((now, was) => {
      if (now.gesture === was.gesture && sameTarget(now, was)) return;
      if (now.gesture?.is === 'pan' && was.gesture?.is === 'pan') return;
      show(now);
      viewport.drawTop();
    });
  }, [interaction, viewport, over]);
}

/** The same thing under the pointer, wherever along a run. */
function sameTarget(a: InteractionState, b: InteractionState): boolean {
  const key = (s: InteractionState): string => {
    const { atMm: _, ...target } = (s.hover?.target ?? { on: 'sheet' }) as { on: string; atMm?: number };
    return JSON.stringify(target);
  };
  return a.hover?.target === b.hover?.target || key(a) === key(b);
}

function cursorOf({ gesture, hover }: InteractionState): string {
  if (gesture?.is === 'pan' || gesture?.is === 'turn-branch' || gesture?.is === 'turn-connector')
    return 'grabbing';
  if (gesture?.is === 'draw-dimension' || gesture?.is === 'pin-path') return 'crosshair';
  switch (hover?.target.on) {
    case 'node':
    case 'via':
    case 'tie':
    case 'fixing':
    case 'label':
    case 'covering':
    case 'dimension':
      return 'move';
    case 'branch-handle':
      return 'grab';
    case undefined:
    case 'sheet':
      return 'default';
    default:
      return 'pointer';
  }
}

const AROUND_MM = 20;

function boxesOf(scene: BoardScene): SheetBoxes {
  const ofKeys = (keys: Iterable<string>): Box | null => {
    const { ids, ways } = litBy(scene, keys);
    const seen = (id: string): boolean => ids.has(id) || ways.has(id);
    const points = [
      ...scene.nodes.filter((n) => seen(n.id)).map((n) => n.at),
      ...scene.segments.filter((s) => seen(s.id)).flatMap((s) => s.points),
      ...scene.connectors.filter((c) => seen(c.id)).map((c) => c.at),
      ...scene.splices.filter((s) => seen(s.id)).map((s) => s.at),
      ...scene.things.filter((t) => seen(t.id)).map((t) => t.at),
      ...scene.coverings.filter((c) => seen(c.id)).flatMap((c) => c.points),
      ...scene.dimensions.filter((d) => seen(d.id)).flatMap((d) => d.datums.map((f) => f.foot)),
    ];
    const box = boxAround(points.map((p) => ({ minX: p.x, minY: p.y, maxX: p.x, maxY: p.y })));
    return (
      box && {
        minX: box.minX - AROUND_MM,
        minY: box.minY - AROUND_MM,
        maxX: box.maxX + AROUND_MM,
        maxY: box.maxY + AROUND_MM,
      }
    );
  };
  return { all: () => boardBounds(scene), ofKeys, ofRefs: (refs) => ofKeys(refs.map(keyOfRef)) };
}
