import { compareNatural } from '../base/stable-order';
import { routeProblem } from '../derive/formboard/route-words';
import { nameOfEnd } from '../derive/formboard/wire-path';
import type { Harness, ResolvedEnd, ResolvedWire } from '../derive/harness';
import { byId } from '../base/by-id';
import { roundTo } from '../model/length-text';
import { wireRef } from '../rules/refs';
import { documentHead } from './document-head';
import type { Exporter } from './exporter';
import { tablePaper, type PaperColumn } from './paper/table-paper';
import type { Cell, Column, Table } from './table';

const mm = { unit: 'mm', align: 'right' } as const;
const COLUMNS = [
  { key: 'wire', title: 'Wire' },
  { key: 'signal', title: 'Signal' },
  { key: 'from', title: 'From' },
  { key: 'to', title: 'To' },
  { key: 'path', title: 'Path' },
  { key: 'pinned', title: 'Pinned' },
  { key: 'routeMm', title: 'Route', ...mm },
  { key: 'fromAllowanceMm', title: 'Allowance, from', ...mm },
  { key: 'toAllowanceMm', title: 'Allowance, to', ...mm },
  { key: 'takeUpMm', title: 'Take-up', ...mm },
  { key: 'extraMm', title: 'Extra', ...mm },
  { key: 'byRouteMm', title: 'Length by route', ...mm },
  { key: 'typedMm', title: 'Typed length', ...mm },
  { key: 'excessMm', title: 'Excess of the typed length', ...mm },
  { key: 'lengthMm', title: 'Cut length', ...mm },
  { key: 'remarks', title: 'Remarks' },
] as const satisfies readonly Column[];

type Key = (typeof COLUMNS)[number]['key'];

const right = { align: 'right', blank: '–' } as const;
const PAPER_COLUMNS: readonly PaperColumn[] = [
  { title: 'Wire', share: 6, keys: ['wire'], blank: '' },
  { title: 'Signal', share: 12, keys: ['signal'] },
  { title: 'From', share: 9, keys: ['from'] },
  { title: 'To', share: 9, keys: ['to'] },
  { title: 'Path', share: 20, keys: ['path'], blank: '–' },
  { title: 'Route, mm', share: 8, keys: ['routeMm'], ...right },
  { title: 'At from', share: 7, keys: ['fromAllowanceMm'], ...right },
  { title: 'At to', share: 6, keys: ['toAllowanceMm'], ...right },
  { title: 'Take-up', share: 7, keys: ['takeUpMm'], ...right },
  { title: 'Extra', share: 6, keys: ['extraMm'], ...right },
  { title: 'By route', share: 8, keys: ['byRouteMm'], ...right },
  { title: 'Typed', share: 7, keys: ['typedMm'], ...right },
  { title: 'Excess', share: 7, keys: ['excessMm'], ...right },
  { title: 'Cut length', share: 9, keys: ['lengthMm'], align: 'right' },
  { title: 'Remarks', share: 10, keys: ['remarks'], blank: '' },
]; // prettier-ignore

/** What every cut length is made of, one row per wire or core, in the order of the wires. */
export const lengthTable: Exporter = {
  id: 'length-table',
  title: 'Length table',
  summary: 'What each cut length is made of: route, allowances, take-up and extra; typed lengths compared.',
  table: ({ harness }) => lengthTableOf(harness),
  paper: (input) => tablePaper(lengthTableOf(input.harness), input, PAPER_COLUMNS),
};

function lengthTableOf(harness: Harness): Table {
  const wires = [...harness.wires].sort((a, b) => compareNatural(a.wire.designator, b.wire.designator));
  const without = wires.filter((w) => w.length.cutMm === undefined).length;
  return {
    id: lengthTable.id,
    title: lengthTable.title,
    head: documentHead(harness.project, lengthTable.title, [
      ['Wires', String(wires.length)],
      ['Without a length', String(without)],
      ['Cut length', 'route + allowances + take-up + extra, rounded up to 1 mm; a typed length wins'],
    ]),
    columns: [...COLUMNS],
    rows: wires.map((w) => rowOf(harness, w)),
    objects: wires.map((w) => [wireRef(w)]),
  };
}

function rowOf(harness: Harness, w: ResolvedWire): Record<Key, Cell> {
  const { length, route } = w;
  const segments = byId(harness.project.segments);
  const shown = (x: number | undefined): Cell => (x === undefined ? null : roundTo(x, 3));
  const path = route.found ? route.segments.map((s) => segments.get(s)?.designator ?? s) : [];
  return {
    wire: w.wire.designator,
    signal: w.signal?.name ?? null,
    from: endText(harness, w.from),
    to: endText(harness, w.to),
    path: path.join(' ') || null,
    pinned: w.wire.path ? 'yes' : 'no',
    routeMm: shown(length.routeMm),
    fromAllowanceMm: shown(length.allowancesMm[0]),
    toAllowanceMm: shown(length.allowancesMm[1]),
    takeUpMm: length.routeMm === undefined ? null : shown(length.takeUpMm),
    extraMm: shown(length.extraMm),
    byRouteMm: shown(length.byRouteMm),
    typedMm: shown(w.wire.lengthMm),
    excessMm: shown(length.differenceMm),
    lengthMm: shown(length.cutMm),
    remarks: remarksOf(harness, w).join('; ') || null,
  };
}

function endText({ project }: Harness, { end }: ResolvedEnd): string {
  const name = nameOfEnd(project, end);
  return end.at === 'cavity' ? `${name}:${end.cavity}` : name;
}

function remarksOf(harness: Harness, w: ResolvedWire): string[] {
  const why = routeProblem(harness, w);
  const remarks = why ? [`no route: ${why}`] : [];
  if (w.length.kind === 'routed' && w.length.needs.length > 0)
    remarks.push(`incomplete, not stated: ${w.length.needs.join(', ')}`);
  return remarks;
}
