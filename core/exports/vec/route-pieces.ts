import { byId } from '../../base/by-id';
import type { Covering, Label } from '../../model/topology';
import { coveringRunMm } from '../parts/covering-length';
import { fieldText, otherFields, type FieldText } from '../exchange/field-text';
import {
  PLACED_OF_COVERING,
  PLACED_OF_FIXING,
  PLACED_OF_FUSE,
  PLACED_OF_LABEL,
  PLACED_OF_TIE,
} from '../exchange/placed-fields';
import { pieceIds } from '../exchange/object-ids';
import { addPiece, roleId } from './piece';
import type { VecContext } from './vec-context';
import { value } from './vec-values';

/** What lies on the way: coverings, ties, clamps and grommets, labels, fuses. */
export function addRoutePieces(ctx: VecContext): void {
  const { project, parts } = ctx.harness;
  const segments = byId(project.segments);
  const on = (segment: string): string => segments.get(segment)?.designator ?? segment;
  for (const c of project.coverings)
    addCovering(ctx, c, c.designator ?? `covering ${c.layer} ${on(c.from.segment)}`);
  for (const t of project.ties) {
    addPiece(ctx, {
      id: pieceIds.tie(t.id),
      name: `tie ${on(t.station.segment)} ${t.station.atMm} mm`,
      object: t.id,
      kind: 'tie',
      part: parts.get(t.part),
      supply: 'harness',
      fields: otherFields(t, PLACED_OF_TIE),
      isPlaced: true,
    });
    ctx.report.wrote('ties');
  }
  for (const f of project.fixings) {
    const part = parts.get(f.part);
    addPiece(ctx, {
      id: pieceIds.fixing(f.id),
      name: f.designator ?? `fixing ${on(f.station.segment)} ${f.station.atMm} mm`,
      object: f.id,
      kind: part?.kind === 'grommet' ? 'grommet' : 'clamp',
      part,
      supply: 'harness',
      fields: otherFields(f, PLACED_OF_FIXING),
      isPlaced: true,
    });
    ctx.report.wrote('fixings');
  }
  for (const l of project.labels) addLabel(ctx, l);
  for (const f of project.fuses) {
    addPiece(ctx, {
      id: pieceIds.fuse(f.id),
      name: f.designator,
      object: f.id,
      kind: 'fuse',
      part: parts.get(f.part ?? ''),
      supply: 'harness',
      fields: [
        ...otherFields(f, PLACED_OF_FUSE),
        ['inWire', byId(project.wires).get(f.wire)?.designator ?? f.wire],
      ],
      at: wirePiece(ctx, f.wire),
      ref: { type: 'fuse', id: f.id },
    });
    ctx.report.wrote('fuses');
    ctx.report.lose(
      f.designator,
      'VEC has no place for a fuse within a wire: its wire and place stand as properties',
      {
        type: 'fuse',
        id: f.id,
      },
    );
  }
}

/** The piece that a wire is part of: itself, or its cable. */
function wirePiece(ctx: VecContext, id: string): string {
  const cable = byId(ctx.harness.project.wires).get(id)?.core?.cable;
  return cable === undefined ? pieceIds.wire(id) : pieceIds.cable(cable);
}

function addCovering(ctx: VecContext, covering: Covering, name: string): void {
  const id = pieceIds.covering(covering.id);
  const part = ctx.harness.parts.get(covering.part);
  const runMm = coveringRunMm(ctx.harness, covering);
  addPiece(ctx, {
    id,
    name,
    object: covering.id,
    kind: 'covering',
    part,
    supply: 'harness',
    fields: otherFields(covering, PLACED_OF_COVERING),
    isPlaced: runMm !== undefined,
    before: [ctx.values.number('ProtectionLength', roleId(id), runMm, 'mm')],
    after:
      part?.kind === 'covering' && part.form === 'tape'
        ? [value('TapeOverlapRelative', part.tapeOverlap)]
        : [],
    ref: { type: 'covering', id: covering.id },
  });
  ctx.report.wrote('coverings');
}

function addLabel(ctx: VecContext, label: Label): void {
  const { on } = label;
  const fields: FieldText[] = [...otherFields(label, PLACED_OF_LABEL)];
  if (on.at === 'wire-end') {
    const wire = byId(ctx.harness.project.wires).get(on.wire);
    fields.push(['onWire', wire?.designator ?? on.wire], ['wireEnd', fieldText(on.end + 1)]);
  }
  if (on.at === 'cable-end') {
    const cable = byId(ctx.harness.project.cables).get(on.cable);
    fields.push(['onCable', cable?.designator ?? on.cable], ['cableEnd', fieldText(on.end + 1)]);
  }
  addPiece(ctx, {
    id: pieceIds.label(label.id),
    name: `label ${label.text}`,
    object: label.id,
    kind: 'label',
    part: ctx.harness.parts.get(label.part ?? ''),
    supply: 'harness',
    fields,
    at:
      on.at === 'connector'
        ? pieceIds.connector(on.connector)
        : on.at === 'wire-end'
          ? wirePiece(ctx, on.wire)
          : on.at === 'cable-end'
            ? pieceIds.cable(on.cable)
            : undefined,
    isPlaced: on.at === 'station',
    before: [value('LabelType', 'AlphaNumerical'), value('LabelValue', label.text)],
  });
  ctx.report.wrote('labels');
}
