import { beforeEach, describe, expect, it, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { EXPORTERS } from '@latchwork/core/exports/index';
import type { Exporter } from '@latchwork/core/exports/exporter';
import type { Paper } from '@latchwork/core/exports/paper/paper';
import { exportChoices, exportDocument } from '../../../renderer/app/files/export-document';
import { fakeHost, freshWindow, openWindow } from '../window';

const documentOf = (id: string): Exporter => EXPORTERS.find((e) => e.id === id)!;

beforeEach(() => freshWindow());

test('a document is offered in every format that it is made in, sheets by their sizes', () => {
  const names = (id: string) => exportChoices(documentOf(id)).map((c) => c.code);
  expect(names('formboard')).toEqual([
    ...['A4', 'A3', 'A2', 'A1', 'A0', 'Letter', 'Tabloid'].map((size) => `PDF on ${size}`),
    'SVG',
    'DXF',
    'CSV',
    'XLSX',
    'JSON',
  ]);
  expect(names('parts-list')).not.toContain('SVG');
  for (const e of EXPORTERS) {
    const ids = exportChoices(e).map((c) => c.id);
    expect(new Set(ids).size).toBe(ids.length);
  }
});

describe('exporting the formboard', () => {
  const exported = async (choice: string) => {
    const { asked } = fakeHost({
      'project:recent': async () => ({ recent: [] }),
      'drawing:export': async ({ name }) => ({ status: 'saved', name: name! }),
      'paper:export': async ({ name }) => ({ status: 'saved', name: name! }),
    });
    const screen = await openWindow();
    const document = documentOf('formboard');
    const done = exportDocument(
      document,
      exportChoices(document).find((c) => c.id === choice)!,
    );
    await userEvent.fill(screen.getByLabelText('File name'), 'board');
    await userEvent.click(screen.getByRole('button', { name: 'Save', exact: true }).last());
    await done;
    return asked.at(-1)!;
  };

  it('hands the drawing to the host as DXF', async () => {
    const { channel, request } = await exported('dxf');
    expect(channel).toBe('drawing:export');
    expect(request).toMatchObject({ format: 'dxf', name: 'board.dxf', title: 'Formboard: Tiny example' });
  });

  it('hands its pages to the host on the sheets that were chosen', async () => {
    const { channel, request } = await exported('pdf-A2');
    expect(channel).toBe('paper:export');
    const { blocks } = (request as { paper: Paper }).paper;
    const sizes = blocks.flatMap((b) => (b.kind === 'sheet' ? [b.sheet.size] : []));
    expect(sizes).toEqual(['A2']);
  });
});
