import type { Project } from '@latchwork/core/model/project';
import { startDemo, type DemoBuilder } from '../builder';
import { fillTitle } from '../title';
import { FAULTS, faultText } from './faults';
import { addDecisions } from './decided';
import { addProcessFaults, addRouteFaults } from './routed';
import { addBuyingFaults, addHandlingFaults } from './handled';
import { addElectricalFaults } from './powered';
import { addSeparationFaults } from './separated';
import { addPair, empty } from './stations';
import { addCavityFaults, addContactFaults, addLooseEnds, addSignalFaults } from './wired';

/** Wrong on purpose: every rule finds at least one fault, and every fault says so in its note. */
export function workshopFaults(): Project {
  const demo = startDemo({ firstId: 3_000_000, title: 'Workshop test board with faults' });
  fillTitle(demo, {
    number: 'EX-0003',
    supplementaryTitle: 'Deliberate faults to explore, one for each rule (invented example)',
    notes: [
      'Everything here is wrong on purpose. Four findings have a decision on record, by invented people: one holds, one has expired, one is used up, one was made on another value. Each fault is named in the note of its object:',
      ...faultList(),
    ],
  });
  addEquipment(demo);
  addContactFaults(demo);
  addCavityFaults(demo);
  addSignalFaults(demo);
  addMateFaults(demo);
  addMountingFaults(demo);
  addLooseEnds(demo);
  addRouteFaults(demo);
  addProcessFaults(demo);
  addElectricalFaults(demo);
  addSeparationFaults(demo);
  addHandlingFaults(demo);
  addBuyingFaults(demo);
  labelFaults(demo);
  addDecisions(demo);
  return demo.project;
}

const faultList = (): string[] => FAULTS.map(({ rule, at }) => `${at}: ${faultText(rule)}`);

function addEquipment(demo: DemoBuilder): void {
  const add = (
    designator: string,
    description: string,
    [x, y, widthMm, heightMm]: readonly [number, number, number, number],
    more:
      | {
          kind: 'board';
          thicknessMm: number;
          solderProcess: { process: 'wave' | 'reflow'; peakC: number; timeS: number };
        }
      | { kind: 'panel'; thicknessMm: number; coatingsMm: number }
      | { kind: 'device' },
  ): void =>
    demo.do({
      id: 'equipment.add',
      args: { equipment: { designator, description, position: { x, y }, widthMm, heightMm, ...more } },
    });
  const wave = { process: 'wave', peakC: 255, timeS: 4 } as const;
  add('A1', 'Test board', [15, 20, 70, 715], { kind: 'board', thicknessMm: 1.6, solderProcess: wave });
  add('A2', 'Board for reflow', [260, 325, 70, 95], {
    kind: 'board',
    thicknessMm: 1.6,
    solderProcess: { process: 'reflow', peakC: 245, timeS: 20 },
  });
  add('A3', 'Thick board', [345, 325, 70, 55], { kind: 'board', thicknessMm: 3.2, solderProcess: wave });
  add('U1', 'Thick panel', [260, 250, 60, 60], { kind: 'panel', thicknessMm: 4, coatingsMm: 0 });
  add('A11', 'Crimp sampler', [325, 20, 90, 68], { kind: 'device' });
  add('A12', 'Cavity sampler', [325, 92, 90, 66], { kind: 'device' });
  add('A13', 'Signal sampler', [325, 162, 90, 66], { kind: 'device' });
  add('A15', 'Load sampler', [325, 532, 90, 66], { kind: 'device' });
  add('A16', 'Motor sampler', [325, 602, 90, 66], { kind: 'device' });
  add('A17', 'Signal sampler, kept apart', [325, 672, 90, 66], { kind: 'device' });
  add('A14', 'Panel mate', [345, 250, 70, 60], { kind: 'device' });
}

/** Faults 17 to 22: halves that do not belong together. */
function addMateFaults(demo: DemoBuilder): void {
  addPair(
    demo,
    { designator: 'X13', part: 'BI2-03-HV-A', equipment: 'A1' },
    { designator: 'X14', part: 'AL3-03-FS-A', ways: 3 },
    245,
  );
  addPair(
    demo,
    { designator: 'X15', part: 'AL3-03-HV-A', equipment: 'A1' },
    { designator: 'X16', part: 'AL3-03-QS-A', ways: 3 },
    285,
  );
  addPair(
    demo,
    { designator: 'X17', part: 'AL3-03-HV-B', equipment: 'A1' },
    { designator: 'X18', part: 'AL3-03-FS-A', ways: 3 },
    325,
  );
  addPair(
    demo,
    { designator: 'X19', part: 'AL3-03-HX-A', equipment: 'A1' },
    { designator: 'X20', part: 'AL3-03-FS-A', ways: 3 },
    365,
  );
  addPair(
    demo,
    { designator: 'X23', part: 'AL3-03-HV-C', equipment: 'A1' },
    { designator: 'X24', part: 'AL3-03-FS-C', ways: 3, locked: false },
    405,
  );
  addPair(
    demo,
    { designator: 'X22', part: 'AL3-03-FS-A' },
    { designator: 'X21', part: 'AL3-03-QS-A', ways: 3 },
    430,
    260,
  );
  empty(demo, 'X22', 3);
}

/** Faults 23 to 27: panels, boards, and a seal that is not there. */
function addMountingFaults(demo: DemoBuilder): void {
  demo.connector('X31', 'AL3-03-PP-A', [275, 265], {
    equipment: 'U1',
    exit: 'left',
    view: 'wire-entry-face',
  });
  empty(demo, 'X31', 3);
  demo.connector('X32', 'AL3-03-FS-A', [355, 265], { equipment: 'A14', supply: 'equipment' });
  demo.mate('X31', 'X32');
  demo.connector('X33', 'AL3-03-PP-B', [275, 340], {
    equipment: 'A2',
    exit: 'left',
    view: 'wire-entry-face',
  });
  empty(demo, 'X33', 3);
  demo.connector('X34', 'AL3-03-HA-A', [275, 380], { equipment: 'A2' });
  demo.connector('X35', 'AL3-03-HV-A', [355, 340], { equipment: 'A3' });
  demo.connector('X36', 'CD45-03-FS-A', [375, 430]);
  demo.state('X36', ['1', '2'], 'plugged', 'CD45-PLUG');
  demo.state('X36', ['3'], 'empty');
}

/** Gives every object the text of its faults, after all commands that go by the names of the wires. */
function labelFaults(demo: DemoBuilder): void {
  const texts = new Map<string, string[]>();
  for (const { rule, at, also = [] } of FAULTS)
    for (const place of [at, ...also]) texts.set(place, [...(texts.get(place) ?? []), faultText(rule)]);
  for (const [designator, lines] of texts) {
    const note = lines.join(' ');
    if (/^W\d/.test(designator))
      demo.do({ id: 'wire.edit', args: { ids: [demo.id('wires', designator)], change: { note } } });
    else if (/^X\d/.test(designator)) demo.note(designator, note);
  }
  demo.do({
    id: 'wire.edit',
    args: {
      ids: [demo.id('wires', 'W26')],
      change: { designator: 'W23', note: faultText('designator-unique') },
    },
  });
}
