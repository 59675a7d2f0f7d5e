import { beforeEach, describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-react';
import { userEvent } from 'vitest/browser';
import { parse } from 'csv-parse/browser/esm/sync';
import { appStore } from '../../../renderer/app/store';
import { DataGrid } from '../../../renderer/ui/grid/data-grid';
import { gridRows } from '../../../renderer/ui/grid/grid-rows';
import type { Table } from '@latchwork/core/exports/table';
import { freshWindow, idOf, openWindow } from '../window';

const table: Table = {
  id: 'list',
  title: 'List',
  head: [],
  columns: [
    { key: 'name', title: 'Name' },
    { key: 'mm', title: 'Length', unit: 'mm' },
  ],
  rows: [
    { name: 'W10', mm: 5 },
    { name: 'W2', mm: null },
    { name: 'W1', mm: 12 },
  ],
  objects: [[], [], []],
};

describe('rows', () => {
  it.each([
    [null, 'W10 W2 W1'],
    [{ key: 'name', down: false }, 'W1 W2 W10'],
    [{ key: 'name', down: true }, 'W10 W2 W1'],
    [{ key: 'mm', down: false }, 'W10 W1 W2'],
    // What is not known comes last, also downwards.
    [{ key: 'mm', down: true }, 'W1 W10 W2'],
  ])('sorted by %j stand as %s', (sorting, order) => {
    expect(
      gridRows(table, '', sorting)
        .map((r) => r.cells['name'])
        .join(' '),
    ).toBe(order);
  });

  it('are filtered by any of their cells', () => {
    expect(gridRows(table, '12', null).map((r) => r.cells['name'])).toEqual(['W1']);
  });
});

it('a grid of ten thousand rows draws only those in view, and reaches the last by keyboard', async () => {
  const rows = Array.from({ length: 10_000 }, (_, i) => ({ name: `W${i + 1}`, mm: i }));
  const long: Table = { ...table, rows, objects: rows.map(() => []) };
  const screen = await render(
    <div style={{ height: 400, display: 'flex' }}>
      <DataGrid table={long} />
    </div>,
  );
  const grid = screen.getByRole('grid');
  await expect.element(grid).toHaveAttribute('aria-rowcount', '10001');
  expect(grid.getByRole('row').elements().length).toBeLessThan(60);
  (grid.element() as HTMLElement).focus();
  await userEvent.keyboard('{Control>}{End}{/Control}');
  await expect.element(grid.getByText('W10000')).toBeVisible();
});

describe('the connection table', () => {
  beforeEach(() => {
    freshWindow();
    appStore.getState().setView({ panelSizesPx: { ledger: 260 } });
  });
  const rows = (screen: Awaited<ReturnType<typeof openWindow>>) => screen.getByRole('grid').getByRole('row');

  it('selects the wire of the row, and the row of the wire', async () => {
    const screen = await openWindow();
    await userEvent.click(rows(screen).nth(2));
    expect([...appStore.getState().view.selection]).toEqual([idOf('W2')]);
    appStore.getState().select([idOf('W1')]);
    await expect.element(rows(screen).nth(1)).toHaveAttribute('aria-selected', 'true');
    await expect.element(rows(screen).nth(2)).toHaveAttribute('aria-selected', 'false');
  });

  it('is walked through and selected by keyboard, and sorted from its heading', async () => {
    const screen = await openWindow();
    (screen.getByRole('grid').element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowDown}{Enter}');
    expect([...appStore.getState().view.selection]).toEqual([idOf('W2')]);
    await userEvent.keyboard('{ArrowUp}{ArrowUp}{Enter}{Enter}');
    await expect
      .element(screen.getByRole('columnheader', { name: 'Wire', exact: true }))
      .toHaveAttribute('aria-sort', 'descending');
    await expect.element(rows(screen).nth(1)).toHaveTextContent('W2');
  });

  it('copies its rows as CSV that an independent reader reads', async () => {
    const screen = await openWindow();
    const grid = screen.getByRole('grid').element();
    const data = new DataTransfer();
    grid.dispatchEvent(new ClipboardEvent('copy', { clipboardData: data, bubbles: true, cancelable: true }));
    const records = parse(data.getData('text/plain'), { columns: true }) as Record<string, string>[];
    expect(records.map((r) => [r['Wire'], r['Signal'], r['From'], r['To'], r['Cut length (mm)']])).toEqual([
      ['W1', 'SUP', 'X1', 'X2', '308'],
      ['W2', 'RTN', 'X1', 'X2', '308'],
    ]);
  });
});
