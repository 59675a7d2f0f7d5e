import { contactRef } from '../../rules/refs';
import { otherFields } from '../exchange/field-text';
import { PLACED_OF_SPLICE_OBJECT } from '../exchange/placed-fields';
import { pieceIds } from '../exchange/object-ids';
import { addPiece } from './piece';
import type { VecContext } from './vec-context';

/** Contacts, splices and terminals: one piece for each junction that has one. */
export function addJunctionPieces(ctx: VecContext): void {
  for (const junction of ctx.junctions) {
    const { name } = junction;
    if (junction.at === 'cavity' && junction.contact) {
      const { contact, cavity, ends } = junction;
      const isSpare = ends.length === 0;
      addPiece(ctx, {
        id: pieceIds.contact(contact.id),
        name,
        object: contact.id,
        kind: 'contact',
        part: ctx.harness.parts.get(contact.part),
        // A spare comes with what it sits in.
        supply: isSpare ? cavity.connector.connector.supply : 'harness',
        at: pieceIds.connector(cavity.connector.connector.id),
        ref: contactRef(contact),
      });
      ctx.report.wrote('contacts');
    } else if (junction.at === 'splice') {
      const { splice } = junction;
      addPiece(ctx, {
        id: pieceIds.splice(splice.id),
        name,
        object: splice.id,
        kind: 'splice',
        part: ctx.harness.parts.get(splice.part ?? ''),
        supply: 'harness',
        fields: otherFields(splice, PLACED_OF_SPLICE_OBJECT),
        isPlaced: splice.node !== undefined,
        ref: { type: 'splice', id: splice.id },
      });
      ctx.report.wrote('splices');
    } else if (junction.at === 'terminal') {
      const [end] = junction.ends;
      if (!end) continue;
      addPiece(ctx, {
        id: pieceIds.terminal(end.wire.wire.id, end.index),
        name,
        kind: 'terminal',
        part: junction.terminal,
        supply: 'harness',
        isPlaced: junction.node !== undefined,
        ref: { type: 'wire', id: end.wire.wire.id },
      });
      ctx.report.wrote('terminals');
    }
  }
}
