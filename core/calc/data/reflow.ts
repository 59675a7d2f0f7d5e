import type { PublishedTable } from './published-table';

/** Part classification temperature by body volume: below 350 mm3, 350 to 2000 mm3, above 2000 mm3. */
export interface ReflowRow {
  readonly thickness: 'thin' | 'middle' | 'thick';
  readonly below350C: number;
  readonly to2000C: number;
  readonly above2000C: number;
}

/** Bodies below 1.6 mm are thin; the one of exactly 2.5 mm is thick in revision C, middle from revision D on. */
export const REFLOW_LEAD_FREE: PublishedTable<ReflowRow> = {
  source: { title: 'IPC/JEDEC J-STD-020, table 4-2: lead-free classification temperature', verified: true },
  edition: 'C and D',
  rows: [
    { thickness: 'thin', below350C: 260, to2000C: 260, above2000C: 260 },
    { thickness: 'middle', below350C: 260, to2000C: 250, above2000C: 245 },
    { thickness: 'thick', below350C: 250, to2000C: 245, above2000C: 245 },
  ],
};

/** Tin-lead: below 2.5 mm and from 2.5 mm on, below and from 350 mm3 on. */
export const REFLOW_TIN_LEAD: PublishedTable<ReflowRow> = {
  source: {
    title: 'IPC/JEDEC J-STD-020, table 4-1: tin-lead classification temperature',
    verified: true,
    note: 'Tolerance +0/-5 C in revision C; later revisions print 235 and 220 C (from memory).',
  },
  edition: 'C',
  rows: [
    { thickness: 'thin', below350C: 240, to2000C: 225, above2000C: 225 },
    { thickness: 'middle', below350C: 240, to2000C: 225, above2000C: 225 },
    { thickness: 'thick', below350C: 225, to2000C: 225, above2000C: 225 },
  ],
};

/** Time within 5 C of the classification temperature, s (revision D): what the part bears and the user may use. */
export const REFLOW_PEAK_TIME_S = { 'lead-free': 30, 'tin-lead': 20 } as const;
