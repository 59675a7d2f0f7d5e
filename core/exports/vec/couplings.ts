import type { ResolvedMate } from '../../derive/harness';
import type { Junction } from '../exchange/junctions';
import { matedPairs } from '../exchange/mated-pairs';
import { UniqueNames } from '../exchange/unique-names';
import { iriOf, xmlId } from '../exchange/xml-id';
import type { XmlElement } from '../xml/xml';
import { cavitiesOf, halfKey, housingRoleOf } from './connector-pieces';
import { housingName } from './connector-specs';
import { terminalRoleOf } from './contacting';
import { cavityRefId, pinRoleId, slotRefId } from '../exchange/object-ids';
import { partIds } from './part-shape';
import type { VecContext } from './vec-context';
import { node, refs, value } from './vec-values';

/** Connectors that are plugged together, cavity by cavity and contact by contact. A map that is only assumed is not written. */
export function couplingSpec(ctx: VecContext): XmlElement | undefined {
  if (ctx.harness.mates.length === 0) return undefined;
  const names = new UniqueNames();
  const terminals = terminalsByCavity(ctx);
  return node('Specification', { id: 'Couplings', type: 'CouplingSpecification' }, [
    value('Identification', 'COUPLINGS'),
    ctx.harness.mates.map((mate) => couplingPoint(ctx, mate, names, terminals)),
  ]);
}

type Terminals = ReadonlyMap<string, string>;

/** The role of the first terminal in each cavity; the pins of headers are there without a junction. */
function terminalsByCavity(ctx: VecContext): Terminals {
  const out = new Map<string, string>();
  const put = (cavity: string, role: string | undefined): void => {
    if (role !== undefined && !out.has(cavity)) out.set(cavity, role);
  };
  for (const j of ctx.junctions as readonly Junction[])
    if (j.at === 'cavity' && j.cavity.exists)
      put(cavityRefId(j.cavity.connector.connector.id, j.cavity.cavity), terminalRoleOf(j));
  for (const use of ctx.harness.connectors) {
    const { connector, part } = use.resolved;
    if (part?.kind !== 'header') continue;
    for (const c of cavitiesOf(use))
      if (!part.keyPositions?.includes(c.cavity))
        put(cavityRefId(connector.id, c.cavity), pinRoleId(connector.id, c.cavity));
  }
  return out;
}

function couplingPoint(
  ctx: VecContext,
  { mate, a, b, map }: ResolvedMate,
  names: UniqueNames,
  terminals: Terminals,
): XmlElement {
  const id = xmlId('M', mate.id);
  const name = `${a.resolved.connector.designator}-${b.resolved.connector.designator}`;
  const pairs = knownPairs(ctx, { mate, a, b, map }, name);
  const ref = (side: 'a' | 'b', cavity: string): string => cavityRefId(mate[side], cavity);
  ctx.report.wrote('mates');
  const matingPoints = pairs.flatMap((p) => {
    const first = terminals.get(ref('a', p.a));
    const second = terminals.get(ref('b', p.b));
    if (first === undefined || second === undefined) return [];
    return node('MatingPoint', { id: xmlId('M', mate.id, 'point', p.a, p.b) }, [
      value('Identification', `${p.a}-${p.b}`),
      refs('FirstTerminalRole', first),
      refs('SecondTerminalRole', second),
    ]);
  });
  return node('CouplingPoint', { id, iri: iriOf(mate.id) }, [
    value('Identification', names.give(name, mate.id)),
    refs('FirstConnector', housingRoleOf(a)),
    refs('SecondConnector', housingRoleOf(b)),
    matingPoints,
    pairs.length === 0
      ? undefined
      : node('SlotCoupling', { id: `${id}_slots` }, [
          value('Identification', '1'),
          refs('FirstSlot', slotRefId(mate.a)),
          refs('SecondSlot', slotRefId(mate.b)),
          pairs.map((p) =>
            node('CavityCoupling', { id: xmlId('M', mate.id, 'cavities', p.a, p.b) }, [
              value('Identification', `${p.a}-${p.b}`),
              refs('FirstCavity', ref('a', p.a)),
              refs('SecondCavity', ref('b', p.b)),
            ]),
          ),
        ]),
  ]);
}

/** None, and told so, where which cavities meet is not known. */
function knownPairs(ctx: VecContext, resolved: ResolvedMate, name: string) {
  const { mate, map } = resolved;
  const pairs = matedPairs(resolved);
  if (!pairs)
    ctx.report.lose(
      name,
      `which cavities meet is not known (needs ${map.needs.join(', ')}): written without them`,
      { type: 'mate', id: mate.id },
    );
  return pairs ?? [];
}

/** Which cavity of one part meets which of another: master data, once for each pair of parts and map. */
export function matingDocument(ctx: VecContext, company: string, number: string): XmlElement | undefined {
  const seen = new Map<string, XmlElement>();
  for (const { a, b, map } of ctx.harness.mates) {
    const [one, two] = [a.resolved.part, b.resolved.part];
    if (!one || !two || map.source === 'unknown' || map.pairs.length === 0) continue;
    const key = JSON.stringify([one.id, two.id, map.pairs.map((p) => [p.a, p.b])]);
    if (seen.has(key)) continue;
    const id = xmlId('Mapping', String(seen.size + 1));
    seen.set(
      key,
      node('Mapping', { id }, [
        value('IdentificationA', housingName(one.partNumber, halfKey(a))),
        value('IdentificationB', housingName(two.partNumber, halfKey(b))),
        refs('A', partIds(one.id).version),
        refs('B', partIds(two.id).version),
        node('SlotMapping', { id: `${id}_slots` }, [
          value('IdentificationA', '1'),
          value('IdentificationB', '1'),
          map.pairs.map((p, i) =>
            node('CavityMapping', { id: `${id}_${i + 1}` }, [
              value('IdentificationA', p.a),
              value('IdentificationB', p.b),
            ]),
          ),
        ]),
      ]),
    );
  }
  if (seen.size === 0) return undefined;
  return node('DocumentVersion', { id: 'MatingInterfaces' }, [
    value('CompanyName', company),
    value('DocumentNumber', `${number} mating interfaces`),
    value('DocumentType', 'MatingInterface'),
    value('DocumentVersion', '/NULL'),
    node('Specification', { id: 'Mappings', type: 'MappingSpecification' }, [
      value('Identification', 'MAPPINGS'),
      [...seen.values()],
    ]),
  ]);
}
