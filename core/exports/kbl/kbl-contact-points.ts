import type { Junction } from '../exchange/junctions';
import { sealedEnds, sealKey } from '../exchange/fitted';
import { pieceIds } from '../exchange/object-ids';
import { xmlId } from '../exchange/xml-id';
import type { XmlElement } from '../xml/xml';
import { endKey, type KblContext } from './kbl-context';
import { element, references, value } from './kbl-values';

/** Where wire ends meet in a cavity, with the contact and the seals that are there. Remembers which ends these are. */
export function contactPoint(ctx: KblContext, junction: Junction, cavity: string): XmlElement {
  const id = xmlId('Point', ...junction.key);
  for (const e of junction.ends) ctx.contactPointOf.set(endKey(e.wire.wire.id, e.index), id);
  const sealed = sealedEnds(ctx.harness);
  const seals = junction.ends
    .map((e) => sealKey(e.wire.wire.id, e.index))
    .filter((key) => sealed.has(key.join(' ')))
    .map(pieceIds.seal);
  const terminal = terminalOf(junction);
  return element('Contact_points', { id }, [
    value('Id', ctx.names('contact points').give(junction.name, id)),
    references('Associated_parts', [...(terminal === undefined ? [] : [terminal]), ...seals]),
    value('Contacted_cavity', cavity),
  ]);
}

/** The occurrence of the terminal at a junction. A spare that comes with the equipment is not in the file. */
export function terminalOf(junction: Junction): string | undefined {
  switch (junction.at) {
    case 'cavity': {
      const isSpare = junction.ends.length === 0;
      const isBought = !isSpare || junction.cavity.connector.connector.supply === 'harness';
      return junction.contact && isBought ? pieceIds.contact(junction.contact.id) : undefined;
    }
    case 'splice':
      return xmlId('S', junction.splice.id, 'terminal');
    case 'terminal': {
      const [end] = junction.ends;
      return end && pieceIds.terminal(end.wire.wire.id, end.index);
    }
    case 'open':
      return undefined;
  }
}
