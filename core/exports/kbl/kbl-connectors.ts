import type { CavityUse, ConnectorUse } from '../../derive/harness';
import { cavityName, cavityRef, connectorRef } from '../../rules/refs';
import { accessoriesOf, plugsOf, type Fitted } from '../exchange/fitted';
import { otherFields } from '../exchange/field-text';
import type { Junction } from '../exchange/junctions';
import { matedPairs } from '../exchange/mated-pairs';
import { cavityRefId, pieceIds, slotRefId } from '../exchange/object-ids';
import { PLACED_OF_CAVITY, PLACED_OF_CONNECTOR } from '../exchange/placed-fields';
import type { XmlElement } from '../xml/xml';
import { contactPoint } from './kbl-contact-points';
import type { KblContext } from './kbl-context';
import { cavityId, partId, slotId } from './kbl-part-shape';
import { addPart, shapeOf, slotElement } from './kbl-parts';
import { addFitted } from './kbl-pieces';
import { element, field, installation, processing, references, value } from './kbl-values';

/**
 * Connectors of the harness with their cavities and contact points. What comes with the equipment is no part of a harness
 * file, since all that stands in it is counted; where wires end in it, it is written and says so.
 */
export function addConnectors(ctx: KblContext): void {
  const plugs = plugsOf(ctx.harness);
  const plugIn = new Map(plugs.map((p) => [`${p.connector} ${p.cavity?.name ?? ''}`, pieceIds.plug(p.key)]));
  const left = new Set<string>();
  const joined = new Set(ctx.junctions.flatMap((j) => (j.at === 'cavity' ? [j.cavity] : [])));
  const junctions = junctionsByConnector(ctx);
  const mated = matedCavities(ctx);
  for (const use of ctx.harness.connectors) {
    const { connector } = use.resolved;
    for (const c of use.cavities)
      if (!c.exists && !joined.has(c))
        ctx.report.lose(
          cavityName(c),
          'the part has no such cavity: what is declared of it is not written',
          cavityRef(c),
        );
    if (isInFile(use)) addConnector(ctx, use, { plugIn, mated }, junctions.get(connector.id) ?? []);
    else left.add(connector.id);
    if (connector.supply === 'equipment')
      ctx.report.lose(
        connector.designator,
        left.has(connector.id)
          ? 'comes with the equipment: a harness file counts all that stands in it, so it is left out with its mates'
          : 'comes with the equipment and is written because wires end in it: not to be bought with the harness',
        connectorRef(use),
      );
  }
  const isBought = (f: Fitted): boolean => f.supply === 'harness';
  for (const a of accessoriesOf(ctx.harness).filter(isBought)) {
    addFitted(ctx, a, pieceIds.accessory(a.key));
    ctx.report.wrote('accessories');
  }
  for (const p of plugs.filter(isBought)) {
    addFitted(ctx, p, pieceIds.plug(p.key));
    ctx.report.wrote('plugs');
  }
}

/** What is in a cavity besides contacts, and what it meets. */
interface Neighbours {
  readonly plugIn: ReadonlyMap<string, string>;
  readonly mated: ReadonlyMap<string, readonly string[]>;
}

type InCavity = Extract<Junction, { at: 'cavity' }>;

function junctionsByConnector(ctx: KblContext): ReadonlyMap<string, readonly InCavity[]> {
  const out = new Map<string, InCavity[]>();
  for (const j of ctx.junctions) {
    if (j.at !== 'cavity' || !j.cavity.exists) continue;
    const { id } = j.cavity.connector.connector;
    const list = out.get(id);
    if (list) list.push(j);
    else out.set(id, [j]);
  }
  return out;
}

function addConnector(
  ctx: KblContext,
  use: ConnectorUse,
  { plugIn, mated }: Neighbours,
  own: readonly InCavity[],
): void {
  const { connector, part, equipment } = use.resolved;
  const id = pieceIds.connector(connector.id);
  const cavities = use.cavities.filter((c) => c.exists && isWritten(use, c));
  const key = housingOf(ctx, use);
  const plugOf = (c: CavityUse): string | undefined =>
    connector.supply === 'harness' ? plugIn.get(`${connector.id} ${c.cavity}`) : undefined;
  if (connector.node !== undefined) putAtNode(ctx, connector.node, id);
  ctx.report.wrote('connectors');
  ctx.connectorsWritten.add(id);
  ctx.harnessParts.add(
    element('Connector_occurrence', { id }, [
      value('Id', ctx.names('connectors').give(connector.designator, connector.id)),
      value('Description', connector.description),
      value('Part', partId(key)),
      own.map((j) => contactPoint(ctx, j, cavityRefId(connector.id, j.cavity.cavity))),
      installation(id, [
        ...otherFields(connector, PLACED_OF_CONNECTOR),
        ...field('equipment', equipment?.designator),
        ...field('note', connector.note),
        ...(connector.supply === 'equipment' ? field('supply', 'comes with the equipment') : []),
        ...(part ? [] : field('part', 'no housing record')),
      ]),
      cavities.length === 0
        ? undefined
        : element('Slots', { id: slotRefId(connector.id), type: 'Slot_occurrence' }, [
            value('Part', slotId(key)),
            cavities.map((c) => cavityElement(connector.id, key, c, plugOf(c), mated)),
          ]),
    ]),
  );
}

/** A position closed as a key has no cavity in the part unless something is there; see the part. */
const isWritten = ({ resolved: { part } }: ConnectorUse, c: CavityUse): boolean =>
  !part?.keyPositions?.includes(c.cavity) || c.ends.length > 0 || c.entry !== undefined;

function cavityElement(
  connector: string,
  key: string,
  c: CavityUse,
  plug: string | undefined,
  mated: Neighbours['mated'],
): XmlElement {
  const id = cavityRefId(connector, c.cavity);
  const isDeclared = c.state !== 'wired' && c.state !== 'undeclared';
  return element('Cavities', { id }, [
    value('Associated_plug', plug),
    references('Mated_cavities', [...new Set(mated.get(id) ?? [])]),
    value('Part', cavityId(key, c.cavity)),
    processing(id, [
      ...(isDeclared ? field('state', c.state) : []),
      ...field('signal', c.signal?.name),
      ...(c.entry ? otherFields(c.entry, PLACED_OF_CAVITY) : []),
    ]),
  ]);
}

/** Key of the housing of a connector; writes it where it is not among the parts: headers, and connectors without a record. */
function housingOf(ctx: KblContext, use: ConnectorUse): string {
  const { connector, part } = use.resolved;
  if (part) {
    if (part.kind === 'header') {
      if (!ctx.partsWritten.has(partId(part.id))) ctx.report.wrote('parts');
      addPart(ctx, part, shapeOf(ctx, part));
    }
    return part.id;
  }
  const key = `no-half ${connector.id}`;
  const cavities = use.cavities.map((c) => c.cavity);
  ctx.report.lose(connector.designator, 'its part is no housing record: written without a part number', {
    type: 'connector',
    id: connector.id,
  });
  addPart(ctx, undefined, {
    element: 'Connector_housing',
    key,
    partNumber: '/NULL',
    fields: [],
    children: [slotElement(key, cavities.length, cavities, [['ways', 'not known']])],
  });
  return key;
}

/** Equipment is written only where wires end in it. */
const isInFile = (use: ConnectorUse): boolean =>
  use.resolved.connector.supply === 'harness' || use.cavities.some((c) => c.ends.length > 0);

/** Cavities that meet, by occurrence, of mates with both halves in the file. */
function matedCavities(ctx: KblContext): ReadonlyMap<string, readonly string[]> {
  const out = new Map<string, string[]>();
  const join = (from: string, to: string): unknown => out.set(from, [...(out.get(from) ?? []), to]);
  for (const resolved of ctx.harness.mates) {
    const { mate, a, b } = resolved;
    // A half that is not in the file is told of as a connector.
    if (!isInFile(a) || !isInFile(b)) continue;
    const pairs = matedPairs(resolved);
    if (!pairs) {
      ctx.report.lose(
        `${a.resolved.connector.designator}-${b.resolved.connector.designator}`,
        'which cavities meet is not known: the mate is not written',
        { type: 'mate', id: mate.id },
      );
      continue;
    }
    ctx.report.wrote('mates');
    for (const p of pairs) {
      if (!hasCavity(a, p.a) || !hasCavity(b, p.b)) continue;
      join(cavityRefId(mate.a, p.a), cavityRefId(mate.b, p.b));
      join(cavityRefId(mate.b, p.b), cavityRefId(mate.a, p.a));
    }
  }
  return out;
}

const hasCavity = (use: ConnectorUse, cavity: string): boolean =>
  use.cavities.some((c) => c.cavity === cavity && c.exists && isWritten(use, c));

export function putAtNode(ctx: KblContext, nodeId: string, occurrence: string): void {
  ctx.atNode.set(nodeId, [...(ctx.atNode.get(nodeId) ?? []), occurrence]);
}
