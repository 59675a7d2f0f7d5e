import { ok, problem } from '../base/result';
import { Lifecycle, Finish, ContactKind } from '../model/parts/common';
import { SolderProcessKind } from '../model/parts/header';
import { BodyForm, Corner, Mounting, Numbering } from '../model/parts/mating-half';
import { PART_KIND_NAMES, type PartKind } from '../model/parts/part';
import {
  asColour,
  asCount,
  asListOf,
  asNotNegative,
  asNumber,
  asOneOf,
  asPositive,
  asSize,
  asText,
  asYesNo,
  type ReadField,
} from './fields';
import type { FieldSpecs } from './read-rows';

const asStranding: ReadField<{ strands: number; strandDiameterMm: number }> = (text) => {
  const m = /^(\d+)\s*[x×*/]\s*(\d+(?:[.,]\d+)?)$/i.exec(text);
  const strands = Number(m?.[1]);
  const strandDiameterMm = Number(m?.[2]?.replace(',', '.'));
  return m && strands > 0 && strandDiameterMm > 0
    ? ok({ strands, strandDiameterMm })
    : problem(`"${text}" is not a stranding; write 7x0.16 (strands x diameter in mm)`);
};

const asCurrency: ReadField<string> = (text) =>
  /^[A-Za-z]{3}$/.test(text)
    ? ok(text.toUpperCase())
    : problem(`"${text}" is not a currency code of three letters`);

const KINDS = Object.keys(PART_KIND_NAMES) as PartKind[];
/** Words of every `form` column; which of them a kind takes is said where its record is made. */
const FORMS = [
  'strip', 'loose', 'tube', 'sleeve', 'heat-shrink', 'tape', 'braid', 'conduit', 'ring', 'fork', 'ferrule', 'blade',
  'hand', 'press', 'extraction', 'insertion', 'stripper',
] as const; // prettier-ignore

/** Every column of a catalogue CSV. The unit is in the name; a size carries its own. */
export const CATALOGUE_COLUMNS = {
  kind: { read: asOneOf(KINDS), required: true },
  maker: { read: asText, required: true },
  part: { read: asText, required: true },
  description: { read: asText },
  lifecycle: { read: asOneOf(Lifecycle.options) },
  replaced_by: { read: asText },
  mass_g: { read: asNotNegative },
  supplier: { read: asText },
  price: { read: asNotNegative },
  currency: { read: asCurrency },
  moq: { read: asPositive },
  multiple: { read: asPositive },
  lead_days: { read: asNotNegative },

  interface: { read: asText },
  body_form: { read: asOneOf(BodyForm.options) },
  contact_kind: { read: asOneOf(ContactKind.options) },
  mounting: { read: asOneOf(Mounting.options) },
  ways: { read: asCount },
  rows: { read: asCount },
  pitch_mm: { read: asPositive },
  row_pitch_mm: { read: asPositive },
  numbering: { read: asOneOf(Numbering.options) },
  cavity_1_corner: { read: asOneOf(Corner.options) },
  keying: { read: asText },
  series: { read: asListOf(asText) },
  finish: { read: asOneOf(Finish.options) },
  current_a: { read: asPositive },
  voltage_v: { read: asPositive },
  temp_max_c: { read: asNumber },
  wire_od_max_mm: { read: asPositive },
  datum_mm: { read: asNumber },
  panel_min_mm: { read: asPositive },
  panel_max_mm: { read: asPositive },
  termination: { read: asOneOf(['through-hole', 'surface-mount']) },
  orientation: { read: asOneOf(['vertical', 'right-angle']) },
  tail_mm: { read: asPositive },
  standoff_mm: { read: asNotNegative },
  board_min_mm: { read: asPositive },
  board_max_mm: { read: asPositive },
  processes: { read: asListOf(asOneOf(SolderProcessKind.options)) },
  reflow_peak_c: { read: asPositive },

  size_min: { read: asSize },
  size_max: { read: asSize },
  od_min_mm: { read: asPositive },
  od_max_mm: { read: asPositive },
  strip_mm: { read: asPositive },
  strip_tol_mm: { read: asNotNegative },
  resistance_mohm: { read: asNotNegative },
  cycles: { read: asCount },
  stranded_only: { read: asYesNo },
  form: { read: asOneOf(FORMS) },
  pack: { read: asCount },
  tool: { read: asText },

  size: { read: asSize },
  area_mm2: { read: asPositive },
  stranding: { read: asStranding },
  od_mm: { read: asPositive },
  resistance_ohm_km: { read: asPositive },
  colours: { read: asListOf(asColour) },
  style: { read: asText },
} as const satisfies FieldSpecs;

export type CatalogueField = keyof typeof CATALOGUE_COLUMNS;

const COMMON = [
  'kind', 'maker', 'part', 'description', 'lifecycle', 'replaced_by', 'mass_g', 'supplier', 'price', 'currency', 'moq', 'multiple',
  'lead_days', 'temp_max_c',
] as const; // prettier-ignore
const HALF = [
  'interface', 'body_form', 'contact_kind', 'mounting', 'ways', 'rows', 'pitch_mm', 'row_pitch_mm', 'numbering', 'cavity_1_corner',
  'keying', 'current_a', 'voltage_v', 'panel_min_mm', 'panel_max_mm',
] as const; // prettier-ignore

/** Columns that a record of the kind has a place for, besides the common ones. */
const OF_KIND: { readonly [K in PartKind]?: readonly CatalogueField[] } = {
  housing: [...HALF, 'series', 'wire_od_max_mm', 'datum_mm'],
  header: [
    ...HALF, 'finish', 'termination', 'orientation', 'tail_mm', 'standoff_mm', 'board_min_mm', 'board_max_mm', 'processes',
    'reflow_peak_c',
  ],
  contact: [
    'series', 'contact_kind', 'size_min', 'size_max', 'od_min_mm', 'od_max_mm', 'strip_mm', 'strip_tol_mm', 'finish', 'current_a',
    'resistance_mohm', 'cycles', 'stranded_only', 'form', 'pack', 'tool',
  ],
  wire: [
    'size', 'area_mm2', 'stranding', 'od_mm', 'od_min_mm', 'od_max_mm', 'voltage_v', 'resistance_ohm_km', 'colours',
    'style',
  ],
  'wire-seal': ['series', 'od_min_mm', 'od_max_mm'],
  'cavity-plug': ['series'],
  terminal: ['size_min', 'size_max', 'od_max_mm', 'strip_mm', 'form'],
  covering: ['form'],
  tool: ['form'],
}; // prettier-ignore

/** Columns that the table shares between housings and headers although only one of the two holds the value. */
const SHARED_BY_HALVES: readonly CatalogueField[] = [...(OF_KIND.housing ?? []), ...(OF_KIND.header ?? [])];

/** What to do with a value in a column: keep it, leave it out and say so, or refuse the row. */
export function placeOf(kind: PartKind, field: CatalogueField): 'kept' | 'left-out' | 'refused' {
  if ((COMMON as readonly string[]).includes(field) || OF_KIND[kind]?.includes(field)) return 'kept';
  const half = kind === 'housing' || kind === 'header';
  return half && SHARED_BY_HALVES.includes(field) ? 'left-out' : 'refused';
}
