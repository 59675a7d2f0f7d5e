import type { Part } from '@latchwork/core/model/parts/part';
import { contact, type Band } from './contacts';
import type { Family } from './family';
import { header, housing, secondaryLock } from './halves';
import { awg, mm2, record, type PartOf } from './records';

/** Sealed, 4.5 mm pitch, for outdoors: wire seals, cavity plugs, secondary locks. */
export const CEDAR: Family = {
  code: 'CD45',
  name: 'Cedar 4.5 sealed',
  pitchMm: 4.5,
  rowPitchMm: 4.5,
  arrangements: [
    { ways: 2, rows: 1 },
    { ways: 3, rows: 1 },
    { ways: 4, rows: 1 },
    { ways: 6, rows: 1 },
    { ways: 8, rows: 2 },
  ],
  keys: ['A', 'B'],
  numbering: 'loop',
  latchSide: 'both',
  voltageMaxV: 250,
  temperatureMaxC: 125,
  cycles: 20,
  currentA: 9,
  ratedWires: [
    [0.75, 1],
    [0.48, 0.8],
    [0.3, 0.6],
  ],
  creepageMm: 2.4,
  forcePerWayN: 6,
  wireOdMaxMm: 2.2,
  datumMm: 6.5,
  contactOrientations: 1,
  sealed: true,
  panelMm: [1.2, 3],
  tailSectionMm: 1,
  price: 2.4,
};

export const CEDAR_BANDS: readonly Band[] = [
  {
    code: '1822',
    sizeMin: awg(22),
    sizeMax: awg(18),
    areaMm2: [0.32, 1],
    insulationMm: [1.1, 2.1],
    stripLengthMm: 4,
    currentMaxA: 9,
    doubleCrimps: [[awg(22), awg(22)]],
    crimps: [
      { size: awg(18), heightMm: 1.28, pullN: 90 },
      { size: awg(20), heightMm: 1.12, pullN: 60 },
      { size: awg(22), heightMm: 1, pullN: 40 },
    ],
  },
  {
    code: 'M05',
    sizeMin: mm2(0.35),
    sizeMax: mm2(0.75),
    areaMm2: [0.3, 1.05],
    insulationMm: [1.2, 1.9],
    stripLengthMm: 4,
    currentMaxA: 7,
    doubleCrimps: [],
    crimps: [
      { size: mm2(0.35), heightMm: 1, pullN: 45 },
      { size: mm2(0.5), heightMm: 1.08, pullN: 60 },
    ],
  },
];

function seal(size: 'S' | 'L', odMinMm: number, odMaxMm: number, colour: string): PartOf<'wire-seal'> {
  return {
    kind: 'wire-seal',
    ...record({
      maker: 'connectors',
      partNumber: `CD45-SEAL-${size}`,
      description: `Cedar 4.5 sealed, wire seal for ${odMinMm} to ${odMaxMm} mm, ${colour}`,
      massG: 0.08,
      temperatureMaxC: 125,
      terms: { price: 0.06, minimum: 100, multiple: 100, second: true },
    }),
    fitsSeries: ['CD45'],
    odMinMm,
    odMaxMm,
  };
}

const cavityPlug = (): PartOf<'cavity-plug'> => ({
  kind: 'cavity-plug',
  ...record({
    maker: 'connectors',
    partNumber: 'CD45-PLUG',
    description: 'Cedar 4.5 sealed, cavity plug, white',
    massG: 0.1,
    temperatureMaxC: 125,
    terms: { price: 0.05, minimum: 100, multiple: 100, second: true },
  }),
  fitsSeries: ['CD45'],
});

/** Every part of the family. */
export function cedarParts(): Part[] {
  const f = CEDAR;
  const halves = f.arrangements.flatMap((a) =>
    f.keys.flatMap((key): Part[] => [
      housing(f, a, key, 'socket', 'free'),
      housing(f, a, key, 'pin', 'free'),
      housing(f, a, key, 'pin', 'panel'),
      header(f, a, key, { orientation: 'right-angle', termination: 'through-hole', finish: 'tin' }),
      header(f, a, key, { orientation: 'vertical', termination: 'surface-mount', finish: 'tin' }),
    ]),
  );
  const locks = f.arrangements.flatMap((a) => [secondaryLock(f, a, 'socket'), secondaryLock(f, a, 'pin')]);
  const contacts = CEDAR_BANDS.flatMap((band) =>
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
            price: 0.12,
            temperatureMaxC: f.temperatureMaxC,
          }),
        ),
      ),
    ),
  );
  return [
    ...halves,
    ...locks,
    cavityPlug(),
    seal('S', 1.1, 1.65, 'green'),
    seal('L', 1.6, 2.15, 'blue'),
    ...contacts,
  ];
}
