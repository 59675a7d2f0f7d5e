import type { CalcSource } from '../calculation';

/** Least inside radius of a bend as a multiple of the outside diameter. */
export interface BendRule {
  readonly of: string;
  /** As installed for good, or while it is being worked on, where the source tells them apart. */
  readonly least: number;
  readonly preferred?: number;
  readonly source: CalcSource;
}

const nasa = (section: string): CalcSource => ({
  title: `NASA-STD-8739.4 7.3.21, by way of the NASA workmanship pages (${section})`,
  verified: true,
});
const as50881: CalcSource = {
  title: 'SAE AS50881, by way of a public discussion of August 2016',
  verified: true,
};
const a620 = (verified: boolean): CalcSource => ({ title: 'IPC/WHMA-A-620, table 14-1', verified });

export const BEND_RULES = {
  'nasa-coaxial': { of: 'coaxial cable', least: 6, preferred: 10, source: nasa('NEPP') },
  'nasa-multiconductor': {
    of: 'multiconductor cable, not polyimide film',
    least: 6,
    preferred: 10,
    source: nasa('4.03'),
  },
  'nasa-polyimide': { of: 'cable with polyimide film', least: 10, preferred: 15, source: nasa('4.03') },
  'nasa-flat': { of: 'flat or ribbon cable', least: 3, preferred: 10, source: nasa('4.05') },
  'nasa-coaxial-ribbon': { of: 'coaxial ribbon cable', least: 6, preferred: 10, source: nasa('4.05') },
  'as50881-unsupported': { of: 'wire or bundle, unsupported', least: 10, source: as50881 },
  'as50881-supported': { of: 'wire, fully supported', least: 3, source: as50881 },
  'a620-single-wire': { of: 'single insulated wire', least: 2, source: a620(true) },
  'a620-unshielded-large': { of: 'unshielded cable, larger wire', least: 5, source: a620(true) },
  'a620-unshielded-small': { of: 'unshielded wire, 10 AWG and smaller', least: 3, source: a620(false) },
  'a620-shielded': { of: 'shielded wire or cable', least: 5, source: a620(false) },
  'a620-coaxial-flexed': { of: 'coaxial cable, flexed', least: 10, source: a620(false) },
  'a620-coaxial-fixed': { of: 'coaxial cable, fixed', least: 5, source: a620(false) },
  'ac-43-bundle': {
    of: 'wire group or bundle',
    least: 10,
    source: { title: 'FAA AC 43.13-1B, 11-96', verified: false },
  },
} as const satisfies Record<string, BendRule>;

export type BendRuleId = keyof typeof BEND_RULES;

/** A bundle bends no tighter than its most sensitive member lets it. */
export const WORST_MEMBER: CalcSource = {
  title: 'NASA workmanship standards 4.02: largest minimum radius of any component of the harness',
  verified: true,
};

/** Straight length of coaxial cable at each end, in its diameters. */
export const COAXIAL_STRAIGHT_DIAMETERS = 6;
export const COAXIAL_STRAIGHT: CalcSource = {
  title: 'NASA workmanship standards 4.04: straight length of coaxial cable at each end',
  verified: true,
};
