import { describe, expect, it } from 'vitest';
import { boardHarness } from './board-harness';
import { mountBoard } from './mount-board';

const mount = () => mountBoard(boardHarness());
type Board = Awaited<ReturnType<typeof mount>>;

const select = async (b: Board, id: string): Promise<void> => {
  b.store.getState().select([id]);
  await b.frame();
};

describe('with the keyboard alone', () => {
  it('Tab walks over nodes, what stands there, segments and what lies on them', async () => {
    const b = await mount();
    const names: string[] = [];
    const { nodes, segments, connectors, ties, fixings, labels, coverings } = b.board();
    const known = new Map([...nodes, ...segments, ...connectors].map((o) => [o.id, o.designator] as const));
    for (const [list, name] of [[ties, 'tie'], [fixings, 'clamp'], [labels, 'label'], [coverings, 'sleeve']] as const)
      for (const o of list) known.set(o.id, name); // prettier-ignore
    for (let i = 0; i < 11; i++) {
      b.key('Tab');
      names.push(known.get([...b.store.getState().view.selection][0] ?? '') ?? '?');
    }
    expect(names).toEqual(['N1', 'X1', 'N2', 'X2', 'N3', 'S1', 'tie', 'sleeve', 'clamp', 'label', 'S2']);
  });

  it('arrows move nodes by the grid, with Alt by 1 mm', async () => {
    const b = await mount();
    await select(b, b.board().nodes[1]!.id);
    b.key('ArrowDown');
    b.key('ArrowRight', { altKey: true });
    expect(b.board().nodes[1]!.position).toEqual({ x: 301, y: 5 });
  });

  it('arrows slide a thing along its run, turn a connector, shift a dimension', async () => {
    const b = await mount();
    await select(b, b.board().ties[0]!.id);
    b.key('ArrowRight');
    b.key('ArrowLeft', { altKey: true });
    expect(b.board().ties[0]!.station.atMm).toBe(64);
    await select(b, b.board().coverings[0]!.id);
    b.key('ArrowLeft');
    expect(b.board().coverings[0]!.from.atMm).toBe(95);
    await select(b, b.board().connectors[1]!.id);
    b.key('ArrowRight');
    expect(b.board().connectors[1]!.formboardAngleDeg).toBe(15);
    const [n1, n2] = b.board().nodes;
    b.store.getState().dispatch({
      id: 'dimension.add',
      args: {
        form: 'chain',
        offsetMm: 20,
        datums: [
          { at: 'node', node: n1!.id },
          { at: 'node', node: n2!.id },
        ],
      },
    });
    await select(b, b.board().dimensions[0]!.id);
    b.key('ArrowUp');
    expect(b.board().dimensions[0]!.offsetMm).toBe(25);
  });

  it.each([
    ['x', 'split', (b: Board) => b.board().segments.length, 3],
    ['a', 'branch', (b: Board) => b.board().nodes.length, 5],
    ['q', 'bend', (b: Board) => b.board().segments[0]!.via?.length, 1],
    ['k', 'lock', (b: Board) => b.board().segments[0]!.lengthLocked, true],
  ])('%s on a segment: %s', async (key, _what, read, result) => {
    const b = await mount();
    await select(b, b.board().segments[0]!.id);
    b.key(key);
    expect(read(b)).toBe(result);
    expect(b.store.getState().history.undo).toHaveLength(1);
  });

  it('joins what it has split, curves what it has bent, turns and mirrors a branch', async () => {
    const b = await mount();
    const [s1, s2] = b.board().segments;
    await select(b, s1!.id);
    b.key('x');
    await select(b, b.board().nodes.at(-1)!.id);
    b.key('j');
    expect(b.board().segments).toHaveLength(2);
    await select(b, s1!.id);
    b.key('q');
    b.key('c');
    expect(b.board().segments[0]!.shape).toBe('curve');
    await select(b, s2!.id);
    b.key('o');
    const turned = b.board().nodes[2]!.position;
    expect(turned.x).toBeCloseTo(80 * Math.sin(Math.PI / 12), 6);
    b.key('O', { shiftKey: true });
    expect(b.board().nodes[2]!.position.x).toBeCloseTo(0, 6);
    b.key('i');
    expect(b.board().nodes[2]!.position.y).toBeCloseTo(80, 6);
  });

  it('straightens the run between two nodes', async () => {
    const b = await mount();
    const [n1, n2, n3] = b.board().nodes;
    b.store.getState().select([n3!.id, n2!.id]);
    await b.frame();
    b.key('u');
    const at = (id: string) => b.board().nodes.find((n) => n.id === id)!.position;
    const far = Math.hypot(at(n2!.id).x - at(n3!.id).x, at(n2!.id).y - at(n3!.id).y);
    expect(far).toBeCloseTo(380, 6);
    expect(Math.hypot(at(n1!.id).x - at(n3!.id).x, at(n1!.id).y - at(n3!.id).y)).toBeCloseTo(80, 6);
  });

  it('Delete takes away what lies on a run, and no wire', async () => {
    const b = await mount();
    b.store.getState().select([b.board().ties[0]!.id, b.board().wires[0]!.id]);
    await b.frame();
    b.key('Delete');
    expect([b.board().ties.length, b.board().wires.length]).toEqual([0, 2]);
  });
});

it('tells the board in words: lengths, what lies on a segment, what stands at a node', async () => {
  const b = await mount();
  const words = b.screen.getByRole('listbox', { name: 'What lies on the formboard' });
  const rows = words
    .getByRole('option')
    .elements()
    .map((e) => e.textContent);
  expect(rows).toContain('node N2; X2; S1 to N1, 300 mm');
  expect(rows.find((r) => r?.startsWith('segment S1'))).toBe(
    'segment S1 from N1 to N2; 300 mm as drawn; 2 wires; tie TIE at 60 mm; covering CV1 at 100 mm; clamp FX1 at 150 mm; label MAIN at 220 mm',
  );
});

it('says which wires are not laid out, and why', async () => {
  const project = boardHarness();
  const b = await mountBoard({
    ...project,
    connectors: project.connectors.map((c) => {
      const { node: _node, ...rest } = c;
      return c.designator === 'X2' ? rest : c;
    }),
  });
  await expect
    .element(b.screen.getByRole('button', { name: 'W1 X2 has no node on the formboard' }))
    .toBeVisible();
});

it('offers the first layout on an empty board', async () => {
  const project = boardHarness();
  const b = await mountBoard({
    ...project,
    nodes: [],
    segments: [],
    ties: [],
    fixings: [],
    coverings: [],
    labels: [],
    connectors: project.connectors.map(({ node: _node, ...rest }) => rest),
  });
  await b.screen.getByRole('button', { name: 'Lay out from the diagram' }).click();
  expect(b.board().segments.length).toBeGreaterThan(0);
  expect(b.store.getState().harness.wires.every((w) => w.route.found)).toBe(true);
});
