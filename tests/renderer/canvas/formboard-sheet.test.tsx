import axe from 'axe-core';
import { tiny } from '@latchwork/core/model/tiny';
import { expect, it } from 'vitest';
import { mountBoard as mount } from './mount-board';

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
