import { produce, type Draft } from 'immer';
import { must } from '../base/assert-never';
import type { Colour } from './colour';
import type { Connector } from './connector';
import { countingIds } from './ids';
import { newProject } from './new-project';
import type { Part } from './parts/part';
import type { Project } from './project';
import type { Wire } from './wire';

/** A tiny project's objects by the names they bear, as drafts to change. */
export interface TinyDraft {
  readonly project: Draft<Project>;
  connector(designator: string): Draft<Connector>;
  wire(designator: string): Draft<Wire>;
  part<K extends Part['kind']>(kind: K, partNumber: string): Draft<Extract<Part, { kind: K }>>;
  /** Ids that are not used yet. */
  newId(): string;
}

/**
 * A small project that no rule finds anything in, to be made wrong in one place:
 *
 *     X3 (header on board A1) = X1 (free, sockets) --W1 red, W2 black-- X2 (free, pins) = X4 (on device A2)
 *
 * Three ways each; way 3 is empty by intent. Signal SUP (12 V, 1 A, from a source that limits at 3 A) returns on RTN.
 * Formboard: node N1 at X1, N2 at X2, segment S1 of 300 mm. Parts: housings H-SOCKET and H-PIN, header HEADER, contacts
 * C-SOCKET, C-SOCKET-AU and C-PIN, wires WIRE-22 and WIRE-26, LOCK.
 */
export function tiny(change?: (t: TinyDraft) => void): Project {
  const base = TINY();
  if (!change) return base;
  const newId = countingIds(9000);
  return produce(base, (project) => {
    change({
      project,
      newId,
      connector: (d) =>
        must(
          project.connectors.find((c) => c.designator === d),
          `connector ${d}`,
        ),
      wire: (d) =>
        must(
          project.wires.find((w) => w.designator === d),
          `wire ${d}`,
        ),
      part: <K extends Part['kind']>(kind: K, number: string) =>
        must(
          project.parts.find((p) => p.kind === kind && p.partNumber === number),
          `part ${number}`,
        ) as Draft<Extract<Part, { kind: K }>>,
    });
  });
}

let made: Project | undefined;
const TINY = (): Project => (made ??= build());

function build(): Project {
  const id = countingIds(1);
  const ids = Object.fromEntries(
    [
      'project', 'revision', 'socketHousing', 'pinHousing', 'header', 'socket', 'goldSocket', 'pin', 'wire22', 'wire26', 'lock',
      'board', 'device', 'sup', 'rtn', 'x1', 'x2', 'x3', 'x4', 'n1', 'n2', 's1', 'm1', 'm2', 'lock1', 'lock2', 'lock4',
      'c1', 'c2', 'c3', 'c4', 'w1', 'w2',
    ].map((name) => [name, id()]),
  ) as Record<string, string>; // prettier-ignore
  const at = (name: string): string => must(ids[name], name);
  const project = newProject({
    id: at('project'),
    revisionId: at('revision'),
    title: 'Tiny example',
    creator: 'Example',
  });
  const empty3 = { cavity: '3', state: 'empty' as const };
  const declared = [
    { cavity: '1', signal: at('sup') },
    { cavity: '2', signal: at('rtn') },
  ];
  const connector = (
    name: string,
    designator: string,
    part: string,
    more: Partial<Connector>,
  ): Connector => ({
    id: at(name),
    designator,
    part: at(part),
    position: { x: 0, y: 0 },
    exit: 'right',
    view: 'mating-face',
    supply: 'harness',
    cavities: [empty3],
    accessories: [],
    ...more,
  });
  const lock = (name: string): Connector['accessories'] => [{ id: at(name), part: at('lock'), quantity: 1 }];
  const wire = (
    name: string,
    designator: string,
    cavity: string,
    base: Colour['base'],
    signal: string,
    c: [string, string],
  ): Wire => ({
    id: at(name),
    designator,
    part: at('wire22'),
    colour: { base },
    signal: at(signal),
    ends: [
      { at: 'cavity', connector: at('x1'), cavity, contact: at(c[0]), stripLengthMm: 2.5 },
      { at: 'cavity', connector: at('x2'), cavity, contact: at(c[1]), stripLengthMm: 2.5 },
    ],
  });
  return {
    ...project,
    parts: tinyParts(at),
    equipment: [
      {
        kind: 'board', id: at('board'), designator: 'A1', position: { x: -60, y: 0 }, widthMm: 40, heightMm: 60,
        thicknessMm: 1.6, solderProcess: { process: 'wave' },
      },
      { kind: 'device', id: at('device'), designator: 'A2', position: { x: 200, y: 0 }, widthMm: 40, heightMm: 60 },
    ], // prettier-ignore
    signals: [
      {
        id: at('sup'),
        name: 'SUP',
        class: 'power',
        voltageV: 12,
        currentA: 1,
        source: { connector: at('x3'), cavity: '1' },
        sourceLimitA: 3,
        returnsOn: at('rtn'),
      },
      {
        id: at('rtn'),
        name: 'RTN',
        class: 'return',
        voltageV: 0,
        currentA: 1,
        source: { connector: at('x3'), cavity: '2' },
      },
    ],
    connectors: [
      connector('x1', 'X1', 'socketHousing', { node: at('n1'), accessories: lock('lock1') }),
      connector('x2', 'X2', 'pinHousing', { node: at('n2'), accessories: lock('lock2'), position: { x: 120, y: 0 } }),
      connector('x3', 'X3', 'header', {
        equipment: at('board'), supply: 'equipment', cavities: declared, position: { x: -50, y: 0 },
      }),
      connector('x4', 'X4', 'socketHousing', {
        equipment: at('device'), supply: 'equipment', cavities: declared, accessories: lock('lock4'), position: { x: 210, y: 0 },
      }),
    ], // prettier-ignore
    contacts: [
      { id: at('c1'), part: at('socket') },
      { id: at('c2'), part: at('pin') },
      { id: at('c3'), part: at('socket') },
      { id: at('c4'), part: at('pin') },
    ],
    wires: [
      wire('w1', 'W1', '1', 'RD', 'sup', ['c1', 'c2']),
      wire('w2', 'W2', '2', 'BK', 'rtn', ['c3', 'c4']),
    ],
    mates: [
      { id: at('m1'), a: at('x1'), b: at('x3') },
      { id: at('m2'), a: at('x2'), b: at('x4') },
    ],
    nodes: [
      { id: at('n1'), designator: 'N1', position: { x: 0, y: 0 } },
      { id: at('n2'), designator: 'N2', position: { x: 300, y: 0 } },
    ],
    segments: [{ id: at('s1'), designator: 'S1', from: at('n1'), to: at('n2') }],
  };
}

function tinyParts(at: (name: string) => string): Part[] {
  const record = (name: string, partNumber: string, description: string) => ({
    id: at(name), maker: 'Example Works (invented)', partNumber, description, catalogue: { name: 'Example parts', revision: '1' }, lifecycle: 'active' as const,
  }); // prettier-ignore
  const half = {
    family: 'E3', interface: 'E3', ways: 3, rows: 1, pitchMm: 3, keying: 'none', voltageMaxV: 250, cycles: 30,
    numbering: 'row-wise' as const, latchSide: 'top' as const, currentRatings: [{ currentA: 5 }],
    temperatureMaxC: 105,
  }; // prettier-ignore
  const housing = {
    ...half,
    acceptedSeries: ['E3'],
    wireOdMaxMm: 1.8,
    datumMm: 4,
    sealed: false,
    secondaryLock: 'LOCK',
  };
  const awg = (gauge: number) => ({ system: 'awg' as const, gauge });
  const contact = {
    series: 'E3', sizeMin: awg(24), sizeMax: awg(20), areaMinMm2: 0.2, areaMaxMm2: 0.62, insulationMinMm: 0.89, insulationMaxMm: 1.53,
    stripLengthMm: 2.5, stripToleranceMm: 0.3, finish: 'tin' as const, strandedOnly: true, doubleCrimps: [], cycles: 30, form: 'strip' as const,
    temperatureMaxC: 105, resistanceMohm: 10,
  }; // prettier-ignore
  const wire = {
    colours: [{ base: 'RD' as const }, { base: 'BK' as const }, { base: 'BU' as const }],
    voltageMaxV: 300,
    temperatureMaxC: 105,
  };
  return [
    { kind: 'housing', ...record('socketHousing', 'H-SOCKET', 'Free housing for sockets'), ...housing, bodyForm: 'receptacle', contactKind: 'socket', mounting: 'free', cavityOneCorner: 'top-left' },
    { kind: 'housing', ...record('pinHousing', 'H-PIN', 'Free housing for pins'), ...housing, bodyForm: 'plug', contactKind: 'pin', mounting: 'free', cavityOneCorner: 'top-right' },
    { kind: 'header', ...record('header', 'HEADER', 'Vertical header, through-hole'), ...half, bodyForm: 'plug', contactKind: 'pin', mounting: 'board', cavityOneCorner: 'top-right', orientation: 'vertical', termination: 'through-hole', finish: 'tin', resistanceMohm: 10, tailLengthMm: 3.2, standOffMm: 0, boardThicknessMinMm: 1, boardThicknessMaxMm: 2, processes: ['wave', 'hand'] },
    { kind: 'contact', ...record('socket', 'C-SOCKET', 'Socket contact, tin'), ...contact, contactKind: 'socket' },
    { kind: 'contact', ...record('goldSocket', 'C-SOCKET-AU', 'Socket contact, gold'), ...contact, contactKind: 'socket', finish: 'gold' },
    { kind: 'contact', ...record('pin', 'C-PIN', 'Pin contact, tin'), ...contact, contactKind: 'pin' },
    { kind: 'wire', ...record('wire22', 'WIRE-22', 'Wire 22 AWG'), ...wire, size: awg(22), areaMm2: 0.355, stranding: { strands: 7, strandDiameterMm: 0.254 }, odMm: 1.2 },
    { kind: 'wire', ...record('wire26', 'WIRE-26', 'Wire 26 AWG'), ...wire, size: awg(26), areaMm2: 0.141, stranding: { strands: 7, strandDiameterMm: 0.16 }, odMm: 0.95 },
    { kind: 'secondary-lock', ...record('lock', 'LOCK', 'Secondary lock') },
  ]; // prettier-ignore
}
