import { byId } from '../../base/by-id';
import { compareNatural } from '../../base/stable-order';
import type { BoardScene, BoardSegment, BoardThing } from '../../derive/formboard/scene/board-items';
import { partIn, type Harness } from '../../derive/harness';
import { roundTo } from '../../model/length-text';
import type { Station } from '../../model/topology';
import type { ObjectRef } from '../../rules/finding';
import type { Cell, Column, RowOf } from '../table';
import { offScaleText } from './board-words';

export const BOARD_COLUMNS = [
  { key: 'kind', title: 'Kind' },
  { key: 'name', title: 'Name' },
  { key: 'part', title: 'Part number' },
  { key: 'from', title: 'From' },
  { key: 'to', title: 'To' },
  { key: 'length', title: 'Length', unit: 'mm', align: 'right' },
  { key: 'plus', title: 'Plus', unit: 'mm', align: 'right' },
  { key: 'minus', title: 'Minus', unit: 'mm', align: 'right' },
  { key: 'drawn', title: 'Drawn length', unit: 'mm', align: 'right' },
  { key: 'x', title: 'X', unit: 'mm', align: 'right' },
  { key: 'y', title: 'Y', unit: 'mm', align: 'right' },
  { key: 'direction', title: 'Direction', unit: 'degrees', align: 'right' },
  { key: 'wires', title: 'Wires', align: 'right' },
  { key: 'bundle', title: 'Bundle diameter', unit: 'mm', align: 'right' },
  { key: 'outside', title: 'Outside diameter', unit: 'mm', align: 'right' },
  { key: 'remarks', title: 'Remarks' },
] as const satisfies readonly Column[];

export type BoardKey = (typeof BOARD_COLUMNS)[number]['key'];
export type BoardRow = RowOf<BoardKey>;

const BLANK: Readonly<Record<BoardKey, null>> = {
  kind: null, name: null, part: null, from: null, to: null, length: null, plus: null, minus: null, drawn: null, x: null, y: null,
  direction: null, wires: null, bundle: null, outside: null, remarks: null,
}; // prettier-ignore

const row = (cells: Partial<Record<BoardKey, Cell>>, ...objects: readonly ObjectRef[]): BoardRow => ({
  cells: { ...BLANK, ...cells },
  objects,
});

const mm = (value: number): number => roundTo(value, 2);
const degrees = (radians: number): number => roundTo((radians * 180) / Math.PI, 1);
const byName = (a: BoardRow, b: BoardRow): number =>
  compareNatural(String(a.cells.name ?? ''), String(b.cells.name ?? ''));

/** All that the board holds: runs with their lengths, the points they end at, and what lies on them. */
export function boardRows(harness: Harness, scene: BoardScene): readonly BoardRow[] {
  return [
    ...scene.segments.map((s) => segmentRow(s, scene)).sort(byName),
    ...nodeRows(scene).sort(byName),
    ...connectorRows(scene).sort(byName),
    ...spliceRows(harness, scene).sort(byName),
    ...coveringRows(harness),
    ...scene.things.map((t) => thingRow(t, scene)),
  ];
}

const nodeName = (scene: BoardScene, id: string | undefined): string | null =>
  scene.nodeById.get(id ?? '')?.node.designator ?? null;

function segmentRow(s: BoardSegment, scene: BoardScene): BoardRow {
  const { segment, use } = s;
  const remarks = [
    offScaleText(s),
    ...(s.widthKnown ? [] : ['a wire diameter is not stated']),
    ...(segment.lengthLocked ? ['length locked'] : []),
    ...(segment.bendRadiusMm === undefined ? [] : [`bend radius ${segment.bendRadiusMm} mm as installed`]),
  ].filter(Boolean);
  return row(
    {
      kind: 'segment',
      name: segment.designator,
      from: nodeName(scene, segment.from),
      to: nodeName(scene, segment.to),
      length: mm(s.lengthMm),
      plus: segment.plusMm ?? null,
      minus: segment.minusMm ?? null,
      drawn: mm(s.drawnMm),
      wires: use?.wires.length ?? 0,
      bundle: s.widthKnown && use && use.wires.length > 0 ? mm(s.widthMm) : null,
      outside: s.widthKnown && use && use.wires.length > 0 ? mm(s.outsideMm) : null,
      remarks: remarks.join('; ') || null,
    },
    { type: 'segment', id: s.id },
  );
}

const nodeRows = (scene: BoardScene): BoardRow[] =>
  scene.nodes.map(({ id, node, at }) =>
    row({ kind: 'node', name: node.designator, x: mm(at.x), y: mm(at.y) }, { type: 'node', id }),
  );

const connectorRows = (scene: BoardScene): BoardRow[] =>
  scene.connectors.map((c) => {
    const { connector, part } = c.use.resolved;
    return row(
      {
        kind: 'connector',
        name: connector.designator,
        part: part?.partNumber ?? null,
        from: nodeName(scene, c.node),
        x: mm(c.at.x),
        y: mm(c.at.y),
        direction: degrees(c.angle),
        remarks: c.sizeKnown ? null : 'outline assumed: the record states no body',
      },
      { type: 'connector', id: c.id },
    );
  });

const spliceRows = (harness: Harness, scene: BoardScene): BoardRow[] =>
  scene.splices.map(({ splice, at }) =>
    row(
      {
        kind: 'splice',
        name: splice.designator,
        part: partIn(harness.project, splice.part)?.partNumber ?? null,
        from: nodeName(scene, splice.node),
        x: mm(at.x),
        y: mm(at.y),
      },
      { type: 'splice', id: splice.id },
    ),
  );

/** Each covering once, whatever runs it goes over. */
function coveringRows(harness: Harness): BoardRow[] {
  const { project } = harness;
  return project.coverings.map((c) => {
    const uses = harness.segments.flatMap((s) => s.coverings.filter((u) => u.covering.id === c.id));
    const part = partIn(project, c.part);
    return row(
      {
        kind: 'covering',
        name: c.designator ?? null,
        part: part?.partNumber ?? null,
        from: stationText(harness, c.from),
        to: stationText(harness, c.to),
        length: uses.length === 0 ? null : mm(uses.reduce((sum, u) => sum + u.toMm - u.fromMm, 0)),
        remarks: [part?.kind === 'covering' ? part.form : '', `layer ${c.layer}`].filter(Boolean).join(', '),
      },
      { type: 'covering', id: c.id },
    );
  });
}

/** "S3 at 120". */
function stationText(harness: Harness, station: Station): string {
  const name = byId(harness.project.segments).get(station.segment)?.designator ?? '?';
  return `${name} at ${mm(station.atMm)}`;
}

function thingRow(t: BoardThing, scene: BoardScene): BoardRow {
  const segment = scene.segmentById.get(t.segment)?.segment.designator ?? '?';
  return row(
    {
      kind: t.kind,
      name: t.name || null,
      part: t.part?.partNumber ?? null,
      from: `${segment} at ${mm(t.atMm)}`,
      x: mm(t.at.x),
      y: mm(t.at.y),
    },
    { type: 'segment', id: t.segment },
  );
}
