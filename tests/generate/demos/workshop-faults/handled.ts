import type { Connector } from '@latchwork/core/model/connector';
import type { Part, PartKind } from '@latchwork/core/model/parts/part';
import type { DemoBuilder } from '../builder';

/** How halves are mated and fitted, what stands beside them, and which holes they pass. */
export function addHandlingFaults(demo: DemoBuilder): void {
  edit(demo, 'X24', { plannedCycles: 60 });
  edit(demo, 'X42', { mateRoomMm: 20 });
  edit(demo, 'X18', { latchRoomMm: 4 });
  edit(demo, 'X31', { cutOut: { widthMm: 14, heightMm: 9.4 } });
  edit(demo, 'X41', { footprint: { padOneCorner: 'top-left', seenFrom: 'header-side', facesEdge: true } });
  demo.do({ id: 'segment.edit', args: { id: demo.id('segments', 'S2'), change: { holeMm: 8 } } });
  demo.state('X24', ['3'], 'blocked');
  setLimit(demo, 'mate-force-max', 40, 'N');
  change(demo, 'housing', 'AL3-03-QS-A', { mateForceN: 45 });

  const on = { at: 'wire-end', wire: demo.id('wires', 'W11'), end: 0 } as const;
  demo.do({ id: 'label.add', args: { text: 'W11', on, part: demo.part('label', 'OQ-25') } });
  setLimit(demo, 'spares-to-25', 1, '');
  demo.do({
    id: 'fixing.add',
    args: { part: demo.part('grommet', 'OG-13'), station: { segment: demo.id('segments', 'S4'), atMm: 200 } },
  });
  demo.do({
    id: 'connector.add-accessory',
    args: { id: demo.id('connectors', 'X7'), part: demo.part('strain-relief', 'OF-8') },
  });
  addOpenEnd(demo);
}

/** A wire that nobody finished. */
function addOpenEnd(demo: DemoBuilder): void {
  demo.do({
    id: 'signal.add',
    args: { signal: { name: 'G3', class: 'signal', voltageV: 5, currentA: 0.1 } },
  });
  demo.declare('X41', [null, null, 'G3']);
  demo.do({
    id: 'wire.add',
    args: {
      from: { at: 'cavity', connector: demo.id('connectors', 'X42'), cavity: '3' },
      to: { at: 'free', position: { x: 200, y: 500 } },
      part: demo.part('wire', 'TW-22-120'),
      designator: 'W35',
      colour: { base: 'VT' },
      lengthMm: 350,
    },
  });
}

/** What a buyer and the shop stumble over once a hundred are built. */
export function addBuyingFaults(demo: DemoBuilder): void {
  demo.do({ id: 'project.edit', args: { change: { buildQuantities: [1, 100] } } });
  for (const tool of ['AL3-AP-2024', 'AL3-AP-2630', 'BI2-AP-2225', 'BI2-AP-2630'])
    demo.do({
      id: 'part.embed',
      args: {
        part: {
          ...demo.part('tool', tool),
          calibratedUntil: tool === 'BI2-AP-2225' ? '2025-12-31' : '2026-12-31',
          dies: ['A'],
        },
      },
    });

  const end = { wire: demo.id('wires', 'W22'), end: 1 } as const;
  demo.do({ id: 'contact.set', args: { ...end, part: demo.part('contact', 'AL3-P2024-02') } });
  const gold = demo.project.parts.find((p) => p.partNumber === 'AL3-S2024-11');
  if (gold?.kind === 'contact')
    demo.do({
      id: 'part.embed',
      args: {
        part: { ...gold, crimps: (gold.crimps ?? []).map((c) => ({ ...c, tool: 'BI2-AP-2225' })) },
      },
    });
  const byHand = demo.part('contact', 'BI2-S2225-01');
  change(demo, 'contact', byHand.partNumber, {
    tools: ['BI2-HT-2225'],
    crimps: (byHand.crimps ?? []).map((c) => ({ ...c, tool: 'BI2-HT-2225' })),
  });
  change(demo, 'wire', 'TW-30-070', { odMinMm: 0.026, odMm: 0.028, odMaxMm: 0.029 });
  change(demo, 'secondary-lock', 'AL3-03-LS', { lifecycle: 'obsolete' });
  change(demo, 'contact', 'AL3-P2024-01', { alternates: ['AL3-P2024-11'] });
  demo.do({ id: 'part.embed', args: { part: demo.part('contact', 'AL3-P2024-11') } });
  const declaration = { regime: 'RoHS', status: 'declared', date: '2022-12-31', expires: '2025-12-31' };
  change(demo, 'wire', 'TW-26-095', { compliance: [declaration] as Part['compliance'] });
  change(demo, 'wire', 'TW-24-105', { offers: [] });
  change(demo, 'secondary-lock', 'AL3-03-LP', {
    massG: 0.25,
    catalogue: { name: demo.part('secondary-lock', 'AL3-03-LP').catalogue?.name ?? '', revision: '0' },
  });
}

const edit = (demo: DemoBuilder, designator: string, values: Partial<Connector>): void => {
  const ids = [demo.id('connectors', designator)];
  demo.do({ id: 'connector.edit', args: { ids, change: values } });
};

const setLimit = (demo: DemoBuilder, id: string, value: number, unit: string): void =>
  demo.do({
    id: 'project.set-limit',
    args: { limit: { id, value, unit, source: 'agreed for this project (invented)', verified: false } },
  });

/** A record of the catalogue, embedded with some of its fields as they should not be. */
function change<K extends PartKind>(
  demo: DemoBuilder,
  kind: K,
  partNumber: string,
  fields: Partial<Extract<Part, { kind: K }>>,
): void {
  demo.do({ id: 'part.embed', args: { part: { ...demo.part(kind, partNumber), ...fields } as Part } });
}
