import { afterEach, beforeEach, describe, expect, it, test } from 'vitest';
import { serialiseCatalogue } from '@latchwork/core/model/serialise';
import { tiny } from '@latchwork/core/model/tiny';
import { bench, type Bench } from './bench';

const CONNECTORS = 'designator,part,mates_with,equipment\nX1,H1,X3,\nX2,H2,,\nX3,B1,,A1\n';
const FROM_TO = 'Wire;From;From_cavity;To;To_cavity;Size;Colour;Length\nW1;X1;1;X2;1;22 AWG;RD;12 in\nW2;X1;2;X2;2;22 AWG;BK;305 mm\n'; // prettier-ignore
const CATALOGUE = [
  'kind,maker,part,interface,body_form,contact_kind,mounting,ways,rows,pitch_mm,keying,series,contact_kind_note,size',
  'housing,Acre,H1,I3,receptacle,socket,free,3,1,3,none,S1,,',
].join('\n');
const GOOD_CATALOGUE = [
  'kind,maker,part,interface,body_form,contact_kind,mounting,ways,rows,pitch_mm,keying,series,size_min,size_max,od_min_mm,od_max_mm,strip_mm,finish,stranded_only,size,area_mm2,stranding,od_mm,colours',
  'housing,Acre,H1,I3,receptacle,socket,free,3,1,3,none,S1,,,,,,,,,,,,',
  'housing,Acre,H2,I3,plug,pin,free,3,1,3,none,S1,,,,,,,,,,,,',
  'header,Acre,B1,I3,plug,pin,board,3,1,3,none,,,,,,,tin,,,,,,',
  'contact,Acre,C1,,,socket,,,,,,S1,24 AWG,20 AWG,0.89,1.53,2.5,tin,yes,,,,,',
  'contact,Acre,C2,,,pin,,,,,,S1,24 AWG,20 AWG,0.89,1.53,2.5,tin,yes,,,,,',
  'wire,Acre,W22,,,,,,,,,,,,,,,,,22 AWG,0.355,7x0.254,1.2,RD BK',
  '',
].join('\n');

let b: Bench;
beforeEach(async () => {
  b = await bench();
  await b.write('wires.csv', FROM_TO);
  await b.write('places.csv', CONNECTORS);
  await b.write('bench.csv', GOOD_CATALOGUE);
});
afterEach(() => b.remove());

const imported = (catalogues: readonly string[] = ['bench.csv'], out = 'new.latchwork') =>
  b.run('import', '--from-to', b.path('wires.csv'), '--connectors', b.path('places.csv'), '--catalogue', ...catalogues.map(b.path), '--out', b.path(out)); // prettier-ignore

describe('latchwork import', () => {
  it('makes a project that can be checked and exported', async () => {
    const { code, out, err } = await imported();
    expect([code, out]).toEqual([0, '']);
    expect(err).toContain('3 connectors, 2 wires, 4 contacts, 0 splices written to');
    const table = await b.run('export', b.path('new.latchwork'), '--document', 'connection-table', '--format', 'json', '--out', b.path('t.json')); // prettier-ignore
    expect(table.code).toBe(0);
    expect(JSON.parse(await b.read('t.json')).rows).toMatchObject([
      { wire: 'W1', from: 'X1', fromCavity: '1', fromContact: 'C1', to: 'X2', toContact: 'C2', wirePart: 'W22', size: '22 AWG', colour: 'RD', lengthMm: 304.8, lengthKind: 'typed' },
      { wire: 'W2', colour: 'BK', lengthMm: 305 },
    ]); // prettier-ignore
  });

  it('gives the same bytes twice', async () => {
    await imported();
    const first = await b.read('new.latchwork');
    await imported();
    expect(await b.read('new.latchwork')).toBe(first);
  });

  it('takes a JSON catalogue too', async () => {
    const parts = tiny().parts;
    await b.write('tiny.json', serialiseCatalogue({ format: 'latchwork-catalogue', formatVersion: 1, name: 'Tiny', revision: '7', parts })); // prettier-ignore
    await b.write('places.csv', 'designator,part\nX1,H-SOCKET\nX2,H-PIN\n');
    expect((await imported(['tiny.json', 'bench.csv'])).code).toBe(0);
    const { catalogues } = JSON.parse((await b.run('info', b.path('new.latchwork'), '--json')).out);
    expect(catalogues).toContain('Tiny 7');
  });

  it('names a bad row with line and column, ends with 2 and writes no file', async () => {
    await b.write('wires.csv', `${FROM_TO}W3;X1;9;X2;3;22 AWG;RD;1 m\nW4;X1;3;X2;3;22;RD;1\n`);
    const before = await b.files();
    const { code, out, err } = await imported();
    expect([code, out]).toEqual([2, '']);
    // The cells of line 5 cannot be read, so the ends of line 4 are not looked up yet.
    expect(err).toContain('wires.csv, line 5, column 6 (size): "22" is not a wire size');
    expect(err).toContain('wires.csv, line 5, column 8 (length): "1" has no unit');
    expect(err).toContain('Nothing was written.');
    expect(await b.files()).toEqual(before);
    await b.write('wires.csv', `${FROM_TO}W3;X1;9;X2;3;22 AWG;RD;1 m\n`);
    expect((await imported()).err).toContain('wires.csv, line 4, column 3 (from_cavity): X1 has no cavity 9');
    expect(await b.files()).toEqual(before);
  });

  it('keeps the project that is there when a row is bad', async () => {
    await b.write('new.latchwork', 'precious');
    await b.write('wires.csv', 'from;to\nX1;\n');
    expect((await imported()).code).toBe(2);
    expect(await b.read('new.latchwork')).toBe('precious');
  });

  test.each([
    ['an unknown catalogue column', 'bench.csv', CATALOGUE, 'bench.csv, line 1, column 13 (contact_kind_note): there is no column'],
    ['a JSON catalogue that is none', 'bench.csv', '{"format":"latchwork-project"}', 'This is not a latchwork-catalogue file'],
    ['a file that is not text', 'wires.csv', new Uint8Array([0xff, 0xfe, 0x41, 0x00]), 'wires.csv: The file is not UTF-8 text.'],
  ])('ends with 2 on %s', async (_, name, content, words) => {
    await b.write(name, content);
    const { code, out, err } = await imported();
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(words);
    expect(await b.files()).not.toContain('new.latchwork');
  }); // prettier-ignore

  it('does not write over one of its tables', async () => {
    expect(await imported(['bench.csv'], 'wires.csv')).toMatchObject({ code: 2 });
    expect(await b.read('wires.csv')).toBe(FROM_TO);
  });

  it('refuses a part that stands in two catalogues', async () => {
    await b.write('more.csv', 'kind,maker,part\ntie,Acre,H1\n');
    expect((await imported(['bench.csv', 'more.csv'])).err).toContain('H1 of Acre stands in');
  });
});
