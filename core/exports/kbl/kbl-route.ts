import { byId } from '../../base/by-id';
import type { Label } from '../../model/topology';
import { coveringRunMm } from '../parts/covering-length';
import { placeOfDatum, pairsOf } from '../exchange/datum-place';
import { fieldText, otherFields, type FieldText } from '../exchange/field-text';
import { nodeId, pieceIds } from '../exchange/object-ids';
import {
  PLACED_OF_COVERING,
  PLACED_OF_DIMENSION,
  PLACED_OF_FIXING,
  PLACED_OF_FUSE,
  PLACED_OF_GROUP,
  PLACED_OF_LABEL,
  PLACED_OF_TIE,
} from '../exchange/placed-fields';
import { xmlId } from '../exchange/xml-id';
import type { KblContext } from './kbl-context';
import { addPiece } from './kbl-pieces';
import { element, field, installation, processing, references, value } from './kbl-values';
import { occurrenceOf } from './kbl-wires';

/** Coverings, ties, clamps and grommets, labels, fuses: what lies on the way. */
export function addRoutePieces(ctx: KblContext): void {
  const { project, parts } = ctx.harness;
  const segments = byId(project.segments);
  const on = (segment: string): string => segments.get(segment)?.designator ?? segment;
  for (const c of project.coverings) {
    const id = pieceIds.covering(c.id);
    const runMm = coveringRunMm(ctx.harness, c);
    addPiece(ctx, {
      id,
      name: c.designator ?? `covering ${c.layer} ${on(c.from.segment)}`,
      kind: 'covering',
      part: parts.get(c.part),
      before: [ctx.units.number('Protection_length', id, runMm, 'mm')],
      fields: otherFields(c, PLACED_OF_COVERING),
    });
    ctx.report.wrote('coverings');
  }
  for (const t of project.ties) {
    addPiece(ctx, {
      id: pieceIds.tie(t.id),
      name: `tie ${on(t.station.segment)} ${t.station.atMm} mm`,
      kind: 'tie',
      part: parts.get(t.part),
      fields: otherFields(t, PLACED_OF_TIE),
    });
    ctx.report.wrote('ties');
  }
  for (const f of project.fixings) {
    const part = parts.get(f.part);
    addPiece(ctx, {
      id: pieceIds.fixing(f.id),
      name: f.designator ?? `fixing ${on(f.station.segment)} ${f.station.atMm} mm`,
      kind: part?.kind === 'grommet' ? 'grommet' : 'clamp',
      part,
      fields: otherFields(f, PLACED_OF_FIXING),
    });
    ctx.report.wrote('fixings');
  }
  for (const l of project.labels) addLabel(ctx, l);
  for (const f of project.fuses) {
    addPiece(ctx, {
      id: pieceIds.fuse(f.id),
      name: f.designator,
      kind: 'fuse',
      part: parts.get(f.part ?? ''),
      fields: [
        ...otherFields(f, PLACED_OF_FUSE),
        ...field('inWire', byId(project.wires).get(f.wire)?.designator),
      ],
    });
    ctx.report.wrote('fuses');
    ctx.report.lose(
      f.designator,
      'KBL has no place for a fuse within a wire: its wire and place stand as instructions',
      { type: 'fuse', id: f.id },
    );
  }
}

function addLabel(ctx: KblContext, label: Label): void {
  const { on } = label;
  const { wires, connectors } = ctx.harness.project;
  const carrier: FieldText[] =
    on.at === 'wire-end'
      ? [
          ['onWire', byId(wires).get(on.wire)?.designator ?? on.wire],
          ['wireEnd', fieldText(on.end + 1)],
        ]
      : on.at === 'cable-end'
        ? [
            ['onCable', byId(ctx.harness.project.cables).get(on.cable)?.designator ?? on.cable],
            ['cableEnd', fieldText(on.end + 1)],
          ]
        : on.at === 'connector'
          ? [['onConnector', byId(connectors).get(on.connector)?.designator ?? on.connector]]
          : [];
  addPiece(ctx, {
    id: pieceIds.label(label.id),
    name: `label ${label.text}`,
    kind: 'label',
    part: ctx.harness.parts.get(label.part ?? ''),
    at: carrierOf(ctx, label),
    fields: [['label_text', label.text], ...otherFields(label, PLACED_OF_LABEL), ...carrier],
  });
  ctx.report.wrote('labels');
}

/** The occurrence that a label marks: a connector if it is in the file, a wire, a cable, or the cable of a core. */
function carrierOf(ctx: KblContext, { on }: Label): string | undefined {
  if (on.at === 'station') return undefined;
  if (on.at === 'connector') {
    const id = pieceIds.connector(on.connector);
    return ctx.connectorsWritten.has(id) ? id : undefined;
  }
  if (on.at === 'cable-end') return pieceIds.cable(on.cable);
  const cable = byId(ctx.harness.project.wires).get(on.wire)?.core?.cable;
  return cable === undefined ? pieceIds.wire(on.wire) : pieceIds.cable(cable);
}

/** Wires that are twisted or handled together. A group without wires cannot be written. */
export function addGroups(ctx: KblContext): void {
  for (const g of ctx.harness.project.groups) {
    const wires = [...new Set(g.wires)];
    if (wires.length === 0) {
      ctx.report.lose(g.designator, 'a group without wires cannot be written', { type: 'group', id: g.id });
      continue;
    }
    const id = xmlId('R', g.id);
    ctx.report.wrote('groups');
    ctx.harnessParts.add(
      element('Wiring_group', { id }, [
        value('Id', ctx.names('groups').give(g.designator, g.id)),
        value('Type', g.form),
        references(
          'Assigned_wire',
          wires.map((w) => occurrenceOf(ctx, w)),
        ),
        installation(id, [
          ...otherFields(g, GROUP_FIELDS),
          ...field('layMm', g.layMm === undefined ? undefined : fieldText(g.layMm)),
        ]),
      ]),
    );
  }
}

const GROUP_FIELDS = new Set([...PLACED_OF_GROUP, 'form']);

/** Dimensions between nodes. KBL measures between nodes and placed pieces, so one from a bare place has no element. */
export function addDimensions(ctx: KblContext): void {
  for (const [number, d] of ctx.harness.project.dimensions.entries()) {
    let isWhole = true;
    for (const [i, [from, to]] of pairsOf(d).entries()) {
      const id = xmlId('D', d.id, String(i + 1));
      const name = `dimension ${number + 1}.${i + 1}`;
      const [origin, target] = [placeOfDatum(ctx.harness, from), placeOfDatum(ctx.harness, to)];
      if (origin?.at !== 'node' || target?.at !== 'node') {
        isWhole = false;
        ctx.report.lose(name, 'it is measured at a place that is no node: KBL has no dimension for it');
        continue;
      }
      const limits = `${id}_tolerance`;
      ctx.container.add(
        element('Dimension_specification', { id }, [
          value('Id', name),
          value('Origin', nodeId(origin.node)),
          value('Target', nodeId(target.node)),
          processing(id, otherFields(d, PLACED_OF_DIMENSION)),
          d.minusMm === undefined && d.plusMm === undefined
            ? undefined
            : element('Tolerance_indication', { id: limits }, [
                ctx.units.number(
                  'Lower_limit',
                  limits,
                  d.minusMm === undefined ? undefined : -d.minusMm,
                  'mm',
                ),
                ctx.units.number('Upper_limit', limits, d.plusMm, 'mm'),
              ]),
        ]),
      );
    }
    if (isWhole) ctx.report.wrote('dimensions');
  }
}
