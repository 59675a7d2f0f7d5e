import type { Root } from 'react-dom/client';
import { TITLE_HEIGHT_MM } from '@latchwork/core/derive/symbol';
import { App } from '../app/app';
import { appStore } from '../app/store';
import { toScreen } from '../canvas/camera';
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
    input: { pan: { button: 'middle' }, zoom: { ctrl: false, delta: 35 } },
  };
}
