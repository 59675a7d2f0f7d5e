import { describe, expect, it } from 'vitest';
import { CATALOGUE_FORMAT } from '@latchwork/core/catalogue/catalogue';
import { readCatalogue } from '../../../renderer/app/files/import-catalogue';

const csv =
  'kind,maker,part,description,series,contact_kind\ncontact,Example (invented),C-9,Socket contact,E9,socket\n';
const json = JSON.stringify({
  format: CATALOGUE_FORMAT,
  formatVersion: 1,
  name: 'Mine',
  revision: '1',
  parts: [],
});

describe('a catalogue file', () => {
  it('is read as CSV', () => {
    expect(readCatalogue('mine.csv', csv)).toMatchObject({
      ok: true,
      value: { name: 'mine', parts: [{ kind: 'contact', partNumber: 'C-9', series: 'E9' }] },
    });
  });

  it('is read as JSON', () => {
    expect(readCatalogue('mine.JSON', json)).toMatchObject({ ok: true, value: { name: 'Mine' } });
  });

  it.each([
    ['mine.csv', csv.replace('socket\n', 'spoon\n'), /line 2, column 6 \(contact_kind\)/],
    ['mine.json', '{', /not readable JSON: line 1/],
    ['mine.xlsx', '', /JSON or CSV/],
  ])('%s is refused with what is wrong and where', (name, text, words) => {
    const read = readCatalogue(name, text);
    expect(read.ok ? '' : read.problem).toMatch(words);
  });
});
