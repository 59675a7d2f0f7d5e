import { readFileSync } from 'node:fs';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { WirePart } from '@latchwork/core/model/parts/wire';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { unitSuspect } from '@latchwork/core/rules/unit-suspect';
import { describe, expect, it } from 'vitest';

interface Stranding {
  readonly awg: string;
  readonly area_mm2: number;
  readonly od_in: number;
  readonly R20_nominal_solid_equiv_ohm_per_km: number;
  readonly confidence: string;
}
interface Military {
  readonly size: string;
  readonly area_nominal: number;
  readonly od_max_tin_nickel?: number;
  readonly Rmax_tin?: number;
}
interface Metric {
  readonly mm2: number;
  readonly plain?: number;
  readonly cl12_plain?: number;
  readonly cl56_coated?: number;
}
// Published strandings, MIL-DTL-29606A table III-A, IEC 60228 tables 1 to 4 and DIN VDE 0295 (small sizes).
const { tables } = JSON.parse(
  readFileSync(new URL('../../files/reference/stranding.json', import.meta.url), 'utf8'),
) as {
  tables: {
    strandings: { rows: Stranding[] };
    MIL_29606: { rows: Military[] };
    IEC60228: { rows: Metric[] };
    small_metric: { rows: Metric[] };
  };
};
type Values = Partial<Pick<WirePart, 'size' | 'areaMm2' | 'odMm' | 'resistanceOhmPerKm'>>;

/** What is said of a wire with those values, and no others. */
function doubts(values: Values): string {
  const project = tiny((t) => {
    const wire = t.part('wire', 'WIRE-22');
    delete wire.stranding;
    Object.assign(wire, { areaMm2: undefined, odMm: undefined, resistanceOhmPerKm: undefined }, values);
  });
  const found = checkHarness(deriveHarness(project), [unitSuspect]).findings;
  return found.map((f) => String(f.data['reasons'])).join();
}

const awg = (text: string) => ({ system: 'awg' as const, gauge: Number(text) });
const strandings = tables.strandings.rows.filter((r) => /^\d+$/.test(r.awg) && r.confidence === 'published');

describe('published strandings', () => {
  it('are many', () => expect(strandings.length).toBeGreaterThan(30));

  it('raise no doubt in their own units', () => {
    for (const r of strandings) {
      const odMm = Math.max(r.od_in * 25.4, Math.sqrt((4 * r.area_mm2) / Math.PI));
      const values = { size: awg(r.awg), areaMm2: r.area_mm2, odMm };
      expect(doubts(values), JSON.stringify(r)).toBe('');
      expect(doubts({ ...values, resistanceOhmPerKm: r.R20_nominal_solid_equiv_ohm_per_km })).toBe('');
    }
  });

  it('raise a doubt with the diameter in inches, the resistance for 1000 ft, the gauge as an area', () => {
    for (const r of strandings) {
      const size = awg(r.awg);
      expect(doubts({ size, areaMm2: r.area_mm2, odMm: r.od_in }), JSON.stringify(r)).toContain('inches');
      const perKft = r.R20_nominal_solid_equiv_ohm_per_km * 0.3048;
      expect(doubts({ size, areaMm2: r.area_mm2, resistanceOhmPerKm: perKft })).toContain('1000 ft');
      if (Number(r.awg) > 10) expect(doubts({ size, areaMm2: Number(r.awg) })).toContain('is the gauge');
    }
  });
});

it('takes the wires of MIL-DTL-29606A as they are', () => {
  for (const r of tables.MIL_29606.rows) {
    if (!/^\d+$/.test(r.size)) continue;
    const values = {
      size: awg(r.size),
      areaMm2: r.area_nominal,
      ...(r.od_max_tin_nickel ? { odMm: r.od_max_tin_nickel } : {}),
      ...(r.Rmax_tin ? { resistanceOhmPerKm: r.Rmax_tin } : {}),
    };
    expect(doubts(values), JSON.stringify(r)).toBe('');
  }
});

it('takes the maximum resistances of IEC 60228 for their areas', () => {
  for (const r of [...tables.IEC60228.rows, ...tables.small_metric.rows])
    for (const resistanceOhmPerKm of [r.plain, r.cl12_plain, r.cl56_coated]) {
      if (resistanceOhmPerKm === undefined) continue;
      const values = { size: { system: 'mm2' as const, areaMm2: r.mm2 }, areaMm2: r.mm2, resistanceOhmPerKm };
      expect(doubts(values), JSON.stringify(r)).toBe('');
    }
});
