import type { DemoBuilder } from '../builder';
import { addStation } from './stations';

const LENGTH = { lengthMm: 350 } as const;

function signal(demo: DemoBuilder, name: string): void {
  demo.do({
    id: 'signal.add',
    args: { signal: { name, class: 'signal', voltageV: 5, currentA: 0.1 } },
  });
}

const setContact = (demo: DemoBuilder, wire: string, end: 0 | 1, partNumber: string): void =>
  demo.do({
    id: 'contact.set',
    args: { wire: demo.id('wires', wire), end, part: demo.part('contact', partNumber) },
  });

/** Faults 1 to 6: what is crimped on the wires. */
export function addContactFaults(demo: DemoBuilder): void {
  addStation(demo, { first: 1, key: 'A', y: 35, equipment: 'A11' });
  const names = ['C1', 'C2', 'C3', 'C4', 'C5', 'C6'];
  for (const name of names) signal(demo, name);
  demo.declare('X1', names);
  demo.declare('X4', names);
  const parts = ['TW-22-120', 'TW-22-120', 'TW-22-120', 'TW-26-095', 'TW-22-160', 'TW-22-120-1'];
  const colours = ['RD', 'BK', 'WH', 'GN', 'BU', 'YE'];
  parts.forEach((part, i) =>
    demo.wire(`W${i + 1}`, `X2:${i + 1}`, `X3:${i + 1}`, part, colours[i] as string, LENGTH),
  );
  setContact(demo, 'W1', 0, 'AL3-P2024-01');
  setContact(demo, 'W2', 0, 'BI2-S2225-01');
  demo.do({ id: 'contact.set', args: { wire: demo.id('wires', 'W3'), end: 0, part: null } });
  for (const wire of ['W4', 'W5', 'W6']) setContact(demo, wire, 0, 'AL3-S2024-01');
  // Thick and solid wire find no contact of their own at the far end either.
  for (const wire of ['W5', 'W6']) setContact(demo, wire, 1, 'AL3-P2024-01');
}

/** Faults 7 to 10: how wires are prepared and put into cavities. */
export function addCavityFaults(demo: DemoBuilder): void {
  addStation(demo, { first: 5, key: 'B', y: 105, equipment: 'A12' });
  const names = ['D1', 'D2', 'D3', 'D4'];
  for (const name of names) signal(demo, name);
  demo.declare('X5', ['D1', 'D2', 'D3', 'D4']);
  demo.declare('X8', ['D1', 'D2', 'D2', 'D3', 'D3', 'D4']);
  demo.wire('W11', 'X6:1', 'X7:1', 'TW-22-120', 'RD', LENGTH);
  demo.wire('W12', 'X6:2', 'X7:2', 'TW-24-105', 'BK', LENGTH);
  demo.wire('W13', 'X6:2', 'X7:3', 'TW-26-095', 'GY', LENGTH);
  demo.wire('W14', 'X6:3', 'X7:4', 'TW-24-105', 'WH', LENGTH);
  demo.wire('W15', 'X6:3', 'X7:5', 'TW-24-105', 'GN', LENGTH);
  demo.wire('W16', 'X6:4', 'X7:6', 'TW-22-140-60', 'BU', LENGTH);
  demo.do({
    id: 'wire.set-strip-length',
    args: { id: demo.id('wires', 'W11'), end: 0, stripLengthMm: 4 },
  });
  demo.do({ id: 'contact.share', args: { place: { connector: demo.id('connectors', 'X6'), cavity: '2' } } });
  setContact(demo, 'W15', 0, 'AL3-S2024-01');
  demo.state('X6', ['5'], 'empty');
}

/** Faults 11 to 16: which positions are joined, and how the wires are told apart. */
export function addSignalFaults(demo: DemoBuilder): void {
  addStation(demo, { first: 9, key: 'C', y: 175, equipment: 'A13' });
  for (const name of ['PUMP_SUP', 'FAN_SUP', 'LEVEL', 'E3', 'E4', 'E5', 'E6']) signal(demo, name);
  demo.declare('X9', ['PUMP_SUP', 'LEVEL', 'E3', 'E4', 'E5', 'E6']);
  demo.declare('X12', ['FAN_SUP', null, 'E3', 'E4', 'E5', 'E6']);
  demo.state('X12', ['2'], 'empty');
  const colours = ['RD', 'BU', 'WH', 'WH', 'GN', 'YE'];
  colours.forEach((colour, i) =>
    demo.wire(`W${i + 21}`, `X10:${i + 1}`, `X11:${i + 1}`, 'TW-22-120', colour, i + 21 === 25 ? {} : LENGTH),
  );
  setContact(demo, 'W26', 0, 'AL3-S2024-11');
}

/** Faults 28 to 30: a wire beyond the housing, a splice without a part, a half that nothing is plugged into. */
export function addLooseEnds(demo: DemoBuilder): void {
  for (const name of ['G1', 'G2']) signal(demo, name);
  demo.connector('X41', 'AL3-03-HA-C', [50, 475], { equipment: 'A1' });
  demo.declare('X41', ['G1', 'G2']);
  demo.connector('X42', 'AL3-04-FS-C', [105, 475]);
  demo.connector('X43', 'AL3-03-FP-C', [270, 475], { exit: 'left', view: 'wire-entry-face' });
  demo.do({ id: 'splice.add', args: { designator: 'XS1', position: { x: 200, y: 480 } } });
  demo.wire('W31', 'X42:1', 'XS1', 'TW-22-120', 'RD', { ...LENGTH, signal: 'G1' });
  demo.wire('W32', 'XS1', 'X43:1', 'TW-22-120', 'RD', { ...LENGTH, signal: 'G1' });
  demo.wire('W33', 'X42:4', 'X43:2', 'TW-22-120', 'BU', LENGTH);
  demo.do({
    id: 'connector.set-part',
    args: { id: demo.id('connectors', 'X42'), part: demo.part('housing', 'AL3-03-FS-C') },
  });
  const oldLock = demo.project.connectors.find((c) => c.designator === 'X42')?.accessories[0];
  if (oldLock)
    demo.do({
      id: 'connector.remove-accessory',
      args: { id: demo.id('connectors', 'X42'), accessory: oldLock.id },
    });
  demo.do({ id: 'connector.fit-lock', args: { id: demo.id('connectors', 'X42') } });
  demo.mate('X42', 'X41');
  demo.state('X42', ['2', '3'], 'empty');
  demo.state('X43', ['3'], 'empty');
}
