import { idFromText } from '@latchwork/core/model/ids';
import type { Part } from '@latchwork/core/model/parts/part';
import type { ContactPart } from '@latchwork/core/model/parts/contact';
import type { HousingPart } from '@latchwork/core/model/parts/housing';

const awg = (gauge: number) => ({ system: 'awg' as const, gauge });

/** Generic invented records for cables of open standards: complete, and nobody's product. */
const record = (partNumber: string, description: string) => ({
  id: idFromText(`Generic (invented) ${partNumber}`),
  maker: 'Generic (invented)',
  partNumber,
  description,
  catalogue: { name: 'Generic parts', revision: '1' },
  lifecycle: 'active' as const,
  temperatureMaxC: 80,
});

type Shape = Pick<HousingPart, 'ways' | 'rows' | 'pitchMm' | 'rowPitchMm' | 'numbering' | 'cavityOneCorner'>;

/** A housing of its own interface; series and interface bear the same name. */
export function genericHousing(
  partNumber: string,
  series: string,
  contactKind: 'pin' | 'socket',
  bodyForm: 'plug' | 'receptacle',
  shape: Shape,
): Part {
  return {
    kind: 'housing',
    ...record(partNumber, `Housing for ${contactKind}s`),
    family: series,
    interface: series,
    contactKind,
    bodyForm,
    mounting: 'free',
    keying: 'none',
    voltageMaxV: 60,
    ...shape,
    acceptedSeries: [series],
    wireOdMaxMm: 1.6,
    datumMm: 0,
    sealed: false,
    contactOrientations: 1,
  };
}

export function genericContact(partNumber: string, series: string, kind: 'pin' | 'socket'): ContactPart {
  return {
    kind: 'contact',
    ...record(partNumber, `Contact, ${kind}, 28 to 24 AWG`),
    series,
    contactKind: kind,
    sizeMin: awg(28),
    sizeMax: awg(24),
    areaMinMm2: 0.08,
    areaMaxMm2: 0.3,
    insulationMinMm: 0.7,
    insulationMaxMm: 1.3,
    stripLengthMm: 3,
    stripToleranceMm: 0.3,
    finish: 'gold',
    strandedOnly: true,
    doubleCrimps: [[awg(26), awg(26)]],
    form: 'loose',
  };
}

/** Stranded conductors of seven strands; diameters of ASTM B258 gauges 32, 34 and 36, rounded. */
export const STRANDED = {
  24: { size: awg(24), areaMm2: 0.2266, stranding: { strands: 7, strandDiameterMm: 0.203 }, odMm: 1.05 },
  26: { size: awg(26), areaMm2: 0.1407, stranding: { strands: 7, strandDiameterMm: 0.16 }, odMm: 0.95 },
  28: { size: awg(28), areaMm2: 0.0887, stranding: { strands: 7, strandDiameterMm: 0.127 }, odMm: 0.85 },
} as const;

export const wire26: Part = {
  kind: 'wire',
  ...record('WIRE-26', 'Wire 26 AWG'),
  ...STRANDED[26],
  voltageMaxV: 300,
  colours: (['RD', 'BK', 'WH', 'GN', 'BU', 'YE', 'BN', 'OG', 'GY'] as const).map((base) => ({ base })),
};

export const dataCable: Part = {
  kind: 'cable',
  ...record('CABLE-28-24', 'Cable, twisted pair 28 AWG and power pair 24 AWG, foil and braid'),
  odMm: 4.5,
  voltageMaxV: 30,
  cores: [
    { name: 'VBUS', colour: { base: 'RD' }, ...STRANDED[24] },
    { name: 'D-', colour: { base: 'WH' }, ...STRANDED[28] },
    { name: 'D+', colour: { base: 'GN' }, ...STRANDED[28] },
    { name: 'GND', colour: { base: 'BK' }, ...STRANDED[24] },
  ],
  shield: 'braid-and-foil',
  drainWire: true,
};
