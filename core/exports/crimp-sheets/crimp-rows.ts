import type { Harness } from '../../derive/harness';
import { roundTo } from '../../model/length-text';
import { wireSizeText } from '../../model/wire-size';
import type { Cell, Column, RowOf } from '../table';
import { CHECK_FREQUENCY, HEIGHT_SAMPLES, PULL_SAMPLES, strandDamageText } from './crimp-checks';
import { wireName, type CrimpGroup } from './crimp-groups';
import { crimpValues } from './crimp-spec-values';

export const CRIMP_COLUMNS = [
  { key: 'sheet', title: 'Sheet', align: 'right' },
  { key: 'kind', title: 'Kind' },
  { key: 'part', title: 'Part number' },
  { key: 'maker', title: 'Maker' },
  { key: 'series', title: 'Series' },
  { key: 'form', title: 'Form' },
  { key: 'wire', title: 'Wire' },
  { key: 'size', title: 'Size' },
  { key: 'strands', title: 'Strands' },
  { key: 'odMm', title: 'Outside diameter', unit: 'mm' },
  { key: 'otherWires', title: 'Further wires in the crimp' },
  { key: 'tool', title: 'Tool or applicator' },
  { key: 'die', title: 'Die or setting' },
  { key: 'stripMm', title: 'Strip length', unit: 'mm', align: 'right' },
  { key: 'stripToleranceMm', title: 'Strip, plus and minus', unit: 'mm', align: 'right' },
  { key: 'heightMm', title: 'Crimp height', unit: 'mm', align: 'right' },
  { key: 'heightMinMm', title: 'Crimp height, at least', unit: 'mm', align: 'right' },
  { key: 'heightMaxMm', title: 'Crimp height, at most', unit: 'mm', align: 'right' },
  { key: 'widthMm', title: 'Crimp width', unit: 'mm', align: 'right' },
  { key: 'insulationHeightMm', title: 'Insulation crimp height (reference)', unit: 'mm', align: 'right' },
  { key: 'specSource', title: 'Source of the specification' },
  { key: 'pullMinN', title: 'Pull-out force, at least', unit: 'N', align: 'right' },
  { key: 'pullSource', title: 'Source of the pull-out force' },
  { key: 'retentionMaxN', title: 'Tug on a seated contact, at most', unit: 'N', align: 'right' },
  { key: 'strandDamage', title: 'Damaged strands, at most' },
  { key: 'heightSamples', title: 'Heights per check', align: 'right' },
  { key: 'pullSamples', title: 'Pulls per check', align: 'right' },
  { key: 'frequency', title: 'Checked' },
  { key: 'quantity', title: 'Per harness', align: 'right' },
  { key: 'orderQuantity', title: 'Per order', align: 'right' },
  { key: 'usedAt', title: 'Used at' },
  { key: 'remarks', title: 'Remarks' },
] as const satisfies readonly Column[];

export type CrimpKey = (typeof CRIMP_COLUMNS)[number]['key'];

export function crimpRow(harness: Harness, group: CrimpGroup, sheet: number, order: number): RowOf<CrimpKey> {
  const { part, wires, tool, places } = group;
  const v = crimpValues(harness, group);
  const [first, ...others] = wires;
  const c = first?.conductor;
  const bound = (sign: 1 | -1): number | null =>
    v.heightMm === null || v.heightToleranceMm === null
      ? null
      : roundTo(v.heightMm + sign * v.heightToleranceMm, 3);
  const cells: Record<CrimpKey, Cell> = {
    sheet,
    kind: part.kind,
    part: part.partNumber,
    maker: part.maker,
    series: part.kind === 'contact' ? (part.series ?? null) : null,
    form: part.kind === 'contact' || part.kind === 'terminal' ? (part.form ?? null) : null,
    wire: first?.part ? wireName(first) : null,
    size: c ? wireSizeText(c.size) : null,
    strands: c?.stranding ? `${c.stranding.strands} x ${c.stranding.strandDiameterMm} mm` : null,
    odMm: odText(c?.odMinMm, c?.odMm, c?.odMaxMm),
    otherWires: others.map(wireName).join(', ') || null,
    tool: tool?.partNumber ?? null,
    die: tool?.die ?? null,
    stripMm: v.stripMm,
    stripToleranceMm: v.stripToleranceMm,
    heightMm: v.heightMm,
    heightMinMm: bound(-1),
    heightMaxMm: bound(1),
    widthMm: v.widthMm,
    insulationHeightMm: v.insulationHeightMm,
    specSource: v.specSource,
    pullMinN: v.pull?.value ?? null,
    pullSource: v.pull?.source ?? null,
    retentionMaxN: v.retentionMaxN,
    strandDamage: strandDamageText(c) ?? null,
    heightSamples: HEIGHT_SAMPLES,
    pullSamples: PULL_SAMPLES,
    frequency: CHECK_FREQUENCY,
    quantity: places.length,
    orderQuantity: places.length * order,
    usedAt: places.map((p) => p.text).join(', '),
    remarks:
      [
        ...v.missing.map((m) => `not stated: ${m}`),
        ...(tool && !tool.onList ? [`${tool.partNumber} is not on the tool list`] : []),
        ...(others.length > 0 ? ['wires lie parallel, not twisted; each is pulled alone'] : []),
      ].join('; ') || null,
  };
  return { cells, objects: places.map((p) => p.object) };
}

function odText(
  min: number | undefined,
  nominal: number | undefined,
  max: number | undefined,
): string | null {
  if (min !== undefined && max !== undefined) return `${min} to ${max}`;
  const known = nominal ?? max ?? min;
  return known === undefined ? null : String(known);
}
