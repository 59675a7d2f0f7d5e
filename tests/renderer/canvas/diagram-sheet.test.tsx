import axe from 'axe-core';
import type { Point } from '@latchwork/core/base/point';
import { countingIds } from '@latchwork/core/model/ids';
import { tiny } from '@latchwork/core/model/tiny';
import { beforeEach, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-react';
import { createAppStore, type AppStore } from '../../../renderer/app/store';
import { toScreen } from '../../../renderer/canvas/camera';
import { DiagramSheet } from '../../../renderer/canvas/diagram-sheet';
import { sheetOf } from '../../../renderer/canvas/sheet-handle';
import '../../../renderer/ui/base.css';
import { twoConnectors } from '../../drive/bench-parts';

const frame = (): Promise<void> => new Promise((done) => requestAnimationFrame(() => done()));

let store: AppStore;

beforeEach(() => {
  store = createAppStore({ newId: countingIds(500_000) });
});

async function mount(project = twoConnectors()) {
  store.getState().setCatalogue(tiny().parts);
  store.getState().open(project, { id: `document ${project.wires.length}` });
  const screen = await render(
    <div style={{ width: 1000, height: 600 }}>
      <DiagramSheet store={store} />
    </div>,
  );
  const sheet = await sheetOf(store);
  await sheet.viewport.settled();
  const root = screen.container.querySelector<HTMLElement>('.sheet-root')!;
  const at = (p: Point) => {
    const box = root.getBoundingClientRect();
    const s = toScreen(sheet.viewport.camera(), p);
    return { clientX: box.left + s.x, clientY: box.top + s.y };
  };
  const pointer = (type: string, p: Point, init: PointerEventInit = {}) =>
    root.dispatchEvent(
      new PointerEvent(`pointer${type}`, {
        bubbles: true,
        pointerId: 1,
        isPrimary: true,
        button: 0,
        ...at(p),
        ...init,
      }),
    );
  const drag = async (from: Point, to: Point) => {
    pointer('move', from);
    pointer('down', from);
    for (const t of [0.25, 0.6, 1])
      pointer('move', { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t });
    await frame();
    pointer('up', to);
    await frame();
  };
  return { screen, sheet, root, at, pointer, drag };
}

/** Share of pixels that are not paper, over the still picture. */
function inked(root: HTMLElement): number {
  const canvas = root.querySelector('canvas')!;
  const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
  let dark = 0;
  for (let i = 0; i < data.length; i += 4)
    if (data[i]! < 90 && data[i + 1]! < 90 && data[i + 2]! < 90) dark++;
  return dark / (data.length / 4);
}

it('fits what was opened into view and draws it', async () => {
  const { root, sheet } = await mount();
  const { x, y, pxPerMm } = sheet.viewport.camera();
  expect(x).toBeLessThan(0);
  expect(y).toBeLessThan(0);
  expect(x + 1000 / pxPerMm).toBeGreaterThan(144);
  // Outlines and numbers of two connectors; the badges of open points are not drawn.
  expect(inked(root)).toBeGreaterThan(0.0003);
});

it('has no ink on an empty sheet', async () => {
  const bare = { ...twoConnectors(), connectors: [], wires: [], mates: [] };
  const { root } = await mount(bare);
  expect(inked(root)).toBe(0);
});

it('draws a wire when one cavity is pressed and another one released on', async () => {
  const { drag } = await mount();
  await drag({ x: 19.5, y: 12 }, { x: 124.5, y: 32 });
  const { wires, contacts } = store.getState().history.project;
  expect(wires).toHaveLength(1);
  expect(wires[0]!.ends).toMatchObject([
    { at: 'cavity', cavity: '1' },
    { at: 'cavity', cavity: '3' },
  ]);
  expect(contacts).toHaveLength(2);
});

it('shows a selected object in copper above the still picture, and nothing when nothing is selected', async () => {
  const { root } = await mount();
  const top = root.querySelectorAll<HTMLElement>('.sheet-canvas')[1]!;
  expect(top.style.visibility).toBe('hidden');
  store.getState().select([store.getState().history.project.connectors[0]!.id]);
  await frame();
  await frame();
  expect(top.style.visibility).toBe('visible');
});

it('zooms at the pointer: what lies under it stays there', async () => {
  const { root, sheet, at } = await mount();
  const p = { x: 60, y: 20 };
  const before = at(p);
  root.dispatchEvent(new WheelEvent('wheel', { bubbles: true, cancelable: true, deltaY: -300, ...before }));
  const after = at(p);
  expect(sheet.viewport.camera().pxPerMm).toBeGreaterThan(3);
  expect(after.clientX).toBeCloseTo(before.clientX, 6);
  expect(after.clientY).toBeCloseTo(before.clientY, 6);
  await sheet.viewport.settled();
  expect(store.getState().view.diagramCamera).toBe(sheet.viewport.camera());
});

it('moves the picture without drawing it while the sheet is panned', async () => {
  const { root, sheet, pointer } = await mount();
  const canvas = root.querySelector('canvas')!;
  let draws = 0;
  const context = canvas.getContext('2d')!;
  const fill = context.fillRect.bind(context);
  context.fillRect = (...args) => {
    draws++;
    fill(...args);
  };
  const from = { x: 60, y: 70 };
  pointer('down', from, { button: 1, buttons: 4 });
  const x = sheet.viewport.camera().x;
  for (let i = 1; i <= 5; i++) pointer('move', { x: 60 + i * 2, y: 70 }, { buttons: 4 });
  expect(sheet.viewport.camera().x).toBeLessThan(x);
  await frame();
  expect(draws).toBe(0);
  pointer('up', { x: 70, y: 70 }, { button: 1 });
  await sheet.viewport.settled();
  // Shifted by whole pixels it is as sharp as a new one.
  expect(draws).toBe(0);
  sheet.viewport.zoomAt({ x: 500, y: 300 }, 1.1);
  await sheet.viewport.settled();
  expect(draws).toBeGreaterThan(0);
});

it('takes a part that is dropped on it', async () => {
  const { root, at } = await mount();
  const data = new DataTransfer();
  data.setData('application/x-latchwork-part', tiny().parts[0]!.id);
  const place = at({ x: 60, y: 40 });
  root.dispatchEvent(
    new DragEvent('drop', { bubbles: true, cancelable: true, dataTransfer: data, ...place }),
  );
  expect(store.getState().history.project.connectors).toHaveLength(3);
});

it('can be used with the keyboard alone: walk, go in, draw a wire, take it away', async () => {
  const { root } = await mount();
  root.focus();
  await userEvent.keyboard('{Tab}{Enter}');
  const [x1, x2] = store.getState().history.project.connectors;
  expect([...store.getState().view.selection]).toEqual([`${x1!.id}:1`]);
  await userEvent.keyboard('{Enter}{ArrowDown}{Enter}');
  expect(store.getState().history.project.wires[0]!.ends).toMatchObject([
    { connector: x1!.id, cavity: '1' },
    { connector: x2!.id, cavity: '2' },
  ]);
  await userEvent.keyboard('{Delete}');
  expect(store.getState().history.project.wires).toEqual([]);
});

it('tells a screen reader what is on the sheet and what is selected', async () => {
  const { screen } = await mount(tiny());
  const tree = screen.getByRole('tree', { name: 'Connectors on the sheet' });
  await expect
    .element(tree.getByRole('treeitem', { name: /^X1, H-SOCKET, 3 ways, 2 wired/ }))
    .toBeInTheDocument();
  const w1 = store.getState().history.project.wires[0]!;
  store.getState().select([w1.id]);
  await expect.element(screen.getByText('wire W1, red, from X1:1 to X2:1')).toBeInTheDocument();
});

it('asks before it mates what cannot mate, and stays apart when told so', async () => {
  const { screen, drag } = await mount(
    tiny((t) => {
      Object.assign(t.project, twoConnectors());
      t.part('housing', 'H-PIN').keying = 'B';
    }),
  );
  await drag({ x: 132, y: 23.5 }, { x: 42, y: 4 });
  await expect.element(screen.getByRole('alertdialog')).toHaveTextContent('keying code');
  await screen.getByRole('button', { name: 'Leave apart' }).click();
  expect(store.getState().history.project.mates).toEqual([]);
});

it('has no flaw that axe finds', async () => {
  const { root } = await mount(tiny());
  const { violations } = await axe.run(root, { rules: { region: { enabled: false } } });
  expect(violations.map((v) => `${v.id}: ${v.nodes[0]?.html}`)).toEqual([]);
});
