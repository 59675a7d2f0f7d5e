import { z } from 'zod';
import { answer, calculation, field, figure, type Answer, type CalcSource } from './calculation';
import { balanceBundle, loadFactorAt, type HeatBundle } from './heat/bundle-balance';

export interface BundleHeat extends Answer {
  readonly hottestC: number;
  /** Between these the hottest conductor is expected. */
  readonly fromC: number;
  readonly toC: number;
  readonly surfaceC: number;
  readonly lossWPerM: number;
  /** Factor on all currents at which the hottest conductor reaches the limit. */
  readonly loadFactor: number | undefined;
}

const CONVECTION: CalcSource = {
  title: 'Churchill and Chu (1975): natural convection from a horizontal cylinder',
  verified: false,
  note: 'from memory; the correlation itself is good to about 15 to 25 % on thin cylinders',
};
const CONDUCTION: CalcSource = {
  title: 'Fourier conduction with uniform source: q/(4 pi k)',
  verified: true,
};
const CONSTANTS: CalcSource = {
  title: 'emissivity 0.9, insulation 0.2 W/(m K), packed wires 0.25 W/(m K)',
  verified: false,
  note: 'from memory; measured bundles scatter widely',
};

/** What moves the estimate to either edge of its band. */
const BAND = {
  cool: { convectionFactor: 1.2, emissivity: 0.95, bundle: 1.6 },
  hot: { convectionFactor: 0.8, emissivity: 0.75, bundle: 1 / 1.6 },
};

const inputs = z.strictObject({
  wires: field(
    z
      .array(
        z
          .strictObject({
            id: z.string(),
            ohmPerKm: z.number().positive(),
            currentA: z.number().nonnegative(),
            conductorMm: z.number().positive(),
            odMm: z.number().positive(),
          })
          .refine((w) => w.odMm > w.conductorMm, 'the insulation must be thicker than nothing'),
      )
      .min(1),
    'Wires: resistance at 20 C, current, diameter of conductor and of insulation',
  ),
  diameterMm: field(z.number().positive().optional(), 'Bundle diameter over the wires', 'mm'),
  coverings: field(
    z
      .array(z.strictObject({ wallMm: z.number().positive(), conductivityWPerMK: z.number().positive() }))
      .default([]),
    'Coverings from the inside out',
  ),
  ambientC: field(z.number().min(-60).max(300), 'Ambient temperature', 'degC'),
  heightM: field(z.number().min(0).max(20_000).default(0), 'Height', 'm'),
  emissivity: field(z.number().positive().max(1).default(0.9), 'Emissivity of the surface'),
  insulationWPerMK: field(z.number().positive().default(0.2), 'Conductivity of the insulation', 'W/(m K)'),
  bundleWPerMK: field(z.number().positive().default(0.25), 'Conductivity across the packed wires', 'W/(m K)'),
  limitC: field(z.number().optional(), 'Limit of the hottest conductor', 'degC'),
});

/**
 * Estimate of the steady temperature of a long horizontal bundle in still air, with its band. Losses at the temperature of the
 * hottest conductor, radial conduction, natural convection and radiation. It knows nothing of draughts, of heat along the
 * wires into connectors, of walls nearby, or of where in the bundle the loaded wires lie: it never replaces a table or a test.
 */
export const bundleHeat = calculation<typeof inputs, BundleHeat>({
  id: 'bundle-heat',
  title: 'Heat of a bundle (estimate)',
  about: 'Steady heat balance of a bundle in still air; an estimate with its band, never a rating.',
  inputs,
  outputs: {
    hottestC: { label: 'Hottest conductor (estimate)', unit: 'degC' },
    fromC: { label: 'Band from', unit: 'degC' },
    toC: { label: 'Band to', unit: 'degC' },
    surfaceC: { label: 'Surface', unit: 'degC' },
    lossWPerM: { label: 'Loss', unit: 'W/m' },
    loadFactor: { label: 'Factor on the currents that reaches the limit', unit: '' },
  },
  sources: [CONVECTION, CONDUCTION, CONSTANTS],
  run(i) {
    const diameterMm = i.diameterMm ?? (i.wires.length === 1 ? i.wires[0]!.odMm : undefined);
    if (diameterMm === undefined) return { ok: false, problem: { code: 'needs', inputs: ['diameterMm'] } };
    const bundle: HeatBundle = { ...i, diameterMm, convectionFactor: 1 };
    const middle = balanceBundle(bundle);
    const cool = balanceBundle({
      ...bundle,
      convectionFactor: BAND.cool.convectionFactor,
      emissivity: Math.max(i.emissivity, BAND.cool.emissivity),
      bundleWPerMK: i.bundleWPerMK * BAND.cool.bundle,
    });
    const hot = balanceBundle({
      ...bundle,
      convectionFactor: BAND.hot.convectionFactor,
      emissivity: Math.min(i.emissivity, BAND.hot.emissivity),
      bundleWPerMK: i.bundleWPerMK * BAND.hot.bundle,
    });
    if (!middle || !cool || !hot)
      return {
        ok: false,
        problem: {
          code: 'no-solution',
          reason: 'the bundle finds no balance below 1000 degC at the hot edge of the band',
          objects: i.wires.filter((w) => w.currentA > 0).map((w) => w.id),
        },
      };
    return answer({
      hottestC: middle.hottestC,
      fromC: cool.hottestC,
      toC: hot.hottestC,
      surfaceC: middle.surfaceC,
      lossWPerM: middle.lossWPerM,
      loadFactor:
        i.limitC === undefined || i.limitC <= i.ambientC || i.wires.every((w) => w.currentA === 0)
          ? undefined
          : loadFactorAt(bundle, i.limitC),
      working: {
        formula: 'sum I2 R(T) = convection + radiation at the surface; T = surface + conduction inside',
        figures: [
          figure('Wires', i.wires.length),
          figure('Bundle diameter', diameterMm, 'mm'),
          figure('Coverings', i.coverings.length),
          figure('Ambient', i.ambientC, 'degC'),
          figure('Emissivity', i.emissivity),
          figure('Conductivity of the packed wires', i.bundleWPerMK, 'W/(m K)'),
          figure('Surface', middle.surfaceC, 'degC'),
          figure('Loss', middle.lossWPerM, 'W/m'),
        ],
        sources: [CONVECTION, CONDUCTION, CONSTANTS],
        notes: ['Estimate for still air, horizontal, long; not a rating.'],
      },
    });
  },
});
