import { useEffect, useLayoutEffect, useMemo, useRef, useState, type ReactNode } from 'react';
import { useStore } from 'zustand';
import { byId } from '@latchwork/core/base/by-id';
import { boxAround, type Box } from '@latchwork/core/base/point';
import { uncovered } from '@latchwork/core/decisions/standing';
import { appStore, keyOfRef, type AppStore } from '../app/store';
import { useToday } from '../app/today';
import { useTokens } from '../ui/use-tokens';
import { diagramKey } from './diagram-keys';
import { paintDiagramChanges, useDiagramChanges } from './compare/use-diagram-changes';
import { createDiagramModel } from './diagram-model';
import { paintBodies, paintFindings, paintGround, paintLines, type Still } from './diagram-parts';
import { lookOf } from './draw/look';
import { overlayIsEmpty, paintOverlay, type Overlay } from './draw/overlay';
import type { Pen } from './draw/pen';
import { FindingTip } from './finding-tip';
import type { Interaction, InteractionState } from './interaction';
import { placeBadges } from './scene/badges';
import { keysOnSheet } from './scene/keys-on-sheet';
import { boxOfKey, buildDiagramScene, sceneBounds, type DiagramScene } from './scene/diagram-scene';
import { offerSheet } from './sheet-handle';
import { SheetOutline, SheetVoice } from './sheet-outline';
import { SheetQuestion } from './sheet-question';
import { SheetRoot } from './sheet-root';
import { part, SheetSurface } from './sheet-surface';
import { SheetTools, SheetZoom } from './sheet-tools';
import { DIAGRAM_TOOLS } from './sheet-tool-ids';
import { useSheet, type SheetBoxes } from './use-sheet';

const HINT =
  'Tab walks over the objects, Enter goes into a connector and starts a wire from a cavity, arrows move, Delete removes.';

/** The diagram: fills its parent, draws the store's harness, and turns pointer and keys into commands. */
export function DiagramSheet({ store = appStore }: { store?: AppStore }): ReactNode {
  const look = lookOf(useTokens());
  const harness = useStore(store, (s) => s.harness);
  const check = useStore(store, (s) => s.check);
  const findingsShown = useStore(store, (s) => s.view.findingsShown);
  const camera = useStore(store, (s) => s.view.diagramCamera);
  const day = useToday();
  const scene = useScene(harness);
  // Findings come a moment after the edit; until then those of before are placed on the scene of now. What a decision in
  // force covers has had its answer.
  const badges = useMemo(() => {
    const faults = uncovered(check.harness.project, check.findings, day).filter((f) => !f.open);
    // What is critical cannot be hidden.
    return placeBadges(findingsShown ? faults : faults.filter((f) => f.severity === 'critical'), scene);
  }, [check, day, scene, findingsShown]);
  const boxes = useMemo<SheetBoxes>(() => {
    const around = (keys: Iterable<string>): Box | null =>
      boxAround(
        [...keys].flatMap((key) => keysOnSheet(scene, key)).flatMap((key) => boxOfKey(scene, key) ?? []),
      );
    return {
      all: () => sceneBounds(scene),
      ofKeys: around,
      ofRefs: (refs) => around(refs.map(keyOfRef)),
    };
  }, [scene]);
  const { viewport, onSize } = useSheet(store, 'diagramCamera', boxes);

  const [model] = useState(() => createDiagramModel(store, viewport));
  const { interaction } = model;
  useLayoutEffect(() => model.show(scene, badges), [model, scene, badges]);

  const lifted = useStore(interaction.state, (s) => s.lifted);
  const changes = useDiagramChanges(store, scene);
  const still = useMemo<Still>(() => ({ scene, lifted }), [scene, lifted]);
  const parts = useMemo(
    () => [
      part('ground', paintGround, still),
      part('lines', paintLines, still),
      part('bodies', paintBodies, still),
      part('findings', paintFindings, { badges, still }),
      part('changes', paintDiagramChanges, changes),
    ],
    [still, badges, changes],
  );
  const overlay = useOverlay(store, scene);
  const top = useMemo(() => part('top', paintTop, { overlay, interaction }), [overlay, interaction]);
  useTopDrawing(interaction, viewport, overlay);
  const cursor = useStore(interaction.state, (s) => cursorOf(s, overlay));
  const hovered = useStore(interaction.state, (s) => (s.hover?.target.on === 'badge' ? s.hover : null));

  const root = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (root.current) offerSheet(store, { viewport, interaction, element: root.current });
  }, [store, viewport, interaction]);

  return (
    <div
      ref={root}
      className="sheet-fill"
      // Where the sheet lies, for tests that point at it with a real mouse.
      data-camera={camera ? `${camera.x} ${camera.y} ${camera.pxPerMm}` : undefined}
    >
      <SheetRoot
        label="Diagram"
        hint={HINT}
        viewport={viewport}
        interaction={interaction}
        cursor={cursor}
        onKey={(e) => {
          if (!diagramKey(e, store, interaction)) return;
          e.preventDefault();
          e.stopPropagation();
        }}
      >
        <SheetSurface viewport={viewport} look={look} parts={parts} top={top} onSize={onSize} />
        <SheetTools store={store} tools={DIAGRAM_TOOLS} />
        <SheetZoom store={store} viewport={viewport} findings />
        {hovered?.target.on === 'badge' && (
          <FindingTip
            findings={badges.find((b) => b.key === keyOfBadge(hovered))?.findings ?? []}
            at={hovered.screen}
          />
        )}
        <SheetQuestion interaction={interaction} viewport={viewport} />
        <SheetOutline store={store} interaction={interaction} />
        <SheetVoice store={store} interaction={interaction} />
      </SheetRoot>
    </div>
  );
}

const keyOfBadge = (hover: NonNullable<InteractionState['hover']>): string =>
  hover.target.on === 'badge' ? hover.target.key : '';

/** The scene of the harness; what an edit left alone is taken over from the scene before. */
function useScene(harness: DiagramScene['harness']): DiagramScene {
  const [scene, setScene] = useState(() => buildDiagramScene(harness));
  if (scene.harness === harness) return scene;
  const next = buildDiagramScene(harness, scene);
  setScene(next);
  return next;
}

function useOverlay(store: AppStore, scene: DiagramScene): Overlay {
  const selection = useStore(store, (s) => s.view.selection);
  const snap = useStore(store, (s) => s.view.snap);
  const inHand = useStore(store, (s) =>
    s.view.placing === null
      ? undefined
      : (byId(s.history.project.parts).get(s.view.placing) ?? byId(s.catalogue).get(s.view.placing)),
  );
  // What is selected elsewhere, a contact or a signal, shows at the objects it is seen at.
  const shown = useMemo(
    () => new Set([...selection].flatMap((key) => keysOnSheet(scene, key))),
    [scene, selection],
  );
  return useMemo(() => ({ scene, selection: shown, inHand, snap }), [scene, shown, inHand, snap]);
}

interface Top {
  readonly overlay: Overlay;
  readonly interaction: Interaction;
}

const paintTop = (pen: Pen, { overlay, interaction }: Top): void =>
  paintOverlay(pen, overlay, interaction.state.getState());

/** Draws the top canvas when a gesture or the thing under the pointer changes, and hides it while it is empty. */
function useTopDrawing(
  interaction: Interaction,
  viewport: ReturnType<typeof useSheet>['viewport'],
  overlay: Overlay,
): void {
  useEffect(() => {
    const show = (s: InteractionState): void => viewport.showTop(!overlayIsEmpty(overlay, s));
    show(interaction.state.getState());
    return interaction.state.subscribe((now, was) => {
      const same =
        now.gesture === was.gesture &&
        now.keyWire === was.keyWire &&
        sameTarget(now, was) &&
        (!overlay.inHand || now.hover?.at === was.hover?.at);
      if (same || (now.gesture?.is === 'pan' && was.gesture?.is === 'pan')) return;
      show(now);
      viewport.drawTop();
    });
  }, [interaction, viewport, overlay]);
}

function sameTarget(a: InteractionState, b: InteractionState): boolean {
  const [s, t] = [a.hover?.target, b.hover?.target];
  return s === t || (s !== undefined && t !== undefined && JSON.stringify(s) === JSON.stringify(t));
}

function cursorOf({ gesture, hover }: InteractionState, { inHand }: Overlay): string {
  if (gesture?.is === 'pan') return 'grabbing';
  if (inHand) return 'copy';
  switch (hover?.target.on) {
    case 'connector':
    case 'splice':
    case 'equipment':
      return 'move';
    case 'cavity':
    case 'wire-end':
      return 'crosshair';
    case 'wire':
    case 'badge':
    case 'mate':
      return 'pointer';
    default:
      return 'default';
  }
}
