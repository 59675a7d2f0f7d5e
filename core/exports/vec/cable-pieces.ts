import type { ResolvedWire } from '../../derive/harness';
import { otherFields } from '../exchange/field-text';
import { PLACED_OF_CABLE_OBJECT } from '../exchange/placed-fields';
import { UniqueNames } from '../exchange/unique-names';
import { xmlId } from '../exchange/xml-id';
import type { Cable } from '../../model/wire';
import type { XmlElement } from '../xml/xml';
import { cableItem, cableSpecs, outerElements } from './cable-specs';
import { pieceIds } from '../exchange/object-ids';
import { partIds } from './part-shape';
import { addPiece } from './piece';
import type { VecContext } from './vec-context';
import { node, refs, value } from './vec-values';
import { conductorReference } from './wire-pieces';

/** Placed cables: one reference for the cable, one for its shield, one for every core, connected or not. */
export function addCables(ctx: VecContext): void {
  const coresOf = new Map<string, ResolvedWire[]>();
  for (const w of ctx.harness.wires) {
    const cable = w.wire.core?.cable;
    if (cable !== undefined) coresOf.set(cable, [...(coresOf.get(cable) ?? []), w]);
  }
  for (const cable of ctx.harness.project.cables) addCable(ctx, cable, coresOf.get(cable.id) ?? []);
}

function addCable(ctx: VecContext, cable: Cable, wires: readonly ResolvedWire[]): void {
  const { key, part, cores } = cableItem(ctx, cable);
  if (!part) ctx.unchosen.set(key, cableSpecs(ctx, key, undefined, cores));
  const names = new UniqueNames();
  const coreKey = (w: ResolvedWire): string => w.wire.core?.name ?? '';
  const used = new Set(wires.map(coreKey));
  const reference = (id: string, name: string, element: string, more: (XmlElement | undefined)[] = []) =>
    node('WireElementReference', { id }, [
      value('Identification', names.give(name, id)),
      refs('ReferencedWireElement', element),
      ...more,
    ]);
  const ofCable = (name: string): string => xmlId('K', cable.id, 'element', name);
  addPiece(ctx, {
    id: pieceIds.cable(cable.id),
    name: cable.designator,
    object: cable.id,
    kind: 'cable',
    part: part ?? ctx.harness.parts.get(cable.part),
    specKey: key,
    supply: 'harness',
    fields: otherFields(cable, PLACED_OF_CABLE_OBJECT),
    notes: [cable.note],
    after: [
      outerElements(key, part).map(({ name, id }) =>
        reference(ofCable(name), name, id, name === 'cable' ? [cableLength(ctx, ofCable(name), wires)] : []),
      ),
      wires.map((w) =>
        conductorReference(ctx, w, partIds(key).core(coreKey(w)), names.give(w.wire.designator, w.wire.id)),
      ),
      cores
        .filter((c) => !used.has(c.key))
        .map((c) => {
          const id = xmlId('K', cable.id, 'unused', c.key);
          return node('WireElementReference', { id }, [
            value('Identification', names.give(`${c.unique} not connected`, id)),
            value('Unconnected', true),
            refs('ReferencedWireElement', partIds(key).core(c.key)),
          ]);
        }),
    ],
  });
  ctx.report.wrote('cables');
  ctx.report.wrote('wires', wires.length);
}

/** A cable is cut as one piece, as long as its longest core; not known while one core is not. */
function cableLength(
  ctx: VecContext,
  holder: string,
  wires: readonly ResolvedWire[],
): XmlElement | undefined {
  const lengths = wires.flatMap((w) => w.length.cutMm ?? []);
  if (lengths.length === 0 || lengths.length < wires.length) return undefined;
  const id = `${holder}_length`;
  return node('WireLength', { id }, [
    value('LengthType', 'Production'),
    ctx.values.number('LengthValue', id, Math.max(...lengths), 'mm'),
  ]);
}
