import type { Part } from '@latchwork/core/model/parts/part';
import { contact, type Band } from './contacts';
import type { Family } from './family';
import { header, housing, secondaryLock } from './halves';
import { awg, mm2 } from './records';

/** Signals, 2.0 mm pitch; a contact goes into its cavity either way round. */
export const BIRCH: Family = {
  code: 'BI2',
  name: 'Birch 2.0',
  pitchMm: 2,
  rowPitchMm: 2,
  arrangements: [
    { ways: 2, rows: 1 },
    { ways: 3, rows: 1 },
    { ways: 4, rows: 1 },
    { ways: 6, rows: 1 },
    { ways: 8, rows: 1 },
    { ways: 10, rows: 1 },
    { ways: 16, rows: 2 },
    { ways: 20, rows: 2 },
  ],
  keys: ['A', 'B'],
  numbering: 'zig-zag',
  latchSide: 'top',
  voltageMaxV: 125,
  temperatureMaxC: 105,
  cycles: 30,
  currentA: 2,
  ratedWires: [
    [0.2, 1],
    [0.12, 0.6],
    [0.045, 0.3],
  ],
  creepageMm: 1,
  forcePerWayN: 1.8,
  wireOdMaxMm: 1.35,
  datumMm: 3,
  contactOrientations: 2,
  sealed: false,
  panelMm: [0.8, 1.6],
  tailSectionMm: 0.5,
  price: 0.8,
};

export const BIRCH_BANDS: readonly Band[] = [
  {
    code: '2225',
    sizeMin: awg(24),
    sizeMax: awg(22),
    areaMm2: [0.18, 0.4],
    insulationMm: [0.9, 1.3],
    stripLengthMm: 2,
    currentMaxA: 2,
    doubleCrimps: [],
    crimps: [
      { size: awg(22), heightMm: 0.78, pullN: 40 },
      { size: awg(24), heightMm: 0.7, pullN: 28 },
    ],
  },
  {
    code: '2630',
    sizeMin: awg(30),
    sizeMax: awg(26),
    areaMm2: [0.05, 0.16],
    insulationMm: [0.6, 1.05],
    stripLengthMm: 1.8,
    currentMaxA: 1.5,
    doubleCrimps: [[awg(28), awg(30)]],
    crimps: [
      { size: awg(26), heightMm: 0.58, pullN: 15 },
      { size: awg(28), heightMm: 0.53, pullN: 11 },
      { size: awg(30), heightMm: 0.49, pullN: 6 },
    ],
  },
  {
    code: 'M014',
    sizeMin: mm2(0.08),
    sizeMax: mm2(0.14),
    areaMm2: [0.045, 0.17],
    insulationMm: [0.8, 1.2],
    stripLengthMm: 1.8,
    currentMaxA: 1.5,
    doubleCrimps: [],
    crimps: [{ size: mm2(0.14), heightMm: 0.58, pullN: 18 }],
  },
];

/** Every part of the family. */
export function birchParts(): Part[] {
  const f = BIRCH;
  const halves = f.arrangements.flatMap((a) =>
    f.keys.flatMap((key): Part[] => [
      housing(f, a, key, 'socket', 'free'),
      housing(f, a, key, 'pin', 'free'),
      ...(a.ways >= 4 ? [housing(f, a, key, 'pin', 'panel')] : []),
      header(f, a, key, { orientation: 'vertical', termination: 'through-hole', finish: 'tin' }),
      header(f, a, key, { orientation: 'right-angle', termination: 'through-hole', finish: 'gold' }),
      header(f, a, key, { orientation: 'vertical', termination: 'surface-mount', finish: 'tin' }),
      header(f, a, key, { orientation: 'right-angle', termination: 'surface-mount', finish: 'gold' }),
    ]),
  );
  const locks = f.arrangements.flatMap((a) => [secondaryLock(f, a, 'socket'), secondaryLock(f, a, 'pin')]);
  const contacts = BIRCH_BANDS.flatMap((band) =>
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
            price: 0.04,
            temperatureMaxC: f.temperatureMaxC,
          }),
        ),
      ),
    ),
  );
  return [...halves, ...locks, ...contacts];
}
