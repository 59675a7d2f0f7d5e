import { awgAreaMm2 } from '../calc/awg';
import { strandAreaMm2 } from '../calc/strand-area';
import { roundTo } from '../model/length-text';
import type { Part } from '../model/parts/part';
import type { Conductor } from '../model/parts/wire';
import { tiny } from '../model/tiny';
import { wireSizeText, type WireSize } from '../model/wire-size';
import { partRef } from './refs';
import type { Rule } from './rule';
import { fact, limitFact, limitNeed, partFact } from './shared/evidence';
import { dropLimit } from './shared/example-route';

const DEVIATION = 'size-area-deviation';
/** Ohm mm2/km of annealed copper at 20 degC (IEC 60028: 1/58 ohm mm2/m). */
const COPPER = 1000 / 58;
const MM_PER_INCH = 25.4;
const KFT_PER_KM = 1 / 0.3048;

/**
 * Speaks of records that state one thing in two ways: a size and an area, an area and a diameter, an area and a resistance.
 * A length that is a plain number in inches where millimetres belong is told by what it has to enclose.
 */
export const unitSuspect: Rule<'part'> = {
  meta: {
    id: 'unit-suspect',
    revision: 1,
    severity: 'major',
    summary: 'The numbers of a record agree with each other, as numbers in their own units do.',
    why: 'An inch read as a millimetre or a gauge read as square millimetres passes every form, and is built.',
    source:
      'ASTM B258 (area of a gauge), IEC 60028 (copper); common practice for how far constructions differ',
    message: '{{part}}: {{reasons}}',
    unknown: 'Whether the units of {{part}} are right cannot be verified; not stated: {{needs}}',
  },
  scope: 'part',
  check(part, report, context) {
    const limit = context.limit(DEVIATION);
    const doubts = doubtsOf(part, limit?.value ?? Infinity);
    if (doubts === null) return;
    const at = [partRef(part)];
    if (doubts.length > 0)
      return report.fail({
        at,
        data: { part: part.partNumber, reasons: doubts.map((d) => d.text).join('; ') },
        evidence: [
          ...doubts.flatMap((d) => partFact(part, d.label, d.value, d.unit)),
          ...limitFact('deviation', limit, context.limitSet),
          ...fact('copper at 20 degC', roundTo(COPPER, 3), 'IEC 60028', 'ohm mm2/km'),
        ],
      });
    if (limit) report.pass();
    else
      report.cannotVerify({
        at,
        data: { part: part.partNumber },
        needs: [limitNeed(DEVIATION, context.limitSet)],
      });
  },
  examples: () => ({
    good: [
      { name: '22 AWG of 0.355 mm2 in 1.2 mm', project: tiny() },
      {
        name: 'a resistance of tinned strands',
        project: tiny((t) => void (t.part('wire', 'WIRE-22').resistanceOhmPerKm = 53.2)),
      },
    ],
    bad: [
      {
        name: '22 AWG with the area of 0.22 mm2',
        project: tiny((t) => void (t.part('wire', 'WIRE-22').areaMm2 = 0.22)),
        expect: ['WIRE-22'],
      },
      {
        name: 'a diameter in inches',
        project: tiny((t) => void (t.part('wire', 'WIRE-22').odMm = 0.047)),
        expect: ['WIRE-22'],
      },
      {
        name: 'a resistance for 1000 ft',
        project: tiny((t) => void (t.part('wire', 'WIRE-22').resistanceOhmPerKm = 16.2)),
        expect: ['WIRE-22'],
      },
      {
        name: 'a gauge in place of an area',
        project: tiny((t) => void (t.part('contact', 'C-PIN').areaMaxMm2 = 20)),
        expect: ['C-PIN'],
      },
      {
        name: 'a pitch in inches',
        project: tiny((t) => void (t.part('header', 'HEADER').pitchMm = 0.118)),
        expect: ['HEADER'],
      },
    ],
    unknown: [
      {
        name: 'no limit in the limit set',
        project: tiny((t) => dropLimit(t, DEVIATION)),
        expect: ['C-PIN', 'C-SOCKET', 'C-SOCKET-AU', 'H-PIN', 'H-SOCKET', 'HEADER', 'WIRE-22', 'WIRE-26'],
      },
    ],
  }),
};

interface Doubt {
  readonly text: string;
  readonly label: string;
  readonly value: number;
  readonly unit: string;
}

/** Null where the record states nothing twice. */
function doubtsOf(part: Part, deviation: number): readonly Doubt[] | null {
  switch (part.kind) {
    case 'wire':
      return conductorDoubts(part, '', deviation);
    case 'cable':
      return part.cores.flatMap((c) => conductorDoubts(c, `core ${c.name}, `, deviation));
    case 'contact': {
      const { sizeMin, sizeMax, areaMinMm2, areaMaxMm2, stripLengthMm } = part;
      return [
        ...sizeDoubts(sizeMin, areaMinMm2, 'least ', deviation, 'range'),
        ...sizeDoubts(sizeMax, areaMaxMm2, 'most ', deviation, 'range'),
        ...lengthDoubts('strip length', stripLengthMm, 0.5),
      ];
    }
    case 'housing':
    case 'header':
      return [
        ...lengthDoubts('pitch', part.ways > 1 ? part.pitchMm : undefined, 0.3),
        ...lengthDoubts('row pitch', part.rowPitchMm, 0.3),
        ...(part.kind === 'header' ? lengthDoubts('tail length', part.tailLengthMm, 0.3) : []),
      ];
    default:
      return null;
  }
}

const areaOfSize = (size: WireSize): number =>
  size.system === 'mm2' ? size.areaMm2 : awgAreaMm2(size.gauge);

/** A range of areas is wider than its sizes, so there only an area that no wire of the size comes near is doubted. */
function sizeDoubts(
  size: WireSize | undefined,
  areaMm2: number | undefined,
  what: string,
  deviation: number,
  kind: 'wire' | 'range' = 'wire',
): Doubt[] {
  if (!size || areaMm2 === undefined) return [];
  const nominal = areaOfSize(size);
  const allowed = kind === 'range' ? 2 * deviation : deviation;
  const ratio = areaMm2 / nominal;
  if (ratio <= 1 + allowed + 1e-9 && ratio >= 1 / (1 + allowed) - 1e-9) return [];
  const isGauge = size.system === 'awg' && areaMm2 === size.gauge;
  const text = isGauge
    ? `${what}area ${areaMm2} mm2 is the gauge of ${wireSizeText(size)}`
    : `${what}area ${areaMm2} mm2 is not that of ${wireSizeText(size)} (${Number(nominal.toPrecision(3))} mm2)`;
  return [{ text, label: `${what}area`, value: areaMm2, unit: 'mm2' }];
}

function conductorDoubts(c: Conductor, what: string, deviation: number): Doubt[] {
  const areaMm2 = c.areaMm2 ?? (c.stranding && strandAreaMm2(c.stranding));
  const out = sizeDoubts(c.size, areaMm2, what, deviation);
  const metal = areaMm2 ?? areaOfSize(c.size);
  // The insulation goes around the metal.
  const leastMm = Math.sqrt((4 * metal) / Math.PI);
  for (const od of new Set([c.odMinMm, c.odMm, c.odMaxMm]))
    if (od !== undefined && od < leastMm)
      out.push({
        text: `${what}diameter ${od} mm is less than its metal; in inches it would be ${roundTo(od * MM_PER_INCH, 2)} mm`,
        label: `${what}diameter`,
        value: od,
        unit: 'mm',
      });
  const r = c.resistanceOhmPerKm;
  const expected = COPPER / metal;
  if (
    r !== undefined &&
    Number.isFinite(deviation) &&
    (r < expected / (1 + deviation) || r > expected * (1 + 2 * deviation))
  )
    out.push({
      text: `${what}resistance ${r} ohm/km is not that of copper (${Number(expected.toPrecision(3))}); for 1000 ft it would be ${Number((r * KFT_PER_KM).toPrecision(3))}`,
      label: `${what}resistance`,
      value: r,
      unit: 'ohm/km',
    });
  return out;
}

/** No connector of this trade is that small in millimetres, and many are in inches. */
function lengthDoubts(what: string, mm: number | undefined, leastMm: number): Doubt[] {
  if (mm === undefined || mm >= leastMm) return [];
  const text = `${what} ${mm} mm; in inches it would be ${roundTo(mm * MM_PER_INCH, 2)} mm`;
  return [{ text, label: what, value: mm, unit: 'mm' }];
}
