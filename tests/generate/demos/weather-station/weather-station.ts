import type { Project } from '@latchwork/core/model/project';
import { startDemo, type DemoBuilder } from '../builder';
import { fillTitle } from '../title';
import { addConnectors, declareCavities } from './connectors';
import { addEquipment } from './equipment';
import { preparePurchase } from './purchase';
import { addFormboard, protectAndMark } from './formboard';
import { RETURNS, SIGNALS, SOURCE_LIMITS } from './signals';
import { addWires } from './wires';

/**
 * Medium and clean: an invented weather station. Two boards, a painted bottom plate with sealed halves, splices in
 * the battery leads, two twisted pairs, all routed over the formboard.
 */
export function weatherStation(): Project {
  const demo = startDemo({ firstId: 2_000_000, title: 'Weather station harness' });
  fillTitle(demo, {
    number: 'EX-0002',
    supplementaryTitle: 'Medium and clean: boards, a panel, splices, twisted pairs (invented example)',
    notes: [
      'The halves X31 to X37 come with the sensors, the modem and the battery; X1 to X6 and X38 come on their boards.',
      'WG1 and WG2 stay twisted to within 25 mm of the contacts.',
    ],
  });
  demo.do({ id: 'project.edit', args: { change: { buildQuantities: [1, 10, 100, 1000] } } });
  addEquipment(demo);
  addConnectors(demo);
  addSignals(demo);
  declareCavities(demo);
  addWires(demo);
  demo.fuse('W1', 'OU-3A', 120);
  addFormboard(demo);
  protectAndMark(demo);
  prepareSeries(demo);
  preparePurchase(demo);
  return demo.project;
}

/** Applicators for every contact, and how the halves in the bottom plate are fitted. */
function prepareSeries(demo: DemoBuilder): void {
  for (const band of ['AL3-AP-2024', 'BI2-AP-2225', 'BI2-AP-2630', 'CD45-AP-1822']) demo.tool(band);
  for (const x of ['X23', 'X24', 'X25', 'X26', 'X27']) {
    const connector = demo.project.connectors.find((c) => c.designator === x);
    const record = demo.project.parts.find((p) => p.id === connector?.part);
    const cutOut = record?.kind === 'housing' ? record.panel?.cutOut : undefined;
    if (cutOut)
      demo.fitted(x, { plannedCycles: 10, cutOut: { ...cutOut, insertFrom: 'front', punchedFrom: 'front' } });
  }
  for (const x of ['X3', 'X4', 'X5', 'X6'])
    demo.fitted(x, { footprint: { padOneCorner: 'top-right', seenFrom: 'header-side' } });
}

function addSignals(demo: DemoBuilder): void {
  for (const [name, kind, voltageV, currentA, source] of SIGNALS) {
    const [designator, cavity] = source.split(':') as [string, string];
    const from = { connector: demo.id('connectors', designator), cavity };
    demo.do({
      id: 'signal.add',
      args: { signal: { name, class: kind, voltageV, currentA, source: from } },
    });
  }
  for (const [on, feeds] of Object.entries(RETURNS)) demo.returns(feeds, on);
  for (const [name, sourceLimitA] of Object.entries(SOURCE_LIMITS))
    demo.do({ id: 'signal.edit', args: { id: demo.signalId(name), change: { sourceLimitA } } });
  const twin = (a: string, b: string): void => {
    for (const [one, other] of [
      [a, b],
      [b, a],
    ] as const)
      // prettier-ignore
      demo.do({
        id: 'signal.edit',
        args: { id: demo.signalId(one), change: { pairedWith: demo.signalId(other) } },
      });
  };
  twin('WIND_A', 'WIND_B');
  twin('SOIL_A', 'SOIL_B');
}
