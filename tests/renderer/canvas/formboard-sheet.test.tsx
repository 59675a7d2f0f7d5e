import axe from 'axe-core';
import type { Point } from '@latchwork/core/base/point';
import { countingIds } from '@latchwork/core/model/ids';
import { tiny } from '@latchwork/core/model/tiny';
import { expect, it } from 'vitest';
import { render } from 'vitest-browser-react';
import { createAppStore } from '../../../renderer/app/store';
import { toScreen } from '../../../renderer/canvas/camera';
import { FormboardSheet } from '../../../renderer/canvas/formboard-sheet';
import '../../../renderer/ui/base.css';

const CAMERA = { x: -100, y: -100, pxPerMm: 2 };

async function mount(project = tiny()) {
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
  const pointer = (type: string, p: Point) =>
    root.dispatchEvent(
      new PointerEvent(`pointer${type}`, { bubbles: true, pointerId: 1, button: 0, ...place(p) }),
    );
  const drag = (from: Point, to: Point) => {
    pointer('down', from);
    for (const t of [0.5, 1])
      pointer('move', { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t });
    pointer('up', to);
  };
  return { store, screen, root, place, drag };
}

it('moves a node, and the drawn length of its segment with it', async () => {
  const { store, drag } = await mount();
  drag({ x: 300, y: 0 }, { x: 200, y: 2 });
  const { project } = store.getState().history;
  expect(project.nodes[1]!.position).toEqual({ x: 200, y: 0 });
  expect(store.getState().harness.router.lengthMmOf(project.segments[0]!)).toBe(200);
});

it('sets a node on a double click and joins it with a segment', async () => {
  const { store, root, place, drag } = await mount();
  root.dispatchEvent(new MouseEvent('dblclick', { bubbles: true, ...place({ x: 151, y: 99 }) }));
  expect(store.getState().history.project.nodes[2]!.position).toEqual({ x: 150, y: 100 });
  store.getState().setView({ tool: 'segment' });
  await new Promise((done) => requestAnimationFrame(done));
  drag({ x: 0, y: 0 }, { x: 150, y: 100 });
  expect(store.getState().history.project.segments).toHaveLength(2);
});

it('offers connectors that are not on the board, and puts one on the selected node', async () => {
  const { store, screen } = await mount(
    tiny((t) => {
      delete t.connector('X1').node;
    }),
  );
  const n2 = store.getState().history.project.nodes[1]!.id;
  store.getState().select([n2]);
  await screen.getByRole('button', { name: 'X1', exact: true }).click();
  expect(store.getState().history.project.connectors[0]!.node).toBe(n2);
});

it('selects a connector without moving it on the diagram', async () => {
  const { store, drag } = await mount();
  const before = store.getState().history.project.connectors[1]!;
  drag({ x: 308, y: 0 }, { x: 330, y: 40 });
  expect([...store.getState().view.selection]).toEqual([before.id]);
  expect(store.getState().history.project.connectors[1]!.position).toEqual(before.position);
});

it('has no flaw that axe finds', async () => {
  const { root } = await mount();
  const { violations } = await axe.run(root, { rules: { region: { enabled: false } } });
  expect(violations.map((v) => `${v.id}: ${v.nodes[0]?.html}`)).toEqual([]);
});
