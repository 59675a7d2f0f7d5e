import { compareNatural } from '../base/stable-order';
import { labelTextAt } from '../derive/end-labels';
import type { Harness, ResolvedEnd, ResolvedWire } from '../derive/harness';
import { colourText } from '../model/colour';
import { wireSizeText } from '../model/wire-size';
import { wireRef } from '../rules/refs';
import { documentHead } from './document-head';
import type { Exporter } from './exporter';
import { tablePaper, type PaperColumn } from './paper/table-paper';
import type { Cell, Column, Table } from './table';

const COLUMNS = [
  { key: 'wire', title: 'Wire' },
  { key: 'signal', title: 'Signal' },
  { key: 'from', title: 'From' },
  { key: 'fromCavity', title: 'From cavity' },
  { key: 'fromContact', title: 'From contact' },
  { key: 'fromSeal', title: 'From seal' },
  { key: 'fromStripMm', title: 'From strip', unit: 'mm', align: 'right' },
  { key: 'to', title: 'To' },
  { key: 'toCavity', title: 'To cavity' },
  { key: 'toContact', title: 'To contact' },
  { key: 'toSeal', title: 'To seal' },
  { key: 'toStripMm', title: 'To strip', unit: 'mm', align: 'right' },
  { key: 'wirePart', title: 'Wire part' },
  { key: 'size', title: 'Size' },
  { key: 'areaMm2', title: 'Conductor area', unit: 'mm2', align: 'right' },
  { key: 'colour', title: 'Colour' },
  { key: 'lengthMm', title: 'Cut length', unit: 'mm', align: 'right' },
  { key: 'lengthKind', title: 'Length kind' },
  { key: 'group', title: 'Group' },
  { key: 'cable', title: 'Cable and core' },
  { key: 'path', title: 'Path' },
  { key: 'splice', title: 'Splice' },
  { key: 'fromLabel', title: 'From label' },
  { key: 'toLabel', title: 'To label' },
  { key: 'remarks', title: 'Remarks' },
] as const satisfies readonly Column[];

type Key = (typeof COLUMNS)[number]['key'];

/** What a page has room for; contact and seal stand in one column. */
const PAPER_COLUMNS: readonly PaperColumn[] = [
  { title: 'Wire', share: 6, keys: ['wire'], blank: '' },
  { title: 'Signal', share: 12, keys: ['signal'] },
  { title: 'From', share: 8, keys: ['from', 'fromCavity'] },
  { title: 'Contact, seal', share: 14, keys: ['fromContact', 'fromSeal'], blank: '–' },
  { title: 'Strip, mm', share: 5, keys: ['fromStripMm'], align: 'right', blank: '–' },
  { title: 'To', share: 8, keys: ['to', 'toCavity'] },
  { title: 'Contact, seal', share: 14, keys: ['toContact', 'toSeal'], blank: '–' },
  { title: 'Strip, mm', share: 5, keys: ['toStripMm'], align: 'right', blank: '–' },
  { title: 'Wire part, size', share: 16, keys: ['wirePart', 'size'] },
  { title: 'Colour', share: 6, keys: ['colour'] },
  { title: 'Length, mm', share: 7, keys: ['lengthMm'], align: 'right' },
  { title: 'Kind', share: 6, keys: ['lengthKind'], blank: '' },
  { title: 'Group', share: 8, keys: ['group'], blank: '' },
  { title: 'Path', share: 14, keys: ['path'], blank: '' },
  { title: 'Remarks', share: 12, keys: ['cable', 'remarks'], blank: '' },
]; // prettier-ignore

/** The from-to table: one row per wire or core. Size and area are those of the record; neither is made from the other. */
export const connectionTable: Exporter = {
  id: 'connection-table',
  title: 'Connection table',
  summary:
    'Every wire with both of its ends, their contacts and strip lengths, size, colour, length and path.',
  table: ({ harness }) => connectionTableOf(harness),
  paper: (input) => tablePaper(connectionTableOf(input.harness), input, PAPER_COLUMNS),
};

function connectionTableOf(harness: Harness): Table {
  const wires = [...harness.wires].sort((a, b) => compareNatural(a.wire.designator, b.wire.designator));
  const names = namesOf(harness);
  return {
    id: connectionTable.id,
    title: connectionTable.title,
    head: documentHead(harness.project, connectionTable.title, [['Wires', String(wires.length)]]),
    columns: [...COLUMNS],
    rows: wires.map((w) => rowOf(harness, w, names)),
    objects: wires.map((w) => [wireRef(w)]),
  };
}

function rowOf(harness: Harness, w: ResolvedWire, names: Names): Record<Key, Cell> {
  const from = endOf(harness, w.from);
  const to = endOf(harness, w.to);
  const splices = [w.from.splice?.designator, w.to.splice?.designator].filter((s) => s !== undefined);
  return {
    wire: w.wire.designator,
    signal: w.signal?.name ?? null,
    from: from.place,
    fromCavity: from.cavity,
    fromContact: from.contact,
    fromSeal: from.seal,
    fromStripMm: w.from.end.stripLengthMm ?? null,
    to: to.place,
    toCavity: to.cavity,
    toContact: to.contact,
    toSeal: to.seal,
    toStripMm: w.to.end.stripLengthMm ?? null,
    wirePart: w.part?.partNumber ?? null,
    size: w.conductor ? wireSizeText(w.conductor.size) : null,
    areaMm2: w.conductor?.areaMm2 ?? null,
    colour: w.wire.colour ? colourText(w.wire.colour) : null,
    lengthMm: w.length.cutMm ?? null,
    lengthKind: w.length.kind,
    group: w.group ? `${w.group.designator} (${w.group.form})` : null,
    cable: w.wire.core
      ? `${names.cables.get(w.wire.core.cable) ?? w.wire.core.cable}:${w.wire.core.name}`
      : null,
    path: w.route.found ? w.route.segments.map((s) => names.segments.get(s) ?? s).join(' ') || null : null,
    splice: splices.join(' ') || null,
    fromLabel: labelTextAt(harness.project.labels, w.wire.id, 0) ?? null,
    toLabel: labelTextAt(harness.project.labels, w.wire.id, 1) ?? null,
    remarks: remarksOf(w, from, to).join('; ') || null,
  };
}

interface EndCells {
  readonly place: string | null;
  readonly cavity: string | null;
  /** Contact, or terminal of a free end. */
  readonly contact: string | null;
  readonly seal: string | null;
  readonly contactMissing: boolean;
}

function endOf(harness: Harness, end: ResolvedEnd): EndCells {
  const partNumber = (id: string | undefined): string | null =>
    id === undefined ? null : (harness.parts.get(id)?.partNumber ?? null);
  const none = { cavity: null, contact: null, seal: null, contactMissing: false };
  switch (end.end.at) {
    case 'cavity':
      return {
        place: end.connector?.connector.designator ?? null,
        cavity: end.end.cavity,
        contact: end.contact ? partNumber(end.contact.part) : null,
        seal: partNumber(end.end.seal),
        contactMissing: !end.contact && end.connector?.part?.kind !== 'header',
      };
    case 'splice':
      return { ...none, place: end.splice?.designator ?? null };
    case 'free':
      return { ...none, place: end.end.text ?? null, contact: partNumber(end.end.terminal) };
  }
}

function remarksOf(w: ResolvedWire, from: EndCells, to: EndCells): string[] {
  const remarks: string[] = [];
  if (from.contactMissing) remarks.push('from: no contact chosen');
  if (to.contactMissing) remarks.push('to: no contact chosen');
  if (!w.conductor) remarks.push('no wire part chosen');
  if (w.length.kind === 'unknown') remarks.push(`length not known, needs ${w.length.needs.join(', ')}`);
  else if (w.length.needs.length) remarks.push(`cut length without ${w.length.needs.join(', ')}`);
  if (w.wire.note) remarks.push(w.wire.note);
  return remarks;
}

interface Names {
  readonly segments: ReadonlyMap<string, string>;
  readonly cables: ReadonlyMap<string, string>;
}

function namesOf(harness: Harness): Names {
  const { segments, cables } = harness.project;
  const designators = (list: readonly { id: string; designator: string }[]): Map<string, string> =>
    new Map(list.map((o) => [o.id, o.designator]));
  return { segments: designators(segments), cables: designators(cables) };
}
