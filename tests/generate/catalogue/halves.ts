import type { HeaderPart } from '@latchwork/core/model/parts/header';
import type { HousingPart } from '@latchwork/core/model/parts/housing';
import type { Finish } from '@latchwork/core/model/parts/common';
import { columnsOf, keyText, ratingsOf, ways2, type Arrangement, type Family } from './family';
import { record, type PartOf } from './records';

/**
 * Part numbers of the connector families: family, ways, mounting and contact kind, key.
 * FS free for sockets, FP free for pins, PP panel for pins; HV and HA headers with tails (vertical, right-angle),
 * SV and SA the same for the surface; LS and LP secondary locks.
 */
export const halfNumber = (f: Family, a: Arrangement, form: string, key: string): string =>
  `${f.code}-${ways2(a.ways)}-${form}-${key}`;

export const lockNumber = (f: Family, a: Arrangement, kind: 'pin' | 'socket'): string =>
  `${f.code}-${ways2(a.ways)}-L${kind === 'pin' ? 'P' : 'S'}`;

function half(f: Family, a: Arrangement, key: string, kind: 'pin' | 'socket') {
  return {
    family: f.name,
    interface: f.code,
    // Here a body for pins is a plug and one for sockets a receptacle; other makers pair them otherwise.
    bodyForm: kind === 'pin' ? ('plug' as const) : ('receptacle' as const),
    contactKind: kind,
    ways: a.ways,
    rows: a.rows,
    pitchMm: f.pitchMm,
    rowPitchMm: f.rowPitchMm,
    numbering: f.numbering,
    // Counted from opposite corners, so that equal numbers meet when the faces look at each other.
    cavityOneCorner: kind === 'pin' ? ('top-right' as const) : ('top-left' as const),
    keying: key,
    latchSide: f.latchSide,
    fingerRoomMm: 12,
    body: {
      widthMm: Math.round((columnsOf(a) * f.pitchMm + 4) * 10) / 10,
      heightMm: Math.round((a.rows * f.rowPitchMm + 5) * 10) / 10,
      lengthMm: Math.round((10 + 1.5 * f.pitchMm) * 10) / 10,
    },
    mateTravelMm: Math.round((4 + f.pitchMm) * 10) / 10,
    voltageMaxV: f.voltageMaxV,
    creepageMm: f.creepageMm,
    currentRatings: ratingsOf(f, a),
    cycles: f.cycles,
    mateForceN: Math.round(a.ways * f.forcePerWayN * 10) / 10,
    breaksUnderLoad: false,
  };
}

const cavitiesText = (f: Family, a: Arrangement): string =>
  `${a.ways} ways${a.rows > 1 ? ` in ${a.rows} rows` : ''}, ${f.pitchMm} mm`;

export function housing(
  f: Family,
  a: Arrangement,
  key: string,
  kind: 'pin' | 'socket',
  mounting: 'free' | 'panel',
): HousingPart {
  const form = `${mounting === 'free' ? 'F' : 'P'}${kind === 'pin' ? 'P' : 'S'}`;
  return {
    kind: 'housing',
    ...record({
      maker: 'connectors',
      partNumber: halfNumber(f, a, form, key),
      description: `${f.name}, ${mounting} housing for ${kind}s, ${cavitiesText(f, a)}, ${keyText(key)}`,
      massG: ((0.5 + 0.28 * a.ways) * f.pitchMm) / 3,
      temperatureMaxC: f.temperatureMaxC,
      terms: { price: f.price * (0.1 + 0.03 * a.ways), minimum: 10, multiple: 10, second: a.ways <= 6 },
    }),
    ...half(f, a, key, kind),
    mounting,
    ...(mounting === 'panel' ? { panel: panelOf(f, a) } : {}),
    acceptedSeries: [f.code],
    wireOdMaxMm: f.wireOdMaxMm,
    datumMm: f.datumMm,
    sealed: f.sealed,
    ...(f.sealed ? { cavityPlug: `${f.code}-PLUG`, wireSeal: `${f.code}-SEAL-S` } : {}),
    secondaryLock: lockNumber(f, a, kind),
    contactOrientations: f.contactOrientations,
  };
}

const panelOf = (f: Family, a: Arrangement): NonNullable<HousingPart['panel']> => ({
  thicknessMinMm: f.panelMm[0],
  thicknessMaxMm: f.panelMm[1],
  cutOut: {
    widthMm: Math.round((columnsOf(a) * f.pitchMm + 7.2) * 10) / 10,
    heightMm: Math.round((a.rows * f.rowPitchMm + 6.4) * 10) / 10,
    cornerRadiusMm: 0.5,
  },
  insertFrom: 'front',
});

export interface HeaderForm {
  readonly orientation: 'vertical' | 'right-angle';
  readonly termination: 'through-hole' | 'surface-mount';
  readonly finish: Finish;
}

/** Tails stand out 1.4 mm below a 1.6 mm board; surface-mount bodies are of a resin that outlives reflow. */
export function header(f: Family, a: Arrangement, key: string, form: HeaderForm): HeaderPart {
  const tailed = form.termination === 'through-hole';
  const code = `${tailed ? 'H' : 'S'}${form.orientation === 'vertical' ? 'V' : 'A'}`;
  const suffix = form.finish === 'gold' ? '-AU' : '';
  const resin = tailed ? '' : ', high-temperature resin for reflow';
  return {
    kind: 'header',
    ...record({
      maker: 'connectors',
      partNumber: halfNumber(f, a, code, key) + suffix,
      description: `${f.name}, ${form.orientation} ${form.termination} header with pins, ${cavitiesText(f, a)}, ${keyText(key)}, ${form.finish}${resin}`,
      massG: ((0.6 + 0.35 * a.ways) * f.pitchMm) / 3,
      temperatureMaxC: f.temperatureMaxC,
      terms: {
        price: f.price * (0.2 + 0.07 * a.ways) * (form.finish === 'gold' ? 1.7 : 1) * (tailed ? 1 : 1.25),
        minimum: tailed ? 5 : 50,
        multiple: tailed ? 5 : 50,
        second: tailed,
      },
    }),
    ...half(f, a, key, 'pin'),
    mounting: 'board',
    orientation: form.orientation,
    termination: form.termination,
    finish: form.finish,
    finishThicknessUm: form.finish === 'gold' ? 0.4 : 3,
    resistanceMohm: 8,
    ...(tailed
      ? { tailLengthMm: 3.2, tailSectionMm: f.tailSectionMm, holeMm: holeFor(f.tailSectionMm) }
      : {}),
    standOffMm: tailed ? 0.2 : 0.1,
    boardThicknessMinMm: 1.2,
    boardThicknessMaxMm: 2,
    processes: tailed ? ['wave', 'hand'] : ['reflow', 'hand'],
    ...(tailed ? {} : { reflowPeakMaxC: 260, reflowTimeMaxS: 30 }),
    boardLocks: tailed
      ? [
          {
            material: 'plastic',
            holeMinMm: 2.95,
            holeMaxMm: 3.05,
            boardMinMm: 1.2,
            boardMaxMm: 2,
            plated: false,
          },
        ]
      : [
          {
            material: 'metal',
            holeMinMm: 1.55,
            holeMaxMm: 1.7,
            boardMinMm: 1.2,
            boardMaxMm: 2,
            plated: true,
          },
        ],
  };
}

const holeFor = (tailSectionMm: number): number => Math.round((tailSectionMm * Math.SQRT2 + 0.2) * 20) / 20;

export function secondaryLock(f: Family, a: Arrangement, kind: 'pin' | 'socket'): PartOf<'secondary-lock'> {
  return {
    kind: 'secondary-lock',
    ...record({
      maker: 'connectors',
      partNumber: lockNumber(f, a, kind),
      description: `${f.name}, secondary lock for ${a.ways}-way housings for ${kind}s`,
      massG: 0.1 + 0.03 * a.ways,
      temperatureMaxC: f.temperatureMaxC,
      terms: { price: f.price * (0.05 + 0.01 * a.ways), minimum: 10, multiple: 10 },
    }),
  };
}
