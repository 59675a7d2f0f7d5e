import { readFileSync } from 'node:fs';
import { awgAreaMm2, awgCircularMils, awgDiameterMm, awgNominalMil } from '@latchwork/core/calc/awg';
import { strandAreaMm2 } from '@latchwork/core/calc/strand-area';
import { describe, expect, it } from 'vitest';

const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../files/reference/${name}.json`, import.meta.url), 'utf8'));

interface AwgRow {
  awg: string;
  n: number;
  d_mm: number;
  area_mm2: number;
  nominal_d_in: number;
  nominal_cmil: number;
  published?: Record<string, { d_in?: number; d_mm?: number; cmil?: number; area_mm2?: number }>;
}
const rows = (read('awg') as { rows: AwgRow[] }).rows;
/** Published cells with the letter of their source; the letters are explained in the file. */
const cells = rows.flatMap((r) =>
  Object.entries(r.published ?? {}).map(([source, cell]) => ({ ...r, source, cell })),
);

/** Half of the last printed place of a number, and a hair for binary. */
const lastPlace = (value: number): number => 0.5 * 10 ** -(String(value).split('.')[1]?.length ?? 0) + 1e-9;

// ASTM B258 by way of the published tables that tests/files/reference/awg.json names.
describe('AWG sizes, ASTM B258', () => {
  it('is defined by 36 AWG = 0.0050 in and 4/0 AWG = 0.4600 in', () => {
    expect(awgDiameterMm(36) / 25.4).toBeCloseTo(0.005, 12);
    expect(awgDiameterMm(-3) / 25.4).toBeCloseTo(0.46, 12);
  });

  it.each(rows)('$awg AWG: formula and nominal values', (row) => {
    expect(Math.abs(awgDiameterMm(row.n) / row.d_mm - 1)).toBeLessThan(1e-4);
    expect(Math.abs(awgAreaMm2(row.n) / row.area_mm2 - 1)).toBeLessThan(1e-4);
    expect(awgNominalMil(row.n) / 1000).toBeCloseTo(row.nominal_d_in, 9);
    expect(awgCircularMils(row.n)).toBeCloseTo(row.nominal_cmil, 6);
  });

  it('meets every published cell', () => {
    expect(cells.length).toBeGreaterThan(50);
    for (const { awg, n, source, cell } of cells) {
      const at = `${awg} AWG, source ${source}`;
      const mm = awgDiameterMm(n);
      // Tables print the formula or B258's value, which is rounded to 0.1 mil, and round that once more in print.
      const slackMm = 0.00005 * 25.4;
      if (cell.d_in)
        expect(Math.abs(mm - cell.d_in * 25.4), at).toBeLessThan(slackMm + 25.4 * lastPlace(cell.d_in));
      if (cell.d_mm) expect(Math.abs(mm - cell.d_mm), at).toBeLessThan(slackMm + lastPlace(cell.d_mm));
      if (cell.area_mm2) {
        const slackMm2 = (Math.PI / 4) * ((mm + slackMm) ** 2 - mm ** 2);
        expect(Math.abs(awgAreaMm2(n) - cell.area_mm2), at).toBeLessThan(slackMm2 + lastPlace(cell.area_mm2));
      }
      if (cell.cmil) expect(awgCircularMils(n), at).toBe(cell.cmil);
    }
  });

  it('thins by the 39th root of 92 from gauge to gauge', () => {
    for (let n = -3; n < 40; n++) expect(awgDiameterMm(n) / awgDiameterMm(n + 1)).toBeCloseTo(1.122932, 6);
  });
});

interface Stranding {
  awg: string;
  stranding: string;
  strands: number;
  strand_d_mil: number;
  area_mm2: number;
}
interface MilRow {
  size: string;
  stranding: string;
  strand_d: number;
  area_nominal: number;
  area_min: number;
}
const { strandings, MIL_29606 } = (
  read('stranding') as { tables: { strandings: { rows: Stranding[] }; MIL_29606: { rows: MilRow[] } } }
).tables;

describe('areas of stranded conductors', () => {
  // Public strand tables named in tests/files/reference/stranding.json.
  it.each(strandings.rows)('$awg AWG $stranding', ({ strands, strand_d_mil, area_mm2 }) => {
    const area = strandAreaMm2({ strands, strandDiameterMm: strand_d_mil * 0.0254 });
    expect(Math.abs(area / area_mm2 - 1)).toBeLessThan(5e-4);
  });

  // MIL-DTL-29606A, Table III-A. The printed strand diameter is rounded to 0.001 mm: that much is let through.
  it.each(MIL_29606.rows)(
    'MIL-DTL-29606A size $size, $stranding',
    ({ stranding, strand_d, area_nominal, area_min }) => {
      const area = strandAreaMm2({ strands: Number(stranding.split('x')[0]), strandDiameterMm: strand_d });
      expect(Math.abs(area / area_nominal - 1)).toBeLessThan((2 * 0.0005) / strand_d);
      expect(area).toBeGreaterThan(area_min);
    },
  );

  it('shows why a gauge says little: strands of 20 AWG hold 0.507 to 0.616 mm2, solid wire 0.518', () => {
    const areas = strandings.rows
      .filter((r) => r.awg === '20')
      .map((r) => strandAreaMm2({ strands: r.strands, strandDiameterMm: r.strand_d_mil * 0.0254 }));
    expect(Math.min(...areas)).toBeLessThan(awgAreaMm2(20));
    expect(Math.max(...areas) / awgAreaMm2(20)).toBeGreaterThan(1.18);
  });
});
