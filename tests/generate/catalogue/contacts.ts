import { wireSizeText, type WireSize } from '@latchwork/core/model/wire-size';
import type { ContactPart } from '@latchwork/core/model/parts/contact';
import { record } from './records';

/** The wires that one barrel takes, with how it is crimped. All values are invented. */
export interface Band {
  readonly code: string;
  readonly sizeMin: WireSize;
  readonly sizeMax: WireSize;
  readonly areaMm2: readonly [number, number];
  readonly insulationMm: readonly [number, number];
  readonly stripLengthMm: number;
  readonly currentMaxA: number;
  readonly doubleCrimps: readonly (readonly [WireSize, WireSize])[];
  /** Sizes with a crimp specification: height of the conductor crimp and least pull force. */
  readonly crimps: readonly { readonly size: WireSize; readonly heightMm: number; readonly pullN: number }[];
}

export interface ContactArgs {
  readonly series: string;
  readonly family: string;
  readonly band: Band;
  readonly kind: 'pin' | 'socket';
  readonly finish: 'tin' | 'gold';
  readonly form: 'strip' | 'loose';
  readonly price: number;
  readonly temperatureMaxC: number;
}

/**
 * Part numbers: series, kind, band, then finish (0 tin, 1 gold) and form (1 on a strip, 2 loose), so that of several
 * that fit the plain one on a strip comes first.
 */
export const contactNumber = (a: Pick<ContactArgs, 'series' | 'band' | 'kind' | 'finish' | 'form'>): string =>
  `${a.series}-${a.kind === 'pin' ? 'P' : 'S'}${a.band.code}-${a.finish === 'tin' ? 0 : 1}${a.form === 'strip' ? 1 : 2}`;

export function contact(a: ContactArgs): ContactPart {
  const { band } = a;
  const pack = a.form === 'strip' ? 4000 : 100;
  const tools = [`${a.series}-HT-${band.code}`, `${a.series}-AP-${band.code}`, `${a.series}-XT`];
  return {
    kind: 'contact',
    ...record({
      maker: 'connectors',
      partNumber: contactNumber(a),
      description: `${a.family}, ${a.kind} contact, ${wireSizeText(band.sizeMin)} to ${wireSizeText(band.sizeMax)}, ${a.finish}, ${a.form}`,
      massG: 0.11,
      temperatureMaxC: a.temperatureMaxC,
      terms: {
        price: a.price * (a.finish === 'gold' ? 2.4 : 1) * (a.form === 'loose' ? 1.5 : 1),
        minimum: pack,
        multiple: pack,
        leadTimeDays: a.form === 'loose' ? 7 : 42,
        steps: a.form === 'loose' ? [1, 10, 50] : [1, 3, 10, 25],
        form: a.form,
      },
    }),
    series: a.series,
    contactKind: a.kind,
    sizeMin: band.sizeMin,
    sizeMax: band.sizeMax,
    areaMinMm2: band.areaMm2[0],
    areaMaxMm2: band.areaMm2[1],
    insulationMinMm: band.insulationMm[0],
    insulationMaxMm: band.insulationMm[1],
    stripLengthMm: band.stripLengthMm,
    stripToleranceMm: 0.3,
    finish: a.finish,
    finishThicknessUm: a.finish === 'gold' ? 0.4 : 3,
    resistanceMohm: a.finish === 'gold' ? 6 : 10,
    currentMaxA: band.currentMaxA,
    cycles: a.finish === 'gold' ? 100 : 30,
    strandedOnly: true,
    form: a.form,
    pack,
    doubleCrimps: band.doubleCrimps.map(([x, y]) => [x, y]),
    crimps: band.crimps.map((c) => ({
      size: c.size,
      heightMm: c.heightMm,
      heightToleranceMm: 0.03,
      widthMm: 1.6,
      insulationHeightMm: Math.round((band.insulationMm[1] + 0.5) * 100) / 100,
      pullForceMinN: c.pullN,
      tool: tools[a.form === 'strip' ? 1 : 0] as string,
      die: 'A',
      source: 'Invented crimp sheet, revision A',
    })),
    allowanceMm: 0,
    tools,
  };
}
