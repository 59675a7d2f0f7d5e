import { sealedEnds, sealKey } from '../exchange/fitted';
import type { Junction } from '../exchange/junctions';
import { UniqueNames } from '../exchange/unique-names';
import { xmlId } from '../exchange/xml-id';
import type { XmlElement } from '../xml/xml';
import { cavityRefId, pieceIds, pinRoleId, wireEndId } from '../exchange/object-ids';
import { roleId } from './piece';
import type { VecContext } from './vec-context';
import { node, refs, value } from './vec-values';

/** Which wire ends meet in which terminal, and in which cavity it sits. Wires that share a crimp share a point. */
export function contactingSpec(ctx: VecContext): XmlElement {
  const names = new UniqueNames();
  const seals = sealedEnds(ctx.harness);
  return node('Specification', { id: 'Contacting', type: 'ContactingSpecification' }, [
    value('Identification', 'CONTACTING'),
    ctx.junctions.map((j) => contactPoint(ctx, j, names, seals)),
  ]);
}

function contactPoint(
  ctx: VecContext,
  junction: Junction,
  names: UniqueNames,
  seals: ReadonlySet<string>,
): XmlElement | undefined {
  if (junction.at === 'open') return undefined;
  const id = xmlId('Point', ...junction.key);
  const cavity = junction.at === 'cavity' && junction.cavity.exists ? junction.cavity : undefined;
  const sealed = junction.ends
    .map((e) => sealKey(e.wire.wire.id, e.index))
    .filter((key) => seals.has(key.join(' ')))
    .map((key) => roleId(pieceIds.seal(key)));
  if (sealed.length > 1)
    ctx.report.lose(junction.name, 'VEC has one seal for a crimp: the others stand as parts without a place');
  return node('ContactPoint', { id }, [
    value('Identification', names.give(junction.name, id)),
    refs('MountedTerminal', terminalRoleOf(junction)),
    cavity
      ? node('CavityMounting', { id: `${id}_cavity` }, [
          refs('EquippedCavityRef', cavityRefId(cavity.connector.connector.id, cavity.cavity)),
        ])
      : undefined,
    junction.ends.length === 0
      ? undefined
      : node('WireMounting', { id: `${id}_wires` }, [
          refs('MountedCavitySeal', sealed[0]),
          refs(
            'ReferencedWireEnd',
            junction.ends.map((e) => wireEndId(e.wire.wire.id, e.index)),
          ),
        ]),
  ]);
}

/** The role of the terminal at a junction: its contact, splice or lug; for a wire in a header, the header's pin. */
export function terminalRoleOf(junction: Junction): string | undefined {
  switch (junction.at) {
    case 'splice':
      return roleId(pieceIds.splice(junction.splice.id));
    case 'terminal': {
      const [end] = junction.ends;
      return end && roleId(pieceIds.terminal(end.wire.wire.id, end.index));
    }
    case 'cavity': {
      const { connector, part } = junction.cavity.connector;
      if (junction.contact) return roleId(pieceIds.contact(junction.contact.id));
      const hasPin =
        part?.kind === 'header' &&
        junction.cavity.exists &&
        !part.keyPositions?.includes(junction.cavity.cavity);
      return hasPin ? pinRoleId(connector.id, junction.cavity.cavity) : undefined;
    }
    case 'open':
      return undefined;
  }
}
