import type { ResolvedWire } from '../../derive/harness';
import { byId } from '../../base/by-id';
import { sameColour } from '../../model/colour';
import type { SignalClass } from '../../model/electrical';
import { partOfKind } from '../../model/parts/part';
import type { Cable } from '../../model/wire';
import { wireRef } from '../../rules/refs';
import { coreNamesOf } from '../exchange/core-names';
import { fieldText, otherFields, type FieldText } from '../exchange/field-text';
import { conductorId, pieceIds } from '../exchange/object-ids';
import {
  PLACED_OF_CABLE_OBJECT,
  PLACED_OF_SIGNAL,
  PLACED_OF_WIRE_END,
  PLACED_OF_WIRE_OBJECT,
} from '../exchange/placed-fields';
import { signalWords } from '../exchange/signal-words';
import { wireVariantOf } from '../exchange/wire-variants';
import { xmlId } from '../exchange/xml-id';
import type { XmlElement } from '../xml/xml';
import { endKey, type KblContext } from './kbl-context';
import { partId } from './kbl-part-shape';
import { addPart } from './kbl-parts';
import { element, field, installation, processing, value } from './kbl-values';
import { colours, coreElements, coreId, wirePart } from './kbl-wire-parts';

/** Wires and cables as occurrences, and a connection for each conductor. Contact points must be written before. */
export function addWires(ctx: KblContext): void {
  const cores = new Map<string, ResolvedWire[]>();
  for (const wire of ctx.harness.wires) {
    const cable = wire.wire.core?.cable;
    if (cable === undefined) addWire(ctx, wire);
    else cores.set(cable, [...(cores.get(cable) ?? []), wire]);
  }
  for (const cable of ctx.harness.project.cables) addCable(ctx, cable, cores.get(cable.id) ?? []);
  for (const wire of ctx.harness.wires) addConnection(ctx, wire);
  const carried = new Set(ctx.harness.wires.map((w) => w.signal?.id));
  ctx.report.wrote('signals', carried.size - Number(carried.has(undefined)));
  for (const s of ctx.harness.project.signals)
    if (!carried.has(s.id))
      ctx.report.lose(`signal ${s.name}`, 'no wire carries it, and KBL names signals at connections only', {
        type: 'signal',
        id: s.id,
      });
}

function addWire(ctx: KblContext, wire: ResolvedWire): void {
  const variant = wireVariantOf(wire);
  if (!variant) return;
  if (!variant.part) addPart(ctx, undefined, wirePart(ctx, variant));
  const id = pieceIds.wire(wire.wire.id);
  ctx.report.wrote('wires');
  ctx.harnessParts.add(
    element('General_wire_occurrence', { id, type: 'Wire_occurrence' }, [
      value('Part', partId(variant.key)),
      installation(id, wireFields(wire)),
      lengthOf(ctx, id, wire.length.cutMm),
      value('Wire_number', numberOf(ctx, wire)),
    ]),
  );
}

const numberOf = (ctx: KblContext, { wire }: ResolvedWire): string =>
  ctx.names('wires').give(wire.designator, wire.id);

const wireFields = ({ wire, length }: ResolvedWire): FieldText[] => [
  ...otherFields(wire, PLACED_OF_WIRE_OBJECT),
  ...field('note', wire.note),
  ...field('lengthKind', length.kind),
  ...field('lengthNeeds', length.needs.join('; ')),
];

/** The cut length; the schema wants one, so an unknown one is NaN. */
const lengthOf = (ctx: KblContext, holder: string, cutMm: number | undefined): XmlElement =>
  element('Length_information', { id: `${holder}_length` }, [
    value('Length_type', 'Production'),
    ctx.units.mandatoryNumber('Length_value', `${holder}_length`, cutMm, 'mm'),
  ]);

/** A cable is cut as one piece, as long as its longest core. A connection needs a core, so cores without a wire stay out. */
function addCable(ctx: KblContext, cable: Cable, wires: readonly ResolvedWire[]): void {
  const part = partOfKind(ctx.harness.parts.get(cable.part), 'cable');
  const key = part?.id ?? `no-cable ${cable.id}`;
  if (!part) addUnknownCable(ctx, cable, key);
  const id = pieceIds.cable(cable.id);
  const lengths = wires.flatMap((w) => w.length.cutMm ?? []);
  const isKnown = lengths.length > 0 && lengths.length === wires.length;
  ctx.report.wrote('cables');
  ctx.report.wrote('wires', wires.length);
  ctx.harnessParts.add(
    element('General_wire_occurrence', { id, type: 'Special_wire_occurrence' }, [
      value('Part', partId(key)),
      installation(id, [...otherFields(cable, PLACED_OF_CABLE_OBJECT), ...field('note', cable.note)]),
      lengthOf(ctx, id, isKnown ? Math.max(...lengths) : undefined),
      value('Special_wire_id', ctx.names('cables').give(cable.designator, cable.id)),
      wires.map((w) => coreOccurrence(ctx, w, key)),
    ]),
  );
}

function coreOccurrence(ctx: KblContext, wire: ResolvedWire, key: string): XmlElement {
  const { wire: object, part } = wire;
  const name = object.core?.name ?? '';
  const core = part?.kind === 'cable' ? part.cores.find((c) => c.name === name) : undefined;
  const differs = object.colour && !sameColour(object.colour, core?.colour);
  if (differs)
    ctx.report.lose(
      object.designator,
      'its colour is not that of the core in the record: written as an instruction beside it',
      wireRef(wire),
    );
  const id = conductorId(object.id);
  return element('Core_occurrence', { id }, [
    value('Wire_number', numberOf(ctx, wire)),
    value('Part', coreId(key, name)),
    installation(id, [...wireFields(wire), ...(differs ? field('colour', fieldText(object.colour)) : [])]),
    lengthOf(ctx, id, wire.length.cutMm),
  ]);
}

function addUnknownCable(ctx: KblContext, cable: Cable, key: string): void {
  ctx.report.lose(cable.designator, 'its part is no cable record: written without a part number', {
    type: 'cable',
    id: cable.id,
  });
  addPart(ctx, undefined, {
    element: 'General_wire',
    key,
    partNumber: '/NULL',
    fields: [],
    children: [
      coreElements(ctx, key, coreNamesOf(ctx.harness, cable)),
      colours('Cover_colour', partId(key), undefined),
    ],
  });
}

const SIGNAL_TYPES: Readonly<Record<SignalClass, string>> = {
  power: 'ENERGY',
  return: 'GROUND',
  neutral: 'ENERGY',
  signal: 'INFORMATION',
  shield: 'SHIELD',
  'protective-earth': 'GROUND',
};

export const connectionId = (wire: string): string => xmlId('W', wire, 'connection');
export const occurrenceOf = (ctx: KblContext, wire: string): string =>
  byId(ctx.harness.project.wires).get(wire)?.core ? conductorId(wire) : pieceIds.wire(wire);

/** What a wire or core joins, with the signal that it carries. */
function addConnection(ctx: KblContext, { wire, signal }: ResolvedWire): void {
  const id = connectionId(wire.id);
  ctx.report.wrote('connections');
  ctx.harnessParts.add(
    element('Connection', { id }, [
      value('Id', ctx.names('connections').give(wire.designator, wire.id)),
      value('Signal_name', signal?.name),
      value('Signal_type', signal?.class && SIGNAL_TYPES[signal.class]),
      value('Nominal_voltage', signal?.voltageV === undefined ? undefined : `${signal.voltageV} V`),
      value('Wire', occurrenceOf(ctx, wire.id)),
      wire.ends.map((end, index) => {
        const extremity = `${id}_${index}`;
        return element('Extremities', { id: extremity }, [
          value('Position_on_wire', index),
          value('Contact_point', ctx.contactPointOf.get(endKey(wire.id, index))),
          processing(extremity, otherFields(end, END_FIELDS)),
        ]);
      }),
      processing(
        id,
        signal
          ? signalWords(ctx.harness.project, otherFields(signal, SIGNAL_FIELDS), signal).map(
              ([key, text]) => [`signal ${key}`, text] as const,
            )
          : [],
      ),
    ]),
  );
}

/** KBL has no strip length; class and voltage of a signal stand in elements. */
const END_FIELDS = new Set([...PLACED_OF_WIRE_END].filter((f) => f !== 'stripLengthMm'));
const SIGNAL_FIELDS = new Set([...PLACED_OF_SIGNAL, 'voltageV']);
