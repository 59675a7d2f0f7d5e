import { sealsOf } from '../exchange/fitted';
import { otherFields } from '../exchange/field-text';
import type { Junction } from '../exchange/junctions';
import { pieceIds } from '../exchange/object-ids';
import { PLACED_OF_SPLICE_OBJECT } from '../exchange/placed-fields';
import { xmlId } from '../exchange/xml-id';
import { cavityRef } from '../../rules/refs';
import { putAtNode } from './kbl-connectors';
import { contactPoint, terminalOf } from './kbl-contact-points';
import type { KblContext } from './kbl-context';
import { cavityId, partId, slotId } from './kbl-part-shape';
import { addPart, slotElement } from './kbl-parts';
import { addFitted, addPiece } from './kbl-pieces';
import { element, field, installation, value } from './kbl-values';

/**
 * Contacts and seals, and what wires end in besides cavities. KBL knows contact points in connectors only, so splices, lugs
 * and loose ends have a carrier with one cavity; its `Usage` says that it is none to be bought.
 */
export function addJunctions(ctx: KblContext): void {
  for (const s of sealsOf(ctx.harness)) {
    addFitted(ctx, s, pieceIds.seal(s.key));
    ctx.report.wrote('seals');
  }
  for (const j of ctx.junctions) {
    addTerminal(ctx, j);
    if (j.at === 'cavity' && j.cavity.exists) continue;
    if (j.at === 'cavity')
      ctx.report.lose(
        j.name,
        'the part has no such cavity: what is there is written as a loose end',
        cavityRef(j.cavity),
      );
    if (j.at === 'splice' || j.ends.length > 0) addCarrier(ctx, j);
  }
}

function addTerminal(ctx: KblContext, j: Junction): void {
  const id = terminalOf(j);
  if (id === undefined) return;
  const parts = ctx.harness.parts;
  if (j.at === 'cavity' && j.contact) {
    addPiece(ctx, { id, name: j.name, kind: 'contact', part: parts.get(j.contact.part) });
    ctx.report.wrote('contacts');
  } else if (j.at === 'splice') {
    addPiece(ctx, { id, name: j.name, kind: 'splice', part: parts.get(j.splice.part ?? '') });
    ctx.report.wrote('splices');
  } else if (j.at === 'terminal') {
    addPiece(ctx, { id, name: j.name, kind: 'terminal', part: j.terminal });
    ctx.report.wrote('terminals');
  }
}

function addCarrier(ctx: KblContext, j: Junction): void {
  const id = j.at === 'splice' ? pieceIds.splice(j.splice.id) : xmlId('End', ...j.key);
  const usage = usageOf(j);
  const key = `carrier ${usage}`;
  const node = j.at === 'splice' ? j.splice.node : j.at === 'cavity' ? undefined : j.node;
  addPart(ctx, undefined, {
    element: 'Connector_housing',
    key,
    partNumber: '/NULL',
    fields: [['carrier', usage]],
    children: [value('Housing_type', usage), slotElement(key, 1, ['1'])],
  });
  if (node !== undefined) putAtNode(ctx, node, id);
  ctx.report.wrote('carriers');
  const cavity = `${id}_cavity`;
  ctx.harnessParts.add(
    element('Connector_occurrence', { id }, [
      value('Id', ctx.names('connectors').give(j.name, id)),
      value('Usage', usage),
      value('Part', partId(key)),
      contactPoint(ctx, j, cavity),
      installation(id, [
        ...(j.at === 'splice' ? otherFields(j.splice, PLACED_OF_SPLICE_OBJECT) : []),
        ...(j.at === 'cavity' ? field('cavity', j.name) : []),
      ]),
      element('Slots', { id: `${id}_slot`, type: 'Slot_occurrence' }, [
        value('Part', slotId(key)),
        element('Cavities', { id: cavity }, [value('Part', cavityId(key, '1'))]),
      ]),
    ]),
  );
}

function usageOf(j: Junction): 'splice' | 'ring terminal' | 'no end' {
  if (j.at === 'splice') return 'splice';
  const isRing = j.at === 'terminal' && j.terminal.kind === 'terminal' && j.terminal.form === 'ring';
  return isRing ? 'ring terminal' : 'no end';
}
