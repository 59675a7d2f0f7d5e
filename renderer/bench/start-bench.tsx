import type { Root } from 'react-dom/client';
import { TITLE_HEIGHT_MM } from '@latchwork/core/derive/symbol';
import { parseProject } from '@latchwork/core/model/parse';
import { App } from '../app/app';
import { appStore } from '../app/store';
import { toScreen } from '../canvas/camera';
import { boardOf } from '../canvas/formboard/board-handle';
import { buildDiagramScene } from '../canvas/scene/diagram-scene';
import { sheetOf, type SheetHandle } from '../canvas/sheet-handle';
import type { BenchScene } from './scene';
import { benchId, PX_PER_MM, projectOfScene } from './scene-to-project';

interface Bench {
  readonly ready: Promise<void>;
  load(scene: BenchScene): Promise<void>;
  nodeScreenPos(id: string): { readonly x: number; readonly y: number };
  settle(): Promise<void>;
  counts(): object;
  /** Opens a project, as it stands in a file, on the formboard with everything in view. */
  loadBoard(text: string): Promise<void>;
  /** Where a node of the formboard is on the screen, by its designator. */
  boardNodeScreenPos(designator: string): { readonly x: number; readonly y: number };
  readonly input: object;
}

declare global {
  interface Window {
    __bench?: Bench;
  }
}

/**
 * Opens the window with its panels put away and hands its sheet to a program that drives it with mouse and wheel:
 * `window.__bench`. Findings are hidden, for a scene of random wires is no harness and would be covered with them.
 */
export function startBench(root: Root): void {
  const { setView } = appStore.getState();
  setView({
    panelSizesPx: { shelf: 0, inspector: 0, ledger: 0 },
    findingsShown: false,
    snap: false,
    theme: 'light',
  });
  root.render(<App />);
  let sheet: SheetHandle | null = null;
  let scene: BenchScene | null = null;
  let board: SheetHandle | null = null;
  window.__bench = {
    ready: sheetOf(appStore).then((handle) => {
      sheet = handle;
    }),
    async load(given) {
      scene = given;
      const box = sheet?.element.getBoundingClientRect();
      appStore.getState().open(projectOfScene(given), { name: `Bench ${given.size}` });
      const { x, y, zoom } = given.view;
      const pxPerMm = zoom * PX_PER_MM;
      setView({
        diagramCamera: {
          x: (x + (box?.left ?? 0) / zoom) / PX_PER_MM,
          y: (y + (box?.top ?? 0) / zoom) / PX_PER_MM,
          pxPerMm,
        },
      });
      await sheet?.viewport.settled();
    },
    nodeScreenPos(id) {
      const item =
        scene && buildDiagramScene(appStore.getState().harness).connectorById.get(benchId(scene, id));
      if (!sheet || !item) throw new Error(`There is no connector ${id} on the sheet.`);
      const box = sheet.element.getBoundingClientRect();
      const middle = { x: (item.minX + item.maxX) / 2, y: item.minY + TITLE_HEIGHT_MM / 2 };
      const p = toScreen(sheet.viewport.camera(), middle);
      return { x: p.x + box.left, y: p.y + box.top };
    },
    settle: async () => sheet?.viewport.settled(),
    counts: () => {
      const { project } = appStore.getState().history;
      return { connectors: project.connectors.length, wires: project.wires.length };
    },
    async loadBoard(text) {
      const parsed = parseProject(text);
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.problem));
      setView({ page: 'formboard', formboardCamera: null });
      appStore.getState().open(parsed.value, { name: 'Bench' });
      board = await boardOf(appStore);
      await board.viewport.settled();
    },
    boardNodeScreenPos(designator) {
      const node = appStore.getState().history.project.nodes.find((n) => n.designator === designator);
      if (!board || !node) throw new Error(`There is no node ${designator} on the formboard.`);
      const box = board.element.getBoundingClientRect();
      const p = toScreen(board.viewport.camera(), node.position);
      return { x: p.x + box.left, y: p.y + box.top };
    },
    input: { pan: { button: 'middle' }, zoom: { ctrl: false, delta: 35 } },
  };
}
