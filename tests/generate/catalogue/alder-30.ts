import type { Part } from '@latchwork/core/model/parts/part';
import { contact, type Band } from './contacts';
import type { Family } from './family';
import { alderVariants } from './alder-variants';
import { header, housing, secondaryLock } from './halves';
import { awg, mm2 } from './records';

/** Power and signal, 3.0 mm pitch, one and two rows, three keys. */
export const ALDER: Family = {
  code: 'AL3',
  name: 'Alder 3.0',
  pitchMm: 3,
  rowPitchMm: 3,
  arrangements: [
    { ways: 2, rows: 1 },
    { ways: 3, rows: 1 },
    { ways: 4, rows: 1 },
    { ways: 6, rows: 1 },
    { ways: 8, rows: 2 },
    { ways: 12, rows: 2 },
  ],
  keys: ['A', 'B', 'C', 'D'],
  numbering: 'row-wise',
  latchSide: 'top',
  voltageMaxV: 250,
  temperatureMaxC: 105,
  cycles: 30,
  currentA: 5,
  ratedWires: [
    [0.48, 1],
    [0.3, 0.6],
    [0.2, 0.5],
    [0.05, 0.2],
  ],
  creepageMm: 1.6,
  forcePerWayN: 3.2,
  wireOdMaxMm: 1.85,
  datumMm: 4,
  contactOrientations: 1,
  sealed: false,
  panelMm: [0.8, 1.8],
  tailSectionMm: 0.9,
  price: 1,
};

export const ALDER_BANDS: readonly Band[] = [
  {
    code: '2024',
    sizeMin: awg(24),
    sizeMax: awg(20),
    areaMm2: [0.2, 0.62],
    insulationMm: [0.89, 1.53],
    stripLengthMm: 2.5,
    currentMaxA: 5,
    doubleCrimps: [
      [awg(24), awg(24)],
      [awg(22), awg(24)],
    ],
    crimps: [
      { size: awg(20), heightMm: 1.02, pullN: 60 },
      { size: awg(22), heightMm: 0.9, pullN: 40 },
      { size: awg(24), heightMm: 0.82, pullN: 28 },
    ],
  },
  {
    code: '2630',
    sizeMin: awg(30),
    sizeMax: awg(26),
    areaMm2: [0.05, 0.16],
    insulationMm: [0.6, 1.05],
    stripLengthMm: 2.3,
    currentMaxA: 2,
    doubleCrimps: [],
    crimps: [
      { size: awg(26), heightMm: 0.66, pullN: 15 },
      { size: awg(28), heightMm: 0.6, pullN: 11 },
    ],
  },
  {
    code: 'M05',
    sizeMin: mm2(0.22),
    sizeMax: mm2(0.5),
    areaMm2: [0.18, 0.64],
    insulationMm: [1, 1.6],
    stripLengthMm: 2.5,
    currentMaxA: 5,
    doubleCrimps: [[mm2(0.22), mm2(0.22)]],
    crimps: [
      { size: mm2(0.35), heightMm: 0.9, pullN: 45 },
      { size: mm2(0.5), heightMm: 0.98, pullN: 60 },
    ],
  },
];

/** Every part of the family. */
export function alderParts(): Part[] {
  const f = ALDER;
  const halves = f.arrangements.flatMap((a) =>
    f.keys.flatMap((key): Part[] => [
      housing(f, a, key, 'socket', 'free'),
      housing(f, a, key, 'pin', 'free'),
      housing(f, a, key, 'pin', 'panel'),
      header(f, a, key, { orientation: 'vertical', termination: 'through-hole', finish: 'tin' }),
      header(f, a, key, { orientation: 'right-angle', termination: 'through-hole', finish: 'tin' }),
      header(f, a, key, { orientation: 'vertical', termination: 'surface-mount', finish: 'tin' }),
      header(f, a, key, { orientation: 'right-angle', termination: 'surface-mount', finish: 'tin' }),
      ...(key === 'A'
        ? [header(f, a, key, { orientation: 'vertical', termination: 'through-hole', finish: 'gold' })]
        : []),
    ]),
  );
  const locks = f.arrangements.flatMap((a) => [secondaryLock(f, a, 'socket'), secondaryLock(f, a, 'pin')]);
  const contacts = ALDER_BANDS.flatMap((band) =>
    (['socket', 'pin'] as const).flatMap((kind) =>
      (['tin', 'gold'] as const).flatMap((finish) =>
        (['strip', 'loose'] as const).map((form) =>
          contact({
            series: f.code,
            family: f.name,
            band,
            kind,
            finish,
            form,
            price: 0.05,
            temperatureMaxC: f.temperatureMaxC,
          }),
        ),
      ),
    ),
  );
  return [...halves, ...alderVariants(f), ...locks, ...contacts];
}
