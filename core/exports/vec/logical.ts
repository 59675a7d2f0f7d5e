import type { SignalClass } from '../../model/electrical';
import { otherFields } from '../exchange/field-text';
import { PLACED_OF_SIGNAL } from '../exchange/placed-fields';
import { signalWords } from '../exchange/signal-words';
import { UniqueNames } from '../exchange/unique-names';
import { iriOf, xmlId } from '../exchange/xml-id';
import type { XmlElement } from '../xml/xml';
import { cavitiesOf } from './connector-pieces';
import { connectedNets, portOfEnd } from './net-ends';
import {
  componentConnectorId,
  connectionEndId,
  connectionId,
  openPortId,
  portId,
  signalId,
} from '../exchange/object-ids';
import type { VecContext } from './vec-context';
import { node, properties, refs, value } from './vec-values';

const SIGNAL_TYPES: Readonly<Record<SignalClass, string | undefined>> = {
  power: 'Energy',
  return: 'Ground',
  neutral: 'Energy',
  signal: 'Information',
  shield: undefined,
  'protective-earth': 'Ground',
};

/** What travels on the nets. Voltages and currents have no element and stand as properties. */
export function signalSpec(ctx: VecContext): XmlElement | undefined {
  const { signals } = ctx.harness.project;
  if (signals.length === 0) return undefined;
  const names = new UniqueNames();
  ctx.report.wrote('signals', signals.length);
  return node('Specification', { id: 'Signals', type: 'SignalSpecification' }, [
    value('Identification', 'SIGNALS'),
    signals.map((s) => {
      const id = signalId(s.id);
      return node('Signal', { id, iri: iriOf(s.id) }, [
        properties(id, signalWords(ctx.harness.project, otherFields(s, PLACED_OF_SIGNAL), s)),
        value('Identification', names.give(s.name, s.id)),
        value('SignalName', s.name),
        value('SignalType', s.class && SIGNAL_TYPES[s.class]),
      ]);
    }),
  ]);
}

/** Connectors with their positions, wire ends that lie free, and the nets that join them. */
export function connectionSpec(ctx: VecContext): XmlElement {
  const names = new UniqueNames();
  return node('Specification', { id: 'Connections', type: 'ConnectionSpecification' }, [
    value('Identification', 'CONNECTIONS'),
    connectorNodes(ctx, names),
    openEndNodes(ctx, names),
    connections(ctx),
  ]);
}

function connectorNodes(ctx: VecContext, names: UniqueNames): XmlElement[] {
  return ctx.harness.connectors.map((use) => {
    const { connector } = use.resolved;
    const id = componentConnectorId(connector.id);
    const name = names.give(connector.designator, connector.id);
    return node('ComponentNode', { id: `${id}_node` }, [
      value('Identification', name),
      node('ComponentConnector', { id }, [
        value('Identification', name),
        cavitiesOf(use).map((c) =>
          node('ComponentPort', { id: portId(connector.id, c.cavity) }, [
            value('Identification', c.cavity),
            refs('Signal', c.signal && signalId(c.signal.id)),
          ]),
        ),
      ]),
    ]);
  });
}

function openEndNodes(ctx: VecContext, names: UniqueNames): XmlElement[] {
  return ctx.harness.wires.flatMap((wire) =>
    ([0, 1] as const).flatMap((index) => {
      const port = openPortId(wire.wire.id, index);
      if (portOfEnd(wire, index)?.port !== port) return [];
      const name = names.give(portOfEnd(wire, index)?.name ?? '', port);
      return node('ComponentNode', { id: `${port}_node` }, [
        value('Identification', name),
        value('ComponentNodeType', 'OpenEnd'),
        node('ComponentConnector', { id: `${port}_connector` }, [
          value('Identification', name),
          node('ComponentPort', { id: port }, [value('Identification', '1')]),
        ]),
      ]);
    }),
  );
}

/** A net that names two signals is written without one: its wires keep theirs. */
function connections(ctx: VecContext): XmlElement[] {
  const names = new UniqueNames();
  const endNames = new UniqueNames();
  return connectedNets(ctx.harness).map(({ net, ends }) => {
    const [signal, second] = net.signals;
    const only = second ? undefined : signal;
    ctx.report.wrote('nets');
    if (second)
      ctx.report.lose(
        `net at ${ends[0]?.name ?? ''}`,
        `it names several signals (${net.signals.map((s) => s.name).join(', ')}): each wire keeps its own`,
      );
    return node('Connection', { id: connectionId(net.key) }, [
      value('Identification', names.give(only?.name ?? ends[0]?.name ?? '', xmlId('Net', net.key))),
      refs('Signal', only && signalId(only.id)),
      ends.map(({ port, name }) =>
        node('ConnectionEnd', { id: connectionEndId(net.key, port) }, [
          value('Identification', endNames.give(name, port)),
          value('IsExternalEnd', false),
          refs('ConnectedComponentPort', port),
        ]),
      ),
    ]);
  });
}
