import { z } from 'zod';
import { WireSize, wireSizeText } from '../model/wire-size';
import { awgCircularMils } from './awg';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface CrimpEquivalentSize extends Answer {
  readonly circularMils: number;
  readonly areaMm2: number;
  /** Thinnest gauge whose solid wire has at least that area; 1/0 to 4/0 are 0, -1, -2, -3. */
  readonly equivalentGauge: number;
  readonly equivalentSize: string;
}

const RULE: CalcSource = {
  title:
    'NASA-STD-8739.4 (change 6), 19.11: add the circular-mil areas; the size that matches, else the next larger',
  verified: true,
};
const B258: CalcSource = {
  title: 'ASTM B258: circular mils of solid AWG sizes, from the rounded diameter',
  verified: true,
};

/** A circular mil is the area of a circle of one thousandth of an inch, mm2. */
const MM2_PER_CIRCULAR_MIL = (Math.PI / 4) * 0.0254 ** 2;

/** Areas within half a percent count as an exact match: tables round more than that. */
const MATCH = 0.995;

const inputs = z.strictObject({
  wires: field(
    z
      .array(z.strictObject({ size: WireSize.optional(), areaMm2: z.number().positive().optional() }))
      .min(1)
      .max(20),
    'Wires in the crimp: metal area (else designation)',
  ),
  evenGauges: field(z.boolean().default(true), 'Even gauges only'),
});

/**
 * Equivalent size of several wires in one crimp: the sum of their circular-mil areas, and the thinnest gauge with at least
 * that area. The metal area of the very conductor counts where it is known; a stranded wire holds up to 20 % more than its
 * designation. Up to 4/0 AWG. The contact's maker must approve the combination whatever comes out.
 */
export const crimpEquivalentSize = calculation<typeof inputs, CrimpEquivalentSize>({
  id: 'crimp-equivalent-size',
  title: 'Equivalent size of several wires in one crimp',
  about: 'Summed circular-mil area, and the gauge that has at least as much.',
  inputs,
  outputs: {
    circularMils: { label: 'Sum', unit: 'cmil' },
    areaMm2: { label: 'Sum', unit: 'mm2' },
    equivalentGauge: { label: 'Equivalent gauge', unit: 'AWG' },
    equivalentSize: { label: 'Equivalent size', unit: '' },
  },
  sources: [RULE, B258],
  run({ wires, evenGauges }) {
    const mils = wires.map((w) =>
      w.areaMm2 !== undefined
        ? w.areaMm2 / MM2_PER_CIRCULAR_MIL
        : w.size?.system === 'awg'
          ? awgCircularMils(w.size.gauge)
          : w.size && w.size.areaMm2 / MM2_PER_CIRCULAR_MIL,
    );
    if (mils.some((m) => m === undefined))
      return { ok: false, problem: { code: 'needs', inputs: ['areaMm2 or size of every wire'] } };
    const circularMils = mils.reduce<number>((sum, m) => sum + m!, 0);
    let gauge = evenGauges ? 40 : 44;
    while (gauge >= -3 && awgCircularMils(gauge) < circularMils * MATCH)
      gauge -= evenGauges && gauge > 0 ? 2 : 1;
    if (gauge < -3)
      return {
        ok: false,
        problem: {
          code: 'out-of-range',
          input: 'the summed area',
          value: circularMils,
          range: `up to 4/0 AWG, ${awgCircularMils(-3)} cmil`,
        },
      };
    const byDesignation = wires.filter((w) => w.areaMm2 === undefined).length;
    return answer({
      circularMils,
      areaMm2: circularMils * MM2_PER_CIRCULAR_MIL,
      equivalentGauge: gauge,
      equivalentSize: wireSizeText({ system: 'awg', gauge }),
      working: {
        formula: 'sum of circular mils; next larger gauge unless one matches within 0.5 %',
        figures: [
          ...wires.map((w, i) =>
            figure(`Wire ${i + 1}${w.size ? `, ${wireSizeText(w.size)}` : ''}`, mils[i]!, 'cmil'),
          ),
          figure(`Solid ${wireSizeText({ system: 'awg', gauge })}`, awgCircularMils(gauge), 'cmil'),
        ],
        sources: [RULE, B258],
        notes: byDesignation
          ? [`${byDesignation} of ${wires.length} wires by designation: their metal may differ by 20 %.`]
          : [],
      },
    });
  },
});
