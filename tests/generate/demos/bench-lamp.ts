import type { Project } from '@latchwork/core/model/project';
import { startDemo, type DemoBuilder } from './builder';
import { fillTitle } from './title';

const SIGNALS = ['LED_SUP', 'LED_RTN', 'NTC', 'NTC_RTN', 'TOUCH', 'TOUCH_RTN'] as const;

/** Small and clean: a driver board, one harness, the head of a lamp on the end of a wire-to-wire pair. */
export function benchLamp(): Project {
  const demo = startDemo({ firstId: 1_000_000, title: 'Bench lamp harness' });
  fillTitle(demo, {
    number: 'EX-0001',
    supplementaryTitle: 'Small and clean: a first look around (invented example)',
    notes: ['The board half X1 and the half X4 of the lamp head come with their equipment.'],
  });
  demo.do({ id: 'project.edit', args: { change: { buildQuantities: [1, 25, 250] } } });

  demo.do({
    id: 'equipment.add',
    args: {
      equipment: {
        kind: 'board',
        designator: 'A1',
        description: 'Lamp driver board',
        position: { x: 20, y: 25 },
        widthMm: 60,
        heightMm: 75,
        thicknessMm: 1.6,
        solderProcess: { process: 'wave', peakC: 255, timeS: 4 },
      },
    },
  });
  demo.do({
    id: 'equipment.add',
    args: {
      equipment: {
        kind: 'device',
        designator: 'A2',
        description: 'Lamp head, bought complete',
        position: { x: 255, y: 25 },
        widthMm: 60,
        heightMm: 75,
      },
    },
  });

  demo.connector('X1', 'AL3-06-HA-A', [50, 40], { equipment: 'A1', description: 'Lamp output of the board' });
  demo.connector('X2', 'AL3-06-FS-A', [95, 40], { description: 'To the driver board' });
  demo.connector('X3', 'AL3-06-FP-A', [215, 40], {
    exit: 'left',
    view: 'wire-entry-face',
    description: 'To the lamp head',
  });
  demo.connector('X4', 'AL3-06-FS-A', [260, 40], {
    equipment: 'A2',
    supply: 'equipment',
    description: 'Pigtail of the lamp head',
  });

  const x1 = demo.id('connectors', 'X1');
  const signal = (
    name: (typeof SIGNALS)[number],
    position: number,
    kind: 'power' | 'return' | 'signal',
    voltageV: number,
    currentA: number,
  ) =>
    demo.do({
      id: 'signal.add',
      args: {
        signal: {
          name,
          class: kind,
          voltageV,
          currentA,
          source: { connector: x1, cavity: String(position) },
        },
      },
    });
  signal('LED_SUP', 1, 'power', 12, 0.9);
  signal('LED_RTN', 2, 'return', 0, 0.9);
  signal('NTC', 3, 'signal', 3.3, 0.001);
  signal('NTC_RTN', 4, 'return', 0, 0.001);
  signal('TOUCH', 5, 'signal', 3.3, 0.002);
  signal('TOUCH_RTN', 6, 'return', 0, 0.002);
  for (const name of ['LED_SUP', 'NTC', 'TOUCH'] as const)
    demo.returns([name], name === 'LED_SUP' ? 'LED_RTN' : `${name}_RTN`);
  // The driver limits its output itself, so the harness needs no fuse.
  demo.do({ id: 'signal.edit', args: { id: demo.signalId('LED_SUP'), change: { sourceLimitA: 2 } } });
  demo.declare('X1', SIGNALS);
  demo.declare('X4', SIGNALS);
  demo.mate('X2', 'X1');
  demo.mate('X3', 'X4');

  const colours = ['RD', 'BK', 'WH', 'GY', 'BU', 'BN'];
  SIGNALS.forEach((_name, i) => {
    const wirePart = i < 2 ? 'TW-22-120' : 'TW-24-105';
    demo.wire(`W${i + 1}`, `X2:${i + 1}`, `X3:${i + 1}`, wirePart, colours[i] as string);
  });

  demo.node('N1', [60, 120], ['X2']);
  demo.node('N2', [240, 120]);
  demo.node('N3', [240 + 216, 120 + 162], ['X3']);
  demo.segment('S1', 'N1', 'N2');
  demo.segment('S2', 'N2', 'N3');
  demo.cover('OS-3', 'S1', 25, 180);
  demo.cover('OS-3', 'S2', 0, 245);
  demo.label('X2', 'X2 DRIVER');
  demo.label('X3', 'X3 HEAD');
  demo.tie('S1', 170);
  demo.tie('S2', 10);
  demo.do({
    id: 'segment.edit',
    args: { id: demo.id('segments', 'S2'), change: { bendRadiusMm: 30, plusMm: 10, minusMm: 10 } },
  });
  demo.do({
    id: 'segment.edit',
    args: { id: demo.id('segments', 'S1'), change: { plusMm: 10, minusMm: 10 } },
  });
  // The loop also takes up what the way may be longer.
  demo.do({
    id: 'connector.edit',
    args: { ids: [demo.id('connectors', 'X2')], change: { serviceLoopMm: 20 } },
  });
  prepareSeries(demo);
  demo.do({ id: 'project.edit', args: { change: { labelMethod: 'identification' } } });
  demo.do({ id: 'labels.make', args: { atWiresMm: 20 } });
  return demo.project;
}

/** What the shop and the assembly line have to know once 250 lamps are built. */
function prepareSeries(demo: DemoBuilder): void {
  demo.tool('AL3-AP-2024');
  demo.fitted('X1', { footprint: { padOneCorner: 'top-right', seenFrom: 'header-side', facesEdge: true } });
  demo.fitted('X2', { plannedCycles: 20, mateRoomMm: 60, latchRoomMm: 15 });
  demo.fitted('X3', { plannedCycles: 20, mateRoomMm: 80 });
  const force = {
    id: 'mate-force-max',
    value: 50,
    unit: 'N',
    source: 'agreed for this project (invented)',
    verified: false,
  };
  demo.do({ id: 'project.set-limit', args: { limit: force } });
}
