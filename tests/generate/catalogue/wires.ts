import type { Colour, ColourCode } from '@latchwork/core/model/colour';
import type { WirePart } from '@latchwork/core/model/parts/wire';
import { wireSizeText } from '@latchwork/core/model/wire-size';
import { conductor, STRANDED, type Stranded } from './conductors';
import { record } from './records';

const plain: readonly ColourCode[] = [
  'BK', 'BN', 'RD', 'OG', 'YE', 'GN', 'BU', 'VT', 'GY', 'WH', 'PK', 'TQ',
]; // prettier-ignore
const striped: readonly (readonly [ColourCode, ColourCode])[] = [
  ['WH', 'BK'], ['WH', 'RD'], ['WH', 'OG'], ['WH', 'GN'], ['WH', 'BU'], ['WH', 'VT'],
  ['RD', 'BK'], ['BU', 'WH'], ['OG', 'BK'], ['GY', 'BK'],
]; // prettier-ignore

export const WIRE_COLOURS: readonly Colour[] = [
  ...plain.map((base) => ({ base })),
  ...striped.map(([base, stripe]) => ({ base, stripes: [stripe] })),
];
const WITH_EARTH: readonly Colour[] = [...WIRE_COLOURS, { base: 'GNYE' }];

interface WireArgs {
  readonly partNumber: string;
  readonly stranded: Stranded;
  readonly odMm: number;
  readonly price: number;
  readonly wall: 'thin' | 'thick';
  readonly colours?: readonly Colour[];
  /** Where the insulation stands another temperature than its wall usually does. */
  readonly temperatureMaxC?: number;
}

function wire(a: WireArgs): WirePart {
  const c = conductor(a.stranded, a.odMm, a.wall === 'thin' ? 'cross-linked polyolefin' : 'PVC');
  const construction = `${a.stranded.strands}x${a.stranded.strandDiameterMm}`;
  const massGPerM = Math.round((c.areaMm2 * 8.9 + (Math.PI / 4) * a.odMm ** 2 * 1.1) * 100) / 100;
  return {
    kind: 'wire',
    ...record({
      maker: 'wire',
      partNumber: a.partNumber,
      description: `Wire ${wireSizeText(a.stranded.size)}, ${construction}, ${a.odMm} mm over the insulation`,
      massG: massGPerM,
      temperatureMaxC: a.temperatureMaxC ?? (a.wall === 'thin' ? 125 : 105),
      terms: { price: a.price, minimum: 50, multiple: 50, leadTimeDays: 14, second: true },
    }),
    ...c,
    voltageMaxV: a.wall === 'thin' ? 300 : 600,
    colours: [...(a.colours ?? WIRE_COLOURS)],
    bendFactor: 5,
    style: a.wall === 'thin' ? 'thin wall' : 'thick wall',
    massGPerM,
  };
}

/** Part numbers: TW, size (gauge, or M and hundredths of mm2), diameter in hundredths of a millimetre. */
export function wireParts(): WirePart[] {
  const s = STRANDED;
  return [
    wire({ partNumber: 'TW-18-175', stranded: s.awg18, odMm: 1.75, price: 0.21, wall: 'thin', colours: WITH_EARTH }),
    wire({ partNumber: 'TW-18-210', stranded: s.awg18, odMm: 2.1, price: 0.19, wall: 'thick', colours: WITH_EARTH }),
    wire({ partNumber: 'TW-20-145', stranded: s.awg20, odMm: 1.45, price: 0.16, wall: 'thin', colours: WITH_EARTH }),
    wire({ partNumber: 'TW-20-180', stranded: s.awg20, odMm: 1.8, price: 0.14, wall: 'thick', colours: WITH_EARTH }),
    wire({ partNumber: 'TW-22-120', stranded: s.awg22, odMm: 1.2, price: 0.12, wall: 'thin' }),
    wire({ partNumber: 'TW-22-160', stranded: s.awg22, odMm: 1.6, price: 0.1, wall: 'thick' }),
    wire({ partNumber: 'TW-22-140-60', stranded: s.awg22, odMm: 1.4, price: 0.07, wall: 'thick', temperatureMaxC: 60 }),
    wire({ partNumber: 'TW-22-120-1', stranded: s.awg22solid, odMm: 1.2, price: 0.09, wall: 'thin' }),
    wire({ partNumber: 'TW-24-105', stranded: s.awg24, odMm: 1.05, price: 0.1, wall: 'thin' }),
    wire({ partNumber: 'TW-24-140', stranded: s.awg24, odMm: 1.4, price: 0.09, wall: 'thick' }),
    wire({ partNumber: 'TW-26-095', stranded: s.awg26, odMm: 0.95, price: 0.09, wall: 'thin' }),
    wire({ partNumber: 'TW-28-085', stranded: s.awg28, odMm: 0.85, price: 0.08, wall: 'thin' }),
    wire({ partNumber: 'TW-30-070', stranded: s.awg30, odMm: 0.7, price: 0.08, wall: 'thin' }),
    wire({ partNumber: 'TW-M14-100', stranded: s.mm014, odMm: 1, price: 0.09, wall: 'thin' }),
    wire({ partNumber: 'TW-M35-130', stranded: s.mm035, odMm: 1.3, price: 0.12, wall: 'thin' }),
    wire({ partNumber: 'TW-M50-150', stranded: s.mm05, odMm: 1.5, price: 0.15, wall: 'thin', colours: WITH_EARTH }),
  ]; // prettier-ignore
}
