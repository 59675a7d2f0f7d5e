import type { ColourCode } from '@latchwork/core/model/colour';
import type { CablePart } from '@latchwork/core/model/parts/wire';
import { conductor, STRANDED, type Stranded } from './conductors';
import { record } from './records';

interface CableArgs {
  readonly partNumber: string;
  readonly description: string;
  readonly stranded: Stranded;
  readonly coreOdMm: number;
  readonly colours: readonly ColourCode[];
  readonly odMm: number;
  readonly shield: NonNullable<CablePart['shield']>;
  readonly massGPerM: number;
  readonly price: number;
}

function cable(a: CableArgs): CablePart {
  return {
    kind: 'cable',
    ...record({
      maker: 'wire',
      partNumber: a.partNumber,
      description: a.description,
      massG: a.massGPerM,
      temperatureMaxC: 80,
      terms: { price: a.price, minimum: 25, multiple: 25, leadTimeDays: 21 },
    }),
    odMm: a.odMm,
    voltageMaxV: 300,
    cores: a.colours.map((base, i) => ({
      name: String(i + 1),
      colour: { base },
      ...conductor(a.stranded, a.coreOdMm, 'polyethylene'),
    })),
    shield: a.shield,
    drainWire: a.shield !== 'none',
    jacketColour: { base: 'BK' },
    bendFactor: 8,
    massGPerM: a.massGPerM,
  };
}

export function cableParts(): CablePart[] {
  const s = STRANDED;
  return [
    cable({
      partNumber: 'TC-2X24-P',
      description: 'Cable, one twisted pair 24 AWG, no shield',
      stranded: s.awg24,
      coreOdMm: 1.05,
      colours: ['WH', 'BU'],
      odMm: 3.4,
      shield: 'none',
      massGPerM: 13,
      price: 0.6,
    }),
    cable({
      partNumber: 'TC-4X26-S',
      description: 'Cable, two twisted pairs 26 AWG, foil and braid with drain wire',
      stranded: s.awg26,
      coreOdMm: 0.95,
      colours: ['WH', 'BN', 'GN', 'YE'],
      odMm: 4.6,
      shield: 'braid-and-foil',
      massGPerM: 28,
      price: 1.4,
    }),
    cable({
      partNumber: 'TC-3X20',
      description: 'Cable, three cores 20 AWG, no shield',
      stranded: s.awg20,
      coreOdMm: 1.45,
      colours: ['BN', 'BU', 'BK'],
      odMm: 4.8,
      shield: 'none',
      massGPerM: 36,
      price: 1.1,
    }),
  ];
}
