import type { DemoBuilder } from '../builder';

/** The formboard of the cavity sampler, from X6 to X7: each segment has a fault of its own. */
export function addRouteFaults(demo: DemoBuilder): void {
  demo.node('N1', [0, 0], ['X6']);
  demo.node('N2', [60, 0]);
  demo.node('N3', [140, 0]);
  demo.node('N4', [240, 0]);
  demo.node('N5', [640, 0], ['X7']);
  demo.segment('S1', 'N1', 'N2');
  demo.segment('S2', 'N2', 'N3');
  demo.segment('S3', 'N3', 'N4');
  demo.segment('S4', 'N4', 'N5');
  // A branch without wires, so that its tolerance asks nothing of them.
  demo.node('N6', [0, 60]);
  demo.node('N7', [200, 60]);
  demo.segment('S5', 'N6', 'N7');

  demo.tie('S1', 10);
  demo.cover('OH-24', 'S2', 10, 70);
  edit(demo, 'S3', { bendRadiusMm: 8 });
  demo.tie('S4', 30);
  demo.tie('S4', 370);
  edit(demo, 'S5', { plusMm: 0.5, minusMm: 0.5 });
  const wires = ['W11', 'W12', 'W13', 'W14', 'W15', 'W16'];
  for (const wire of wires) setLength(demo, wire, wire === 'W16' ? 600 : 660);
}

/** Slack behind the connectors, an open pair, a wire that is too thick, a weak crimp. */
export function addProcessFaults(demo: DemoBuilder): void {
  const limit = {
    id: 'service-loop-min',
    value: 20,
    unit: 'mm',
    source: 'agreed for this project (invented)',
    verified: false,
  };
  demo.do({ id: 'project.set-limit', args: { limit } });
  for (const designator of ['X2', 'X3', 'X6', 'X7', 'X10', 'X11', 'X42', 'X43'])
    demo.do({
      id: 'connector.edit',
      args: {
        ids: [demo.id('connectors', designator)],
        change: { serviceLoopMm: designator === 'X43' ? 10 : 20 },
      },
    });

  const wires = [demo.id('wires', 'W21'), demo.id('wires', 'W22')];
  demo.do({
    id: 'group.add',
    args: { designator: 'WG1', form: 'twisted', wires, layMm: 25, exposedMm: 150 },
  });

  demo.state('X42', ['2'], 'empty');
  demo.wire('W34', 'X42:2', 'X43:3', 'TW-18-210', 'WH', { lengthMm: 350 });

  const contact = demo.part('contact', 'AL3-S2024-11');
  const crimps = (contact.crimps ?? []).map((c) => ({ ...c, pullForceMinN: 25 }));
  demo.do({ id: 'part.embed', args: { part: { ...contact, crimps } } });
}

const edit = (
  demo: DemoBuilder,
  segment: string,
  change: { readonly bendRadiusMm?: number; readonly plusMm?: number; readonly minusMm?: number },
): void => demo.do({ id: 'segment.edit', args: { id: demo.id('segments', segment), change } });

const setLength = (demo: DemoBuilder, wire: string, lengthMm: number): void =>
  demo.do({ id: 'wire.edit', args: { ids: [demo.id('wires', wire)], change: { lengthMm } } });
