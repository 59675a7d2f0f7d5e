import { expect, it } from 'vitest';
import { segmentLengths } from '@latchwork/core/derive/formboard/segment-path';
import { byId } from '@latchwork/core/base/by-id';
import { setDraggedPart } from '../../../renderer/ui/part-drag';
import { boardHarness } from './board-harness';
import { mountBoard } from './mount-board';

const mount = () => mountBoard(boardHarness());
type Board = Awaited<ReturnType<typeof mount>>;
const steps = ({ store }: Board) => store.getState().history.undo.length;
const lengthOf = ({ board }: Board, i: number) =>
  segmentLengths(board().segments[i]!, byId(board().nodes)).drawnMm;

it('drags a node in one step; its lengths follow, and Escape leaves everything as it was', async () => {
  const b = await mount();
  b.pointer('down', { x: 300, y: 0 });
  b.pointer('move', { x: 250, y: 60 });
  b.key('Escape');
  b.pointer('up', { x: 250, y: 60 });
  expect([steps(b), lengthOf(b, 0)]).toEqual([0, 300]);
  b.drag({ x: 300, y: 0 }, { x: 240, y: 61 });
  expect(b.board().nodes[1]!.position).toEqual({ x: 240, y: 60 });
  // Pythagoras: 240² + 60² = 247.4²
  expect(lengthOf(b, 0)).toBeCloseTo(Math.hypot(240, 60), 9);
  expect(steps(b)).toBe(1);
  b.store.getState().undo();
  expect(lengthOf(b, 0)).toBe(300);
});

it('lays a dragged node level with another one, and on rays of 15 degrees', async () => {
  const b = await mount();
  b.drag({ x: 300, y: 0 }, { x: 253, y: -78.6 });
  // Level with N3 at y = -80, x on the 5 mm grid.
  expect(b.board().nodes[1]!.position).toEqual({ x: 255, y: -80 });
  await b.frame();
  b.drag({ x: 255, y: -80 }, { x: 200.6, y: 53.2 });
  // 15 degrees below the level through N1; 207.5 mm away lies between the round lengths 205 and 210.
  const { x, y } = b.board().nodes[1]!.position;
  expect((Math.atan2(y, x) * 180) / Math.PI).toBeCloseTo(15, 6);
  expect([205, 210]).toContain(Math.round(Math.hypot(x, y) * 1e4) / 1e4);
});

it('slides a node with a locked length on its circle', async () => {
  const b = await mount();
  b.store.getState().dispatch({
    id: 'segment.edit',
    args: { id: b.board().segments[0]!.id, change: { lengthLocked: true } },
  });
  b.drag({ x: 300, y: 0 }, { x: 100, y: 240 });
  expect(lengthOf(b, 0)).toBeCloseTo(300, 6);
  expect(b.board().nodes[1]!.position.y).toBeGreaterThan(200);
});

it('pulls a branch out of a run, and splits it by a double click, with everything where it was', async () => {
  const b = await mount();
  b.drag({ x: 80, y: 0 }, { x: 80, y: 91 });
  expect(b.board().nodes.at(-1)!.position).toEqual({ x: 80, y: 90 });
  expect(b.board().segments.map((s) => Math.round(lengthOf(b, b.board().segments.indexOf(s))))).toEqual([
    80, 80, 220, 90,
  ]);
  expect(steps(b)).toBe(1);
  // The clamp lies where it lay: 150 mm from N1, now 70 mm into the second part.
  expect(b.board().fixings[0]!.station.atMm).toBe(70);
  b.store.getState().undo();
  b.doubleClick({ x: 40, y: 0 });
  expect(b.board().nodes).toHaveLength(4);
  expect(lengthOf(b, 0)).toBe(40);
});

it('bends a run by Alt and a double click; the bend of a selected run can be dragged', async () => {
  const b = await mount();
  b.doubleClick({ x: 50, y: 0 }, { altKey: true });
  expect(b.board().segments[0]!.via).toEqual([{ x: 50, y: 0 }]);
  b.store.getState().select([b.board().segments[0]!.id]);
  await b.frame();
  b.drag({ x: 50, y: 0 }, { x: 60, y: 45 }, { altKey: true });
  expect(b.board().segments[0]!.via).toEqual([{ x: 60, y: 45 }]);
});

it.each([
  ['a tie', { x: 60, y: 0 }, { x: 82, y: 6 }, (b: Board) => b.board().ties[0]!.station.atMm, 80],
  ['a clamp', { x: 150, y: 0 }, { x: 171, y: 3 }, (b: Board) => b.board().fixings[0]!.station.atMm, 170],
  [
    'a label',
    { x: 220, y: 0 },
    { x: 299, y: 3 },
    (b: Board) => {
      const { on } = b.board().labels[0]!;
      return on.at === 'station' ? on.station.atMm : -1;
    },
    // On the node, when near it.
    300,
  ],
] as const)('slides %s along its run', async (_what, from, to, read, atMm) => {
  const b = await mount();
  b.drag(from, to);
  expect(read(b)).toBe(atMm);
  expect(steps(b)).toBe(1);
});

it('drags one end of a covering, and a selected covering as a whole', async () => {
  const b = await mount();
  const cover = () => [b.board().coverings[0]!.from.atMm, b.board().coverings[0]!.to.atMm];
  b.drag({ x: 200, y: 0 }, { x: 241, y: 0 });
  expect(cover()).toEqual([100, 240]);
  b.store.getState().select([b.board().coverings[0]!.id]);
  await b.frame();
  b.drag({ x: 175, y: 0 }, { x: 190, y: 0 });
  expect(cover()).toEqual([115, 255]);
});

it('slides a tie over a node onto another run', async () => {
  const b = await mount();
  b.drag({ x: 60, y: 0 }, { x: 1, y: -41 });
  expect(b.board().ties[0]!.station).toEqual({ segment: b.board().segments[1]!.id, atMm: 40 });
});

it('turns a connector about its node in steps of 15 degrees, with Shift freely', async () => {
  const b = await mount();
  const angle = () => b.board().connectors[1]!.formboardAngleDeg;
  b.drag({ x: 310, y: 0 }, { x: 310, y: 9 });
  expect(angle()).toBe(45);
  b.drag({ x: 306, y: 6 }, { x: 300, y: 20 }, { shiftKey: true });
  expect(angle()).toBe(90);
  b.store.getState().undo();
  b.drag({ x: 306, y: 6 }, { x: 310, y: 4 }, { shiftKey: true });
  expect(angle()).toBeCloseTo(21.8, 1);
});

it('turns a branch by its handle, lengths kept', async () => {
  const b = await mount();
  b.click({ x: 0, y: -40 });
  await b.frame();
  // The handle stands 15 mm to the right of the run at 4/5 of it; S2 runs up, so to its right.
  b.drag({ x: 15.5, y: -64 }, { x: 70, y: -10 });
  const { x, y } = b.board().nodes[2]!.position;
  expect(Math.hypot(x, y)).toBeCloseTo(80, 6);
  const steps15 = (Math.atan2(y, x) * 12) / Math.PI;
  expect(steps15).toBeCloseTo(Math.round(steps15), 6);
  expect(x).toBeGreaterThan(30);
});

it('measures from datum to datum; Enter ends, chain or baseline', async () => {
  const b = await mount();
  b.store.getState().setView({ tool: 'dimension' });
  for (const p of [{ x: 0, y: -80 }, { x: 0, y: 0 }, { x: 120, y: 1 }, { x: 300, y: 0 }]) b.click(p); // prettier-ignore
  b.key('Enter');
  const { form, datums } = b.board().dimensions[0]!;
  expect([form, datums.map((d) => (d.at === 'station' ? d.station.atMm : d.at))]).toEqual([
    'chain',
    ['node', 'node', 120, 'node'],
  ]);
  b.store.getState().setView({ tool: 'baseline' });
  b.click({ x: 0, y: 0 });
  b.key('Escape');
  expect(b.board().dimensions).toHaveLength(1);
});

it('pins a wire to runs that are clicked', async () => {
  const b = await mount();
  const wire = b.board().wires[0]!;
  b.store.getState().select([wire.id]);
  b.store.getState().setView({ tool: 'path' });
  b.click({ x: 40, y: 0 });
  b.key('Enter');
  expect(b.board().wires[0]!.path).toEqual([b.board().segments[0]!.id]);
  expect(b.store.getState().view.tool).toBe('select');
});

it('selects what lies in a frame and moves it together', async () => {
  const b = await mount();
  b.drag({ x: -30, y: -95 }, { x: 20, y: 20 });
  const { selection } = b.store.getState().view;
  expect(selection.size).toBe(3);
  await b.frame();
  b.drag({ x: 0, y: -80 }, { x: 5, y: -90 }, { altKey: true });
  expect(b.board().nodes.map((n) => n.position)).toEqual([
    { x: 5, y: -10 },
    { x: 300, y: 0 },
    { x: 5, y: -90 },
  ]);
});

it('draws a segment to the empty board with a new node', async () => {
  const b = await mount();
  b.store.getState().setView({ tool: 'segment' });
  b.drag({ x: 300, y: 0 }, { x: 341, y: -60 });
  expect(b.board().nodes.at(-1)!.position).toEqual({ x: 340, y: -60 });
  expect(b.board().segments).toHaveLength(3);
});

it.each([
  ['tie', 'TIE', (b: Board) => b.board().ties.at(-1)!.station.atMm, 260],
  ['clamp', 'CLAMP', (b: Board) => b.board().fixings.at(-1)!.station.atMm, 260],
  // Outside of the sleeve that is there, over the whole run.
  ['sleeve', 'SLEEVE', (b: Board) => b.board().coverings.at(-1)!.layer, 2],
])('takes a %s from the shelf where it is dropped on a run', async (_what, partNumber, read, result) => {
  const b = await mount();
  const transfer = new DataTransfer();
  setDraggedPart(
    transfer,
    b.board().parts.find((p) => p.partNumber === partNumber)!,
  );
  b.root.dispatchEvent(
    new DragEvent('drop', {
      bubbles: true,
      cancelable: true,
      dataTransfer: transfer,
      ...b.place({ x: 261, y: 1 }),
    }),
  );
  expect(read(b)).toBe(result);
  expect(steps(b)).toBe(1);
});
