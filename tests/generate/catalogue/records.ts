import { idFromText } from '@latchwork/core/model/ids';
import { roundTo } from '@latchwork/core/model/length-text';
import type { Part, PartKind } from '@latchwork/core/model/parts/part';
import { offersOf, type Terms } from './offers';

export const CATALOGUE_NAME = 'Workbench parts';
export const CATALOGUE_REVISION = '1';
export const CATALOGUE_DATE = '2026-01-15';

/** Makers of the demo catalogue. None exists; each says so in its name, so that no row can be taken for real. */
export const MAKERS = {
  connectors: 'Brackwater Connectors (invented)',
  wire: 'Tansyfield Wire (invented)',
  sundries: 'Ottermoss Sundries (invented)',
} as const;

export type PartOf<K extends PartKind> = Extract<Part, { kind: K }>;

export interface RecordArgs {
  readonly maker: keyof typeof MAKERS;
  readonly partNumber: string;
  readonly description: string;
  readonly massG: number;
  readonly temperatureMaxC?: number;
  /** Absent for parts that no supplier offers. */
  readonly terms?: Terms;
}

/** The fields that every part of the demo catalogue has, complete and invented. */
export function record(args: RecordArgs) {
  const maker = MAKERS[args.maker];
  return {
    id: idFromText(`${maker} ${args.partNumber}`),
    maker,
    partNumber: args.partNumber,
    description: args.description,
    catalogue: { name: CATALOGUE_NAME, revision: CATALOGUE_REVISION },
    lifecycle: 'active' as const,
    compliance: [{ regime: 'RoHS', status: 'declared' as const, date: CATALOGUE_DATE, document: 'invented' }],
    // User-assigned country code of ISO 3166-1: no country at all.
    origin: 'ZZ',
    massG: roundTo(args.massG, 2),
    ...(args.temperatureMaxC === undefined ? {} : { temperatureMaxC: args.temperatureMaxC }),
    ...(args.terms ? { offers: offersOf(args.partNumber, args.terms) } : {}),
    source: { document: 'Invented data sheet', revision: 'A', date: CATALOGUE_DATE },
  };
}

export const awg = (gauge: number) => ({ system: 'awg' as const, gauge });
export const mm2 = (areaMm2: number) => ({ system: 'mm2' as const, areaMm2 });
