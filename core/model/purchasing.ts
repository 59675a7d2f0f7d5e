import { z } from 'zod';
import { Colour } from './colour';
import { Id } from './ids';
import type { PartKind } from './parts/part';

/** Share of what is needed that is lost on the way: 0.03 is three in a hundred. */
const share = z.number().min(0).max(1).optional();

export const ScrapShares = z.strictObject({
  housing: share,
  header: share,
  contact: share,
  wire: share,
  cable: share,
  splice: share,
  terminal: share,
  'cavity-plug': share,
  'wire-seal': share,
  'secondary-lock': share,
  'strain-relief': share,
  covering: share,
  grommet: share,
  clamp: share,
  tie: share,
  label: share,
  fuse: share,
  tool: share,
} satisfies Record<PartKind, typeof share>);
export type ScrapShares = z.infer<typeof ScrapShares>;

/** What lies in the own store: pieces, or metres of wire and coverings; wire by colour. */
export const StockOnHand = z.strictObject({
  part: Id,
  colour: Colour.optional(),
  quantity: z.number().nonnegative(),
});
export type StockOnHand = z.infer<typeof StockOnHand>;

/** What an order needs beyond the harnesses themselves. Absent fields go by PURCHASING_DEFAULTS. */
export const Purchasing = z.strictObject({
  /** ISO 4217: offers in it are taken before others. Nothing is ever converted. */
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/)
    .optional(),
  scrap: ScrapShares.optional(),
  /** Contacts that are fed through until the tool is set, for each contact and wire that are crimped together. */
  setUpPieces: z.int().nonnegative().optional(),
  /** Crimps that are pulled apart or cut through, for each contact and wire that are crimped together. */
  samplesPerCrimp: z.int().nonnegative().optional(),
  /** Wire, cable or covering that is lost at the beginning of a run, for each part and colour. */
  runWasteMm: z.number().nonnegative().optional(),
  /** Harnesses that are made on one setting of the tools; absent: the whole order. */
  harnessesPerSetUp: z.int().positive().optional(),
  stock: z.array(StockOnHand).optional(),
});
export type Purchasing = z.infer<typeof Purchasing>;

/** All of them common practice; nobody measured them for the shop that builds. */
export const PURCHASING_DEFAULTS = {
  source: 'common practice, not verified',
  scrap: {
    housing: 0, header: 0, contact: 0.03, wire: 0.02, cable: 0.02, splice: 0.03, terminal: 0.03, 'cavity-plug': 0.02,
    'wire-seal': 0.02, 'secondary-lock': 0, 'strain-relief': 0, covering: 0.03, grommet: 0, clamp: 0, tie: 0.05,
    label: 0.05, fuse: 0, tool: 0,
  }, // prettier-ignore
  setUpPieces: 10,
  samplesPerCrimp: 5,
  runWasteMm: 500,
} as const satisfies Omit<Required<Purchasing>, 'currency' | 'stock' | 'harnessesPerSetUp'> & {
  source: string;
  scrap: Record<PartKind, number>;
};

/** A value that orders go by, and who says so. */
export interface PurchasingValue {
  readonly value: number;
  readonly source: string;
}

/** A project, as far as it matters here. */
interface Ordered {
  readonly purchasing?: Purchasing | undefined;
}

type NumberField = 'setUpPieces' | 'samplesPerCrimp' | 'runWasteMm';

const ENTERED = 'entered for this project';

export function purchasingValue(project: Ordered, field: NumberField): PurchasingValue {
  const value = project.purchasing?.[field];
  return value === undefined
    ? { value: PURCHASING_DEFAULTS[field], source: PURCHASING_DEFAULTS.source }
    : { value, source: ENTERED };
}

export function scrapOf(project: Ordered, kind: PartKind): PurchasingValue {
  const value = project.purchasing?.scrap?.[kind];
  return value === undefined
    ? { value: PURCHASING_DEFAULTS.scrap[kind], source: PURCHASING_DEFAULTS.source }
    : { value, source: ENTERED };
}
