import { describe, expect, it } from 'vitest';
import { cavityLayoutOf } from '@latchwork/core/derive/cavity-layout';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { connectionTable } from '@latchwork/core/exports/connection-table';
import { partsList } from '@latchwork/core/exports/parts-list';
import { isMatingHalf } from '@latchwork/core/model/parts/part';
import { checked, sentences } from '../demos/demo-files';
import { startDemo } from '../../generate/demos/builder';
import { genericContact, genericHousing, wire26 } from './cable-parts';

/**
 * A null-modem cable between two pieces of data terminal equipment, 9-way to 9-way.
 * Source of the functions: EIA/TIA-574 (the 9-position form of EIA/TIA-232), from memory. Source of the cross-over:
 * common practice ("full handshake": 2-3, 3-2, 5-5, 7-8, 8-7, 4 to 6 and 1, 6 and 1 to 4), from memory.
 */
const FUNCTIONS = ['DCD', 'RXD', 'TXD', 'DTR', 'SG', 'DSR', 'RTS', 'CTS', 'RI'] as const;

/** Output of one side, inputs of the other that hear it. Ground is common. */
const HEARD_BY: Readonly<Record<string, readonly string[]>> = {
  TXD: ['RXD'],
  RTS: ['CTS'],
  DTR: ['DSR', 'DCD'],
};

/** Wire, from, to; W8 and W9 are the bridges in each housing. */
const WIRES = [
  ['W1', 'X1:2', 'X2:3', 'WH'],
  ['W2', 'X1:3', 'X2:2', 'GN'],
  ['W3', 'X1:5', 'X2:5', 'BK'],
  ['W4', 'X1:7', 'X2:8', 'BU'],
  ['W5', 'X1:8', 'X2:7', 'YE'],
  ['W6', 'X1:4', 'X2:6', 'BN'],
  ['W7', 'X1:6', 'X2:4', 'OG'],
  ['W8', 'X2:6', 'X2:1', 'BN'],
  ['W9', 'X1:6', 'X1:1', 'OG'],
] as const;

function nullModem() {
  // Five positions above four; the half with pins counts from the left of its mating face, the other from the right.
  const shape = { ways: 9, rows: 2, pitchMm: 2.77, rowPitchMm: 2.84, numbering: 'row-wise' as const };
  const b = startDemo({
    firstId: 4_000_000,
    title: 'Null-modem cable',
    parts: [
      genericHousing('H9-S', 'G9', 'socket', 'receptacle', { ...shape, cavityOneCorner: 'top-right' }),
      genericHousing('H9-P', 'G9', 'pin', 'plug', { ...shape, cavityOneCorner: 'top-left' }),
      genericContact('C9-S', 'G9', 'socket'),
      wire26,
    ],
  });
  b.do({
    id: 'equipment.add',
    args: {
      equipment: { kind: 'device', designator: 'A1', position: { x: 0, y: 0 }, widthMm: 60, heightMm: 80 },
    },
  });
  b.do({
    id: 'equipment.add',
    args: {
      equipment: { kind: 'device', designator: 'A2', position: { x: 300, y: 0 }, widthMm: 60, heightMm: 80 },
    },
  });
  b.connector('X1', 'H9-S', [100, 10]);
  b.connector('X2', 'H9-S', [200, 10], { exit: 'left' });
  b.connector('X11', 'H9-P', [10, 10], { equipment: 'A1', supply: 'equipment' });
  b.connector('X12', 'H9-P', [310, 10], { equipment: 'A2', supply: 'equipment' });
  b.mate('X1', 'X11');
  b.mate('X2', 'X12');

  const signals = ['SG', ...Object.keys(HEARD_BY).flatMap((f) => [`${f}_1`, `${f}_2`])];
  for (const name of signals) b.do({ id: 'signal.add', args: { signal: { name, class: 'signal' } } });
  const nameAt = (f: string, side: 1 | 2): string | null => {
    if (f === 'SG') return 'SG';
    if (HEARD_BY[f]) return `${f}_${side}`;
    const out = Object.keys(HEARD_BY).find((o) => HEARD_BY[o]?.includes(f));
    return out ? `${out}_${side === 1 ? 2 : 1}` : null;
  };
  b.declare('X11', FUNCTIONS.map((f) => nameAt(f, 1))); // prettier-ignore
  b.declare('X12', FUNCTIONS.map((f) => nameAt(f, 2))); // prettier-ignore
  for (const [name, from, to, colour] of WIRES)
    b.wire(name, from, to, 'WIRE-26', colour, { lengthMm: from.slice(0, 2) === to.slice(0, 2) ? 40 : 1800 });
  for (const x of ['X1', 'X2']) {
    b.do({ id: 'contact.share', args: { place: { connector: b.id('connectors', x), cavity: '6' } } });
    b.state(x, ['9'], 'empty');
  }
  return b.project;
}

describe('a null-modem cable (EIA/TIA-574 functions, common cross-over; from memory)', () => {
  const project = nullModem();
  const result = checked(project);
  const { harness } = result;

  it('joins exactly the positions of the published cross-over', () => {
    const nets = harness.nets
      .map((n) => n.points.map((p) => `${p.connector.connector.designator}:${p.cavity}`))
      .map((points) => points.filter((p) => /^X[12]:/.test(p)).sort())
      .filter((points) => points.length > 0);
    expect(nets.sort((a, b) => (a.join() < b.join() ? -1 : 1))).toEqual([
      ['X1:1', 'X1:6', 'X2:4'],
      ['X1:2', 'X2:3'],
      ['X1:3', 'X2:2'],
      ['X1:4', 'X2:1', 'X2:6'],
      ['X1:5', 'X2:5'],
      ['X1:7', 'X2:8'],
      ['X1:8', 'X2:7'],
    ]);
  });

  it('lets every output be heard by the input that belongs to it', () => {
    const heard: string[] = [];
    for (const net of harness.nets) {
      const roles = net.points
        .filter((p) => /^X1[12]$/.test(p.connector.connector.designator))
        .map((p) => ({ side: p.connector.connector.designator, f: FUNCTIONS[Number(p.cavity) - 1] ?? '' }));
      for (const out of roles.filter((r) => HEARD_BY[r.f]))
        heard.push(`${out.side} ${out.f}: ${roles.filter((r) => r !== out).map((r) => `${r.side} ${r.f}`).sort().join(', ')}`); // prettier-ignore
    }
    expect(heard.sort()).toEqual([
      'X11 DTR: X12 DCD, X12 DSR',
      'X11 RTS: X12 CTS',
      'X11 TXD: X12 RXD',
      'X12 DTR: X11 DCD, X11 DSR',
      'X12 RTS: X11 CTS',
      'X12 TXD: X11 RXD',
    ]);
  });

  it('has the rows of the published table in its connection table', () => {
    const rows = connectionTable.table({ harness, check: result, date: '2026-03-01' }).rows;
    expect(
      rows.map((r) => [r['wire'], `${r['from']}:${r['fromCavity']}`, `${r['to']}:${r['toCavity']}`]),
    ).toEqual(WIRES.map(([wire, from, to]) => [wire, from, to]));
  });

  it('counts 16 contacts for 18 wire ends: position 6 shares one crimp at each end', () => {
    const rows = partsList.table({ harness, check: result, date: '2026-03-01' }).rows;
    const contacts = rows.filter((r) => r['kind'] === 'contact').map((r) => [r['partNumber'], r['quantity']]);
    expect(contacts).toEqual([['C9-S', 16]]);
    const housings = rows.filter((r) => r['kind'] === 'housing' && r['partNumber'] === 'H9-S');
    expect(housings.map((r) => r['quantity'])).toEqual([2]);
  });

  it('has five positions above four, 1 to 5 and 6 to 9, and equal numbers meet', () => {
    const half = project.parts.find((p) => p.partNumber === 'H9-S');
    if (!half || !isMatingHalf(half)) throw new Error('no half');
    const rowsOf = (row: number): string[] =>
      cavityLayoutOf(half).places.flatMap((p) => (p.row === row ? [p.cavity] : []));
    expect([rowsOf(0), rowsOf(1)]).toEqual([
      ['1', '2', '3', '4', '5'],
      ['6', '7', '8', '9'],
    ]);
    for (const m of deriveHarness(project).mates)
      expect([m.map.source, m.map.isIdentity]).toEqual(['geometry', true]);
  });

  it('has no finding', () => {
    expect(sentences(result)).toEqual([]);
  });

  it('is found to be wrong when it is built straight through', () => {
    const straight = structuredClone(project);
    for (const w of straight.wires.slice(0, 2)) {
      const to = w.ends[1];
      if (to.at === 'cavity') to.cavity = to.cavity === '3' ? '2' : '3';
    }
    const rules = new Set(checked(straight).findings.map((f) => f.rule));
    expect(rules).toContain('net-conflict');
  });
});
