import type { Point } from '@latchwork/core/base/point';
import { countingIds } from '@latchwork/core/model/ids';
import { tiny } from '@latchwork/core/model/tiny';
import { render } from 'vitest-browser-react';
import { createAppStore } from '../../../renderer/app/store';
import { toScreen } from '../../../renderer/canvas/camera';
import { FormboardSheet } from '../../../renderer/canvas/formboard-sheet';
import '../../../renderer/ui/base.css';

const CAMERA = { x: -100, y: -100, pxPerMm: 2 };

interface Held {
  readonly shiftKey?: boolean;
  readonly altKey?: boolean;
}

/** A formboard of its own store at a fixed camera, driven in millimetres of the board. */
export async function mountBoard(project = tiny()) {
  const store = createAppStore({ newId: countingIds(600_000) });
  store.getState().open(project, {});
  store.getState().setView({ formboardCamera: CAMERA });
  const screen = await render(
    <div style={{ width: 1000, height: 600 }}>
      <FormboardSheet store={store} />
    </div>,
  );
  const root = screen.container.querySelector<HTMLElement>('.sheet-root')!;
  const place = (p: Point) => {
    const box = root.getBoundingClientRect();
    const s = toScreen(CAMERA, p);
    return { clientX: box.left + s.x, clientY: box.top + s.y };
  };
  const pointer = (type: 'down' | 'move' | 'up', p: Point, held: Held = {}) =>
    root.dispatchEvent(
      new PointerEvent(`pointer${type}`, { bubbles: true, pointerId: 1, button: 0, ...place(p), ...held }),
    );
  const drag = (from: Point, to: Point, held: Held = {}) => {
    pointer('down', from);
    for (const t of [0.5, 1])
      pointer('move', { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t }, held);
    pointer('up', to, held);
  };
  const click = (p: Point, held: Held = {}) => {
    pointer('down', p, held);
    pointer('up', p, held);
  };
  const key = (name: string, held: Held = {}) =>
    root.dispatchEvent(new KeyboardEvent('keydown', { key: name, bubbles: true, cancelable: true, ...held }));
  const doubleClick = (p: Point, held: Held = {}) =>
    root.dispatchEvent(new MouseEvent('dblclick', { bubbles: true, ...place(p), ...held }));
  const board = () => store.getState().history.project;
  const frame = () => new Promise((done) => requestAnimationFrame(done));
  return { store, screen, root, place, pointer, drag, click, key, doubleClick, board, frame };
}
