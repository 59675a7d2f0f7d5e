import type { Harness } from '../../derive/harness';
import { limitValue } from '../../derive/wire-ampacity';
import { roundTo } from '../../model/length-text';
import { connectorRef } from '../../rules/refs';
import type { Cell, Column, RowOf } from '../table';
import type { BoardPattern, PanelCut } from './cut-out-sources';

export const CUT_OUT_COLUMNS = [
  { key: 'connector', title: 'Connector' },
  { key: 'kind', title: 'Kind' },
  { key: 'part', title: 'Part number' },
  { key: 'equipment', title: 'On' },
  { key: 'seenFrom', title: 'Seen from' },
  { key: 'insertFrom', title: 'Put in from' },
  { key: 'widthMm', title: 'Width', unit: 'mm', align: 'right' },
  { key: 'heightMm', title: 'Height', unit: 'mm', align: 'right' },
  { key: 'toleranceMm', title: 'Plus and minus', unit: 'mm', align: 'right' },
  { key: 'cornerRadiusMm', title: 'Corner radius, at most', unit: 'mm', align: 'right' },
  { key: 'thicknessMm', title: 'Thickness with coatings, or of the board', unit: 'mm', align: 'right' },
  { key: 'thicknessMinMm', title: 'Thickness, at least', unit: 'mm', align: 'right' },
  { key: 'thicknessMaxMm', title: 'Thickness, at most', unit: 'mm', align: 'right' },
  { key: 'position', title: 'Position' },
  { key: 'xMm', title: 'x from the middle', unit: 'mm', align: 'right' },
  { key: 'yMm', title: 'y from the middle, down', unit: 'mm', align: 'right' },
  { key: 'holeMm', title: 'Hole', unit: 'mm', align: 'right' },
  { key: 'source', title: 'Source' },
  { key: 'remarks', title: 'Remarks' },
] as const satisfies readonly Column[];

export type CutOutKey = (typeof CUT_OUT_COLUMNS)[number]['key'];

const filled = (cells: Partial<Record<CutOutKey, Cell>>): Record<CutOutKey, Cell> =>
  Object.fromEntries(CUT_OUT_COLUMNS.map(({ key }) => [key, cells[key] ?? null])) as Record<CutOutKey, Cell>;

export function panelRow(harness: Harness, cut: PanelCut): RowOf<CutOutKey> {
  const { connector, part } = cut.use.resolved;
  const t = cut.panel?.thicknessMm;
  return {
    cells: filled({
      connector: connector.designator,
      kind: 'panel cut-out',
      part: part?.partNumber ?? null,
      equipment: cut.panel?.designator ?? null,
      seenFrom: 'front of the panel',
      insertFrom: cut.insertFrom ?? null,
      widthMm: cut.widthMm ?? null,
      heightMm: cut.heightMm ?? null,
      toleranceMm: limitValue(harness.project.limitSet, 'cut-out-tolerance') ?? null,
      cornerRadiusMm: cut.cornerRadiusMm ?? null,
      thicknessMm: t === undefined ? null : roundTo(t + (cut.panel?.coatingsMm ?? 0), 3),
      thicknessMinMm: part?.panel?.thicknessMinMm ?? null,
      thicknessMaxMm: part?.panel?.thicknessMaxMm ?? null,
      source: cut.basis ?? null,
      remarks: cut.remarks.join('; ') || null,
    }),
    objects: [connectorRef(cut.use)],
  };
}

/** One row per position, so that a file of holes can be made from it. */
export function patternRows(pattern: BoardPattern): readonly RowOf<CutOutKey>[] {
  const { use, header, places, holeMm, remarks } = pattern;
  const { connector, equipment } = use.resolved;
  return places.map((p, i) => ({
    cells: filled({
      connector: connector.designator,
      kind: header.termination === 'surface-mount' ? 'centre of a pad' : 'board hole',
      part: header.partNumber,
      equipment: equipment?.designator ?? null,
      seenFrom: SIDE_WORDS[pattern.seenFrom],
      thicknessMm: equipment?.kind === 'board' ? (equipment.thicknessMm ?? null) : null,
      thicknessMinMm: header.boardThicknessMinMm ?? null,
      thicknessMaxMm: header.boardThicknessMaxMm ?? null,
      position: p.cavity,
      xMm: roundTo(p.xMm, 4),
      yMm: roundTo(p.yMm, 4),
      holeMm: holeMm ?? null,
      source: `record of ${header.partNumber}`,
      remarks: i === 0 ? remarks.join('; ') || null : null,
    }),
    objects: [{ type: 'cavity', id: connector.id, cavity: p.cavity }],
  }));
}

export const SIDE_WORDS = {
  'header-side': 'side of the header',
  'far-side': 'far side of the board',
} as const;
