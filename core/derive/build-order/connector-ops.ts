import { contactsIn } from '../contacts-in-cavity';
import type { ConnectorUse, EndInCavity, Harness } from '../harness';
import type { BuildOp, OpNeed, OpObject } from './build-op';
import { loadingOrder } from './loading-order';
import { closingOf, opId } from './op-ids';
import { groupNeeds, onBefore } from './prepare-ops';

/** Part kinds that are threaded over the wires of a connector before it is loaded. */
const THREADED = new Set(['strain-relief', 'grommet']);

/** Loading of connectors, filling of what stays without a wire, locks and what else is fitted. */
export function connectorOps(harness: Harness, before: ReadonlyMap<string, readonly OpNeed[]>): BuildOp[] {
  return harness.connectors.flatMap((use) => {
    const inserts = insertOps(harness, use, before);
    const bring = use.resolved.connector.supply === 'harness';
    if (!bring) return inserts;
    const loaded = inserts.map((op) => op.id);
    const fills = fillOps(use, loaded);
    const full = [...loaded, ...fills.map((op) => op.id)];
    return [...threadedOps(use), ...inserts, ...fills, ...closeOps(use, full)];
  });
}

const connectorObject = ({ resolved }: ConnectorUse): OpObject => ({
  type: 'connector',
  id: resolved.connector.id,
});

const slideId = (use: ConnectorUse, accessory: string): string =>
  opId.slide(`${use.resolved.connector.id} ${accessory}`);

function threadedOps(use: ConnectorUse): BuildOp[] {
  const { connector } = use.resolved;
  const wires = [...new Set(use.cavities.flatMap((c) => c.ends.map((e) => e.wire)))];
  return use.resolved.accessories.flatMap(({ part, quantity }, i): BuildOp[] =>
    part && THREADED.has(part.kind)
      ? [
          {
            id: slideId(use, connector.accessories[i]!.id),
            stage: 'slide-on-bundle',
            gather: `relief ${part.partNumber}`,
            what: `Slide ${part.partNumber} over the wires`,
            place: connector.designator,
            objects: [connectorObject(use)],
            parts: [{ part: part.partNumber, quantity }],
            needs: wires.map((w) => ({
              op: opId.cut(w.wire.id),
              because: 'every wire that runs through it must be there',
            })),
          },
        ]
      : [],
  );
}

/** One operation for each contact, or bare end, in the order of loading. */
function insertOps(
  harness: Harness,
  use: ConnectorUse,
  before: ReadonlyMap<string, readonly OpNeed[]>,
): BuildOp[] {
  const { connector, accessories } = use.resolved;
  const threaded = accessories.flatMap(({ part }, i): OpNeed[] =>
    part && THREADED.has(part.kind) && connector.supply === 'harness'
      ? [{ op: slideId(use, connector.accessories[i]!.id), because: 'it does not go on over the housing' }]
      : [],
  );
  const byCavity = new Map(use.cavities.map((c) => [c.cavity, c]));
  const ops: BuildOp[] = [];
  for (const name of loadingOrder(use)) {
    const cavity = byCavity.get(name);
    if (!cavity) continue;
    for (const ends of contactsIn(cavity)) {
      const [first] = ends;
      const id = first && closingOf(first.wire, first.index);
      if (!first || id === undefined) continue;
      const last = ops.at(-1);
      ops.push({
        id,
        stage: 'insert',
        gather: connector.designator,
        what: `Load ${connector.designator} by its pinout: push in until it clicks, tug gently`,
        place: String(ops.length + 1).padStart(4, '0'),
        objects: [{ type: 'cavity', id: connector.id, cavity: name }],
        parts: [],
        needs: [
          ...ends.flatMap((e) => endNeeds(harness, e)),
          ...(before.get(id) ?? []),
          ...threaded,
          ...(last
            ? [{ op: last.id, because: 'inner and lower rows first, so that no wire bars the way' }]
            : []),
        ],
      });
    }
  }
  return ops;
}

function endNeeds(harness: Harness, { wire, index, end }: EndInCavity): OpNeed[] {
  return [
    ...(end.contact && end.contactPart
      ? [{ op: opId.crimp(end.contact.id), because: 'only a crimped contact is loaded' }]
      : [
          { op: opId.cut(wire.wire.id), because: 'the wire must be cut and stripped' },
          ...onBefore(harness, wire, index),
        ]),
    ...groupNeeds(wire),
  ];
}

function fillOps(use: ConnectorUse, loaded: readonly string[]): BuildOp[] {
  const { connector } = use.resolved;
  const after = loaded.map((op) => ({ op, because: 'wires go in first, so that none is shut out' }));
  return use.cavities.flatMap((c): BuildOp[] => {
    const isKey = c.state === 'blocked' && c.plug !== undefined;
    const part = c.state === 'spare-contact' ? c.spare : c.plug;
    if (c.state !== 'spare-contact' && c.state !== 'plugged' && !isKey) return [];
    return [
      {
        id: opId.fill(connector.id, c.cavity),
        stage: 'fill',
        gather: c.state,
        what: c.state === 'spare-contact' ? 'Put in spare contacts' : 'Put in cavity plugs',
        place: `${connector.designator}:${c.cavity}`,
        objects: [{ type: 'cavity', id: connector.id, cavity: c.cavity }],
        parts: [{ part: part?.partNumber ?? null, quantity: 1 }],
        needs: after,
      },
    ];
  });
}

/** Locks, then what else belongs to the connector. */
function closeOps(use: ConnectorUse, full: readonly string[]): BuildOp[] {
  const { connector, accessories } = use.resolved;
  return accessories.map(({ part, quantity }, i): BuildOp => {
    const isLock = part?.kind === 'secondary-lock';
    const isThreaded = part !== undefined && THREADED.has(part.kind);
    const accessory = connector.accessories[i]!.id;
    return {
      id: isLock ? opId.lock(`${connector.id} ${accessory}`) : opId.fit(`${connector.id} ${accessory}`),
      stage: isLock ? 'lock' : 'fit',
      gather: isLock ? '' : (part?.partNumber ?? ''),
      what: isLock
        ? 'Close the secondary locks: one that does not close tells of a contact that is not seated'
        : `${isThreaded ? 'Fasten' : 'Fit'} ${part?.partNumber ?? 'a part that is not known'}`,
      place: connector.designator,
      objects: [connectorObject(use)],
      parts: isThreaded ? [] : [{ part: part?.partNumber ?? null, quantity }],
      needs: [
        ...full.map((op) => ({
          op,
          because: isLock ? 'a lock closes over seated contacts only' : 'the connector must be loaded',
        })),
        ...(isThreaded ? [{ op: slideId(use, accessory), because: 'it must be on the wires' }] : []),
      ],
    };
  });
}
