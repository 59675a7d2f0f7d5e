import type { ResolvedWire } from '../../derive/harness';
import { sameColour } from '../../model/colour';
import type { WireEnd } from '../../model/wire';
import { wireRef } from '../../rules/refs';
import { fieldText, otherFields, type FieldText } from '../exchange/field-text';
import { PLACED_OF_WIRE_END, PLACED_OF_WIRE_OBJECT } from '../exchange/placed-fields';
import { wireVariantOf } from '../exchange/wire-variants';
import { iriOf } from '../exchange/xml-id';
import type { XmlElement } from '../xml/xml';
import { netOfWire, portOfEnd } from './net-ends';
import {
  conductorId,
  connectionEndId,
  connectionId,
  pieceIds,
  signalId,
  wireEndId,
} from '../exchange/object-ids';
import { partIds } from './part-shape';
import { addPiece } from './piece';
import type { VecContext } from './vec-context';
import { node, properties, refs, value } from './vec-values';
import { wireSpecs } from './wire-specs';

/** Single wires; those of a cable stand within it. */
export function addWires(ctx: VecContext): void {
  for (const wire of ctx.harness.wires) {
    const variant = wireVariantOf(wire);
    if (!variant) continue;
    const { key, part } = variant;
    if (!part && !ctx.unchosen.has(key)) ctx.unchosen.set(key, wireSpecs(ctx, variant));
    addPiece(ctx, {
      id: pieceIds.wire(wire.wire.id),
      name: wire.wire.designator,
      object: wire.wire.id,
      kind: 'wire',
      part: part ?? wire.part,
      specKey: key,
      supply: 'harness',
      fields: otherFields(wire.wire, PLACED_OF_WIRE_OBJECT),
      notes: [wire.wire.note],
      ref: wireRef(wire),
      after: [conductorReference(ctx, wire, partIds(key).element, wire.wire.designator)],
    });
    ctx.report.wrote('wires');
  }
}

/** The conductor of a wire or core in use: its net, its two ends, its cut length. */
export function conductorReference(
  ctx: VecContext,
  wire: ResolvedWire,
  element: string,
  name: string,
): XmlElement {
  const { wire: object, length, signal } = wire;
  const id = conductorId(object.id);
  const net = netOfWire(ctx.harness).get(object.id);
  const iri = object.core ? iriOf(object.id) : undefined;
  return node('WireElementReference', { id, iri }, [
    properties(id, [...lengthFields(wire), ...coreFields(ctx, wire)]),
    value('Identification', name),
    refs('Connection', net === undefined ? undefined : connectionId(net)),
    refs('ReferencedWireElement', element),
    refs('Signal', signal && signalId(signal.id)),
    object.ends.map((end, i) => wireEnd(ctx, wire, end, i as 0 | 1, net)),
    length.cutMm === undefined
      ? undefined
      : node('WireLength', { id: `${id}_length` }, [
          value('LengthType', 'Production'),
          ctx.values.number('LengthValue', `${id}_length`, length.cutMm, 'mm'),
        ]),
  ]);
}

/** Whether the length was typed or follows from the route, and what it is made without. */
function lengthFields({ length }: ResolvedWire): FieldText[] {
  return [
    ['lengthKind', length.kind],
    ...(length.needs.length > 0 ? [['lengthNeeds', length.needs.join('; ')] as const] : []),
  ];
}

/** The colour and the fields of a core, which has no occurrence of its own. */
function coreFields(ctx: VecContext, wire: ResolvedWire): readonly FieldText[] {
  const { wire: object, part } = wire;
  if (!object.core) return [];
  const core = part?.kind === 'cable' ? part.cores.find((c) => c.name === object.core?.name) : undefined;
  const differs = object.colour && !sameColour(object.colour, core?.colour);
  if (differs)
    ctx.report.lose(
      object.designator,
      'its colour is not that of the core in the record: written as a property beside it',
      wireRef(wire),
    );
  return [
    ...otherFields(object, PLACED_OF_WIRE_OBJECT),
    ...(differs ? [['colour', fieldText(object.colour)] as const] : []),
    ...(object.note ? [['note', object.note] as const] : []),
  ];
}

function wireEnd(
  ctx: VecContext,
  wire: ResolvedWire,
  end: WireEnd,
  index: 0 | 1,
  net: string | undefined,
): XmlElement {
  const id = wireEndId(wire.wire.id, index);
  const port = portOfEnd(wire, index);
  const where = wire[index === 0 ? 'from' : 'to'].connector;
  const isMissingCavity = end.at === 'cavity' && port && !port.port.startsWith('X_');
  return node('WireEnd', { id }, [
    properties(id, [
      ...otherFields(end, PLACED_OF_WIRE_END),
      ...(isMissingCavity ? [['cavity', `${where?.connector.designator ?? ''}:${end.cavity}`] as const] : []),
    ]),
    value('Identification', String(index + 1)),
    value('PositionOnWire', index),
    ctx.values.number('StrippingLength', id, end.stripLengthMm, 'mm'),
    refs('ConnectionEnd', net !== undefined && port ? connectionEndId(net, port.port) : undefined),
  ]);
}
