import { afterEach, beforeEach, describe, expect, it, test } from 'vitest';
import { parse } from 'csv-parse/sync';
import { XmlDocument } from 'libxml2-wasm';
import { tiny } from '@latchwork/core/model/tiny';
import { weatherStation } from '../../generate/demos/weather-station/weather-station';
import { bench, type Bench } from './bench';

let b: Bench;
let tinyFile: string;
let stationFile: string;
beforeEach(async () => {
  b = await bench();
  tinyFile = await b.save('tiny.latchwork', tiny());
  stationFile = await b.save('station.latchwork', weatherStation());
});
afterEach(() => b.remove());

const exported = (...more: string[]) => b.run('export', stationFile, '--out', b.path('out'), ...more);

describe('latchwork export of an order', () => {
  it('takes the quantity of the order', async () => {
    const list = ['--document', 'purchase-list', '--format', 'csv'];
    expect((await exported(...list, '--quantity', '10')).code).toBe(0);
    const ten = parse(await b.read('out'), { columns: true }) as Record<string, string>[];
    await exported(...list, '--quantity', '1000');
    const thousand = parse(await b.read('out'), { columns: true }) as Record<string, string>[];
    expect(ten.map((r) => r['Per harness'])).toEqual(thousand.map((r) => r['Per harness']));
    for (const [i, row] of ten.entries())
      expect(Number(thousand[i]!['Need of the order'])).toBeCloseTo(
        100 * Number(row['Need of the order']),
        6,
      );
  });

  test.each(['0', '-1', '1.5', 'ten', ''])('refuses %j harnesses and writes nothing', async (quantity) => {
    const { code, err } = await exported(
      '--document',
      'purchase-list',
      '--format',
      'csv',
      '--quantity',
      quantity,
    );
    expect(code).toBe(2);
    expect(err).toContain('whole number of harnesses');
    expect(await b.files()).not.toContain('out');
  });

  it('writes a request for quotation as XML, the same bytes twice', async () => {
    const request = ['--document', 'request-for-quotation', '--format', 'xml', '--quantity', '100'];
    expect((await exported(...request)).code).toBe(0);
    const first = await b.read('out');
    const document = XmlDocument.fromString(first);
    expect(document.root.name).toBe('RequestForQuotation');
    document.dispose();
    await exported(...request);
    expect(await b.read('out')).toBe(first);
  });

  it('refuses XML of a document that no standard knows, and a supplier where none is asked', async () => {
    const none = await exported('--document', 'purchase-list', '--format', 'xml');
    expect([none.code, none.err]).toEqual([2, expect.stringContaining('not made as XML')]);
    const nobody = await exported('--document', 'purchase-list', '--format', 'csv', '--supplier', 'X');
    expect([nobody.code, nobody.err]).toEqual([2, expect.stringContaining('no --supplier')]);
  });
});

describe('latchwork where-used', () => {
  it('names the places in each project', async () => {
    const { code, out } = await b.run('where-used', 'C-PIN', tinyFile, stationFile);
    expect(code).toBe(0);
    expect(out).toBe(
      [
        `${tinyFile}: Tiny example, revision A`,
        '  2 pcs for one harness, supplied with the harness; builds of 1',
        '  X2:1, contact, 1 pcs',
        '  X2:2, contact, 1 pcs',
        `${stationFile}: Weather station harness, revision A`,
        '  does not use C-PIN',
        '',
      ].join('\n'),
    );
  });

  it('says the same as JSON', async () => {
    const { out } = await b.run('where-used', 'WIRE-22', tinyFile, '--json');
    expect(JSON.parse(out)).toMatchObject({
      format: 'latchwork-where-used',
      formatVersion: 1,
      part: 'WIRE-22',
      projects: [
        {
          title: 'Tiny example',
          revision: 'A',
          perHarness: [{ suppliedWith: 'harness', unit: 'm', quantity: 0.616 }],
          uses: [
            { where: 'W2', colour: 'BK', quantity: 0.308 },
            { where: 'W1', colour: 'RD', quantity: 0.308 },
          ],
        },
      ],
    });
  });

  it('takes one maker where several bear the number', async () => {
    const { out } = await b.run('where-used', 'C-PIN', tinyFile, '--maker', 'Nobody');
    expect(out).toContain('does not use C-PIN');
  });

  it('could not run where one file cannot be read, and says which', async () => {
    const { code, out, err } = await b.run('where-used', 'C-PIN', tinyFile, b.path('none.latchwork'));
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('none.latchwork');
  });
});
