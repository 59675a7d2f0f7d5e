import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';

export interface HarnessMass extends Answer {
  readonly massG: number;
}

const CATALOGUE: CalcSource = { title: 'mass of each record of the catalogue', verified: true };

const Item = z.strictObject({
  name: z.string().min(1),
  /** Of one piece. */
  massG: z.number().nonnegative().optional(),
  /** Of goods by length. */
  massGPerM: z.number().nonnegative().optional(),
  lengthMm: z.number().nonnegative().optional(),
  quantity: z.number().nonnegative().default(1),
});

const inputs = z.strictObject({
  items: field(z.array(Item).min(1), 'Parts: mass of a piece, or mass per metre with a length'),
});

/**
 * Mass of a harness: pieces x mass + lengths x mass per metre. An item whose mass is not known makes the whole unknown:
 * what is missing is named, not counted as nothing.
 */
export const harnessMass = calculation<typeof inputs, HarnessMass>({
  id: 'harness-mass',
  title: 'Mass of a harness',
  about: 'Sum of pieces and of goods by length, from the masses of the records.',
  inputs,
  outputs: { massG: { label: 'Mass', unit: 'g' } },
  sources: [CATALOGUE],
  run({ items }) {
    const missing = items
      .filter((i) => i.massG === undefined && (i.massGPerM === undefined || i.lengthMm === undefined))
      .map((i) => (i.massGPerM === undefined ? `mass of ${i.name}` : `length of ${i.name}`));
    if (missing.length) return { ok: false, problem: { code: 'needs', inputs: [...new Set(missing)] } };
    const masses = items.map((i) => i.quantity * (i.massG ?? (i.massGPerM! * i.lengthMm!) / 1000));
    return answer({
      massG: masses.reduce((a, b) => a + b, 0),
      working: {
        formula: 'm = sum of quantity x mass + sum of quantity x length x mass per metre',
        figures: items.map((i, k) => figure(i.name, masses[k]!, 'g')),
        sources: [CATALOGUE],
        notes: [],
      },
    });
  },
});
