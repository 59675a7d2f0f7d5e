import { CoveringPart, TerminalPart } from '../model/parts/accessories';
import type { Offer } from '../model/parts/common';
import type { Part } from '../model/parts/part';
import { idFromText } from '../model/ids';
import { compareWireSize } from '../model/wire-size';
import type { CATALOGUE_COLUMNS, CatalogueField } from './catalogue-columns';
import type { ImportProblem } from './import-problem';
import type { Row } from './read-rows';

export type CatalogueRow = Row<typeof CATALOGUE_COLUMNS>;

type Made = { readonly part: Part } | { readonly problems: readonly ImportProblem[] };

/** The record of one row. Empty cells give absent fields: not known, never none. */
export function partOfRow(row: CatalogueRow, catalogue: { name: string; revision: string }): Made {
  const problems: ImportProblem[] = [];
  const refuse = (field: CatalogueField, message: string): void =>
    void problems.push(row.problem(field, message));
  checkPairs(row, refuse);
  const part = recordOf(row, catalogue, offerOf(row, refuse), refuse);
  return problems.length || !part ? { problems } : { part };
}

type Refuse = (field: CatalogueField, message: string) => void;

function checkPairs(row: CatalogueRow, refuse: Refuse): void {
  const v = row.values;
  const pairs = [['od_min_mm', 'od_max_mm'], ['panel_min_mm', 'panel_max_mm'], ['board_min_mm', 'board_max_mm']] as const; // prettier-ignore
  for (const [low, high] of pairs) {
    const [a, b] = [v[low], v[high]];
    if (a !== undefined && b !== undefined && a > b) refuse(low, `${a} is above ${high} ${b}`);
  }
  if (v.size_min && v.size_max) {
    const order = compareWireSize(v.size_min, v.size_max);
    if (order === null) refuse('size_max', 'size_min and size_max must be of one system, AWG or mm2');
    else if (order > 0) refuse('size_min', 'size_min is the thinner wire (for gauges: the larger number)');
  }
}

function offerOf({ values: v }: CatalogueRow, refuse: Refuse): Offer | undefined {
  const terms = (['price', 'currency', 'moq', 'multiple', 'lead_days'] as const).filter(
    (f) => v[f] !== undefined,
  );
  if (v.supplier === undefined) {
    if (terms[0]) refuse(terms[0], 'belongs to a supplier, and none is given');
    return undefined;
  }
  if (v.currency === undefined) {
    refuse('supplier', 'an offer needs its currency');
    return undefined;
  }
  return {
    supplier: v.supplier,
    currency: v.currency,
    ...given({ minimum: v.moq, multiple: v.multiple, leadTimeDays: v.lead_days }),
    priceBreaks: v.price === undefined ? [] : [{ quantity: v.moq ?? 1, price: v.price }],
  };
}

function recordOf(
  row: CatalogueRow,
  catalogue: { name: string; revision: string },
  offer: Offer | undefined,
  refuse: Refuse,
): Part | undefined {
  const v = row.values;
  const common = {
    id: idFromText(`${v.maker} ${v.part}`),
    maker: v.maker,
    partNumber: v.part,
    description: v.description ?? '',
    catalogue,
    ...given({
      lifecycle: v.lifecycle,
      replacedBy: v.replaced_by,
      massG: v.mass_g,
      temperatureMaxC: v.temp_max_c,
    }),
    ...(offer ? { offers: [offer] } : {}),
  };
  switch (v.kind) {
    case 'housing':
    case 'header': {
      if (v.ways === undefined) {
        refuse('ways', 'must be given for a housing or header');
        return undefined;
      }
      if (v.rows !== undefined && v.rows > v.ways) {
        refuse('rows', `${v.rows} rows cannot hold ${v.ways} ways`);
        return undefined;
      }
      const half = { ways: v.ways, ...halfFields(v) };
      return v.kind === 'housing'
        ? {
            kind: 'housing', ...common, ...half,
            ...given({ acceptedSeries: v.series, wireOdMaxMm: v.wire_od_max_mm, datumMm: v.datum_mm }),
          }
        : { kind: 'header', ...common, ...half, ...headerFields(v) }; // prettier-ignore
    }
    case 'contact': {
      if ((v.series?.length ?? 0) > 1) refuse('series', 'a contact belongs to one series');
      if (v.form !== undefined && v.form !== 'strip' && v.form !== 'loose')
        refuse('form', 'a contact comes in strip or loose form');
      return { kind: 'contact', ...common, ...contactFields(v) };
    }
    case 'wire': {
      if (v.size === undefined) {
        refuse('size', 'must be given for a wire');
        return undefined;
      }
      return { kind: 'wire', ...common, size: v.size, ...wireFields(v) };
    }
    case 'cable':
      refuse(
        'kind',
        'a cable needs its cores, which a table of one part a row cannot hold; use a JSON catalogue',
      );
      return undefined;
    case 'covering': {
      const form = CoveringPart.shape.form.safeParse(v.form);
      if (form.success) return { kind: 'covering', ...common, form: form.data };
      refuse('form', `must be given for a covering, one of: ${CoveringPart.shape.form.options.join(', ')}`);
      return undefined;
    }
    case 'terminal': {
      const form = TerminalPart.shape.form.safeParse(v.form);
      if (!form.success) refuse('form', `a terminal is one of: ring, fork, ferrule, blade`);
      return {
        kind: 'terminal', ...common,
        ...given({ sizeMin: v.size_min, sizeMax: v.size_max, insulationMaxMm: v.od_max_mm, stripLengthMm: v.strip_mm, form: form.data }),
      }; // prettier-ignore
    }
    case 'wire-seal':
      return {
        kind: 'wire-seal',
        ...common,
        ...given({ fitsSeries: v.series, odMinMm: v.od_min_mm, odMaxMm: v.od_max_mm }),
      };
    case 'cavity-plug':
      return { kind: 'cavity-plug', ...common, ...given({ fitsSeries: v.series }) };
    case 'tool': {
      const tools = ['hand', 'press', 'extraction', 'insertion', 'stripper'] as const;
      const form = tools.find((t) => t === v.form);
      if (v.form !== undefined && !form) refuse('form', `a tool is one of: ${tools.join(', ')}`);
      return { kind: 'tool', ...common, ...given({ form }) };
    }
    case 'splice':
    case 'secondary-lock':
    case 'strain-relief':
    case 'grommet':
    case 'tie':
    case 'label':
    case 'fuse':
      return { kind: v.kind, ...common };
  }
}

type Values = CatalogueRow['values'];

const halfFields = (v: Values) => ({
  ...given({
    interface: v.interface, bodyForm: v.body_form, contactKind: v.contact_kind, mounting: v.mounting, rows: v.rows, pitchMm: v.pitch_mm,
    rowPitchMm: v.row_pitch_mm, numbering: v.numbering, cavityOneCorner: v.cavity_1_corner, keying: v.keying, voltageMaxV: v.voltage_v,
  }),
  ...(v.current_a === undefined ? {} : { currentRatings: [{ currentA: v.current_a }] }),
  ...(v.panel_min_mm === undefined && v.panel_max_mm === undefined
    ? {}
    : { panel: given({ thicknessMinMm: v.panel_min_mm, thicknessMaxMm: v.panel_max_mm }) }),
}); // prettier-ignore

const headerFields = (v: Values) =>
  given({
    orientation: v.orientation, termination: v.termination, finish: v.finish, tailLengthMm: v.tail_mm, standOffMm: v.standoff_mm,
    boardThicknessMinMm: v.board_min_mm, boardThicknessMaxMm: v.board_max_mm, processes: v.processes, reflowPeakMaxC: v.reflow_peak_c,
  }); // prettier-ignore

const contactFields = (v: Values) =>
  given({
    series: v.series?.[0], contactKind: v.contact_kind, sizeMin: v.size_min, sizeMax: v.size_max, insulationMinMm: v.od_min_mm,
    insulationMaxMm: v.od_max_mm, stripLengthMm: v.strip_mm, stripToleranceMm: v.strip_tol_mm, finish: v.finish, resistanceMohm: v.resistance_mohm,
    currentMaxA: v.current_a, cycles: v.cycles, strandedOnly: v.stranded_only, pack: v.pack, tools: v.tool === undefined ? undefined : [v.tool],
    form: v.form === 'strip' || v.form === 'loose' ? v.form : undefined,
  }); // prettier-ignore

const wireFields = (v: Values) =>
  given({
    areaMm2: v.area_mm2, stranding: v.stranding, odMinMm: v.od_min_mm, odMm: v.od_mm, odMaxMm: v.od_max_mm, resistanceOhmPerKm: v.resistance_ohm_km,
    voltageMaxV: v.voltage_v, colours: v.colours, style: v.style,
  }); // prettier-ignore

/** Without the fields that are undefined, so that absent is absent in the file too. */
function given<T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, x]) => x !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };
}
