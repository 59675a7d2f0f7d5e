import { COLLECTIONS, type Project } from '../../model/project';
import { documentHead } from '../document-head';
import type { Cell, Column, Table } from '../table';
import type { ExchangeReport } from './exchange-report';
import type { NoPlace } from './no-place';

const COLUMNS = [
  { key: 'item', title: 'Item' },
  { key: 'inProject', title: 'In the project', align: 'right' },
  { key: 'written', title: 'Written', align: 'right' },
  { key: 'remark', title: 'Remark' },
] as const satisfies readonly Column[];

type Row = Record<(typeof COLUMNS)[number]['key'], Cell>;

/** What stands in an exchange file: objects by kind with their number, then what could not be written as it is. */
export function exchangeTable(
  project: Project,
  document: { readonly id: string; readonly title: string },
  report: ExchangeReport,
  noPlace: readonly NoPlace[],
): Table {
  const left = new Set(noPlace.map((n) => n.item));
  const kinds = COLLECTIONS.filter((c) => !left.has(c) && (project[c].length > 0 || report.countOf(c) > 0));
  const counted = kinds.map((c): Row => ({
    item: c,
    inProject: project[c].length,
    written: report.countOf(c),
    remark: report.countOf(c) < project[c].length ? 'the others are named below' : null,
  }));
  const further = FURTHER.filter((k) => report.countOf(k) > 0).map((k): Row => ({
    item: k,
    inProject: null,
    written: report.countOf(k),
    remark: null,
  }));
  const absent = noPlace
    .map((n): Row => ({ item: n.item, inProject: n.count(project), written: 0, remark: n.why }))
    .filter((r) => r.inProject !== 0);
  const lost = report.losses.map((l): Row => ({
    item: l.item,
    inProject: null,
    written: null,
    remark: l.why,
  }));
  const rows = [...counted, ...further, ...absent, ...lost];
  const objects = report.losses.map((l) => (l.object ? [l.object] : []));
  return {
    id: document.id,
    title: document.title,
    head: documentHead(project, document.title, [
      ['Not written as it is', String(absent.length + lost.length)],
    ]),
    columns: [...COLUMNS],
    rows,
    objects: [...rows.slice(0, rows.length - lost.length).map(() => []), ...objects],
  };
}

/** What is written and is no collection of its own in the project. */
const FURTHER = [
  'accessories',
  'plugs',
  'seals',
  'terminals',
  'carriers',
  'nets',
  'connections',
  'routes',
] as const;
