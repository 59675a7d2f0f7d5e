import type { Signal } from '@latchwork/core/model/electrical';
import type { DemoBuilder } from '../builder';
import { addStation } from './stations';

const LENGTH = { lengthMm: 350 } as const;

/** What is to be kept apart or together: one station with a protective earth, a pair, a shielded cable, noise beside quiet. */
export function addSeparationFaults(demo: DemoBuilder): void {
  addStation(demo, { first: 71, key: 'A', y: 685, equipment: 'A17', family: ['BI2', 'HV'] });
  addSignals(demo);
  const positions = ['EARTH', 'DATA_P', 'PWM', 'DATA_N', 'BRAKE_A', 'BRAKE_B'];
  for (const x of ['X71', 'X74']) demo.declare(x, positions);
  demo.wire('W71', 'X72:1', 'X73:1', 'TW-24-105', 'RD', LENGTH);
  demo.wire('W72', 'X72:2', 'X73:2', 'TW-24-105', 'GY', LENGTH);
  demo.wire('W73', 'X72:3', 'X73:3', 'TW-24-105', 'OG', LENGTH);
  demo.wire('W74', 'X72:4', 'X73:4', 'TW-24-105', 'BU', LENGTH);
  demo.do({ id: 'cable.add', args: { designator: 'WC1', part: demo.part('cable', 'TC-4X26-S') } });
  for (const [designator, cavity, core] of [['W75', '5', '3'], ['W76', '6', '4']] as const)
    demo.core(designator, `X72:${cavity}`, `X73:${cavity}`, 'WC1', core); // prettier-ignore
  addRun(demo);
  const halves = ['X72', 'X73'].map((x) => demo.id('connectors', x));
  demo.do({ id: 'connector.edit', args: { ids: halves, change: { serviceLoopMm: 20 } } });
  for (const part of ['BI2-06-FS-A', 'BI2-06-FP-A'] as const)
    demo.do({
      id: 'part.embed',
      args: { part: { ...demo.part('housing', part), firstMatePositions: ['6'] } },
    });
  const header = demo.part('header', 'BI2-06-HV-A');
  demo.do({ id: 'part.embed', args: { part: { ...header, firstMatePositions: ['6'] } } });
  demo.do({ id: 'signal.edit', args: { id: demo.signalId('VENT_SUP'), change: { liveMating: true } } });
}

function addSignals(demo: DemoBuilder): void {
  const plain = { class: 'signal', voltageV: 5, currentA: 0.01 } as const;
  const add = (signal: Omit<Signal, 'id'>): void => demo.do({ id: 'signal.add', args: { signal } });
  add({ name: 'EARTH', class: 'protective-earth', voltageV: 0 });
  add({ name: 'DATA_P', ...plain, noiseClass: 'quiet' });
  add({ name: 'DATA_N', ...plain, noiseClass: 'quiet', pairedWith: demo.signalId('DATA_P') });
  add({ name: 'PWM', ...plain, noiseClass: 'noisy' });
  add({ name: 'BRAKE_A', ...plain });
  add({ name: 'BRAKE_B', ...plain, redundantTo: demo.signalId('BRAKE_A') });
}

/** One run without a way to the others, for a place that has a list of wires. */
function addRun(demo: DemoBuilder): void {
  demo.node('N11', [0, 120], ['X72']);
  demo.node('N12', [250, 120], ['X73']);
  demo.segment('S11', 'N11', 'N12');
  const change = { wireStyles: ['cross-linked'] };
  demo.do({ id: 'segment.edit', args: { id: demo.id('segments', 'S11'), change } });
}
