import { describe, expect, it } from 'vitest';
import { connectionTable } from '@latchwork/core/exports/connection-table';
import { partsList } from '@latchwork/core/exports/parts-list';
import { startDemo } from '../../generate/demos/builder';
import { checked, sentences } from '../demos/demo-files';
import { dataCable, genericContact, genericHousing } from './cable-parts';

/**
 * A cable of the Universal Serial Bus Specification, revision 2.0, chapter 6, from memory: termination assignment
 * (contact 1 VBUS red, 2 D- white, 3 D+ green, 4 GND black), a twisted data pair of 28 AWG, a power pair of 20 to
 * 28 AWG (here 24), a shield with drain wire, no more than 5 m.
 */
const TABLE = [
  { contact: '1', signal: 'VBUS', colour: 'RD', size: '24 AWG' },
  { contact: '2', signal: 'D-', colour: 'WH', size: '28 AWG' },
  { contact: '3', signal: 'D+', colour: 'GN', size: '28 AWG' },
  { contact: '4', signal: 'GND', colour: 'BK', size: '24 AWG' },
] as const;

function usbCable() {
  const a = { ways: 4, rows: 1, pitchMm: 2.5, numbering: 'row-wise' as const };
  const b = { ways: 4, rows: 2, pitchMm: 2.5, rowPitchMm: 2, numbering: 'loop' as const };
  const demo = startDemo({
    firstId: 5_000_000,
    title: 'Cable of USB 2.0',
    parts: [
      genericHousing('A-PLUG', 'GA', 'pin', 'plug', { ...a, cavityOneCorner: 'top-right' }),
      genericHousing('A-RECEPTACLE', 'GA', 'socket', 'receptacle', { ...a, cavityOneCorner: 'top-left' }),
      genericHousing('B-PLUG', 'GB', 'pin', 'plug', { ...b, cavityOneCorner: 'top-left' }),
      genericHousing('B-RECEPTACLE', 'GB', 'socket', 'receptacle', { ...b, cavityOneCorner: 'top-right' }),
      genericContact('CA-P', 'GA', 'pin'),
      genericContact('CB-P', 'GB', 'pin'),
      dataCable,
    ],
  });
  for (const [designator, x] of [
    ['A1', 0],
    ['A2', 300],
  ] as const)
    // prettier-ignore
    demo.do({
      id: 'equipment.add',
      args: { equipment: { kind: 'device', designator, position: { x, y: 0 }, widthMm: 60, heightMm: 60 } },
    });
  demo.connector('X1', 'A-PLUG', [100, 10]);
  demo.connector('X2', 'B-PLUG', [200, 10], { exit: 'left' });
  demo.connector('X11', 'A-RECEPTACLE', [10, 10], { equipment: 'A1', supply: 'equipment' });
  demo.connector('X12', 'B-RECEPTACLE', [310, 10], { equipment: 'A2', supply: 'equipment' });
  demo.mate('X1', 'X11');
  demo.mate('X2', 'X12');
  for (const { signal } of TABLE) demo.do({ id: 'signal.add', args: { signal: { name: signal } } });
  demo.declare('X11', TABLE.map((t) => t.signal)); // prettier-ignore
  demo.declare('X12', TABLE.map((t) => t.signal)); // prettier-ignore
  demo.do({ id: 'cable.add', args: { part: demo.part('cable', 'CABLE-28-24'), designator: 'WC1' } });
  for (const { contact, signal } of TABLE)
    demo.core(`W${contact}`, `X1:${contact}`, `X2:${contact}`, 'WC1', signal);
  demo.do({
    id: 'group.add',
    args: { form: 'twisted', wires: [demo.id('wires', 'W2'), demo.id('wires', 'W3')] },
  });
  demo.node('N1', [0, 0], ['X1']);
  demo.node('N2', [1800, 0], ['X2']);
  demo.segment('S1', 'N1', 'N2');
  return demo.project;
}

describe('a cable of USB 2.0 (specification revision 2.0, chapter 6; from memory)', () => {
  const project = usbCable();
  const result = checked(project);
  const rows = connectionTable.table({ harness: result.harness, check: result, date: '2026-03-01' }).rows;

  it('has the termination assignment of the specification in its connection table', () => {
    const table = rows.map((r) => ({
      contact: r['fromCavity'],
      signal: r['signal'],
      colour: r['colour'],
      size: r['size'],
    }));
    expect(table).toEqual(TABLE);
    expect(rows.map((r) => [r['from'], r['to'], r['toCavity']])).toEqual(
      TABLE.map((t) => ['X1', 'X2', t.contact]),
    );
  });

  it('twists the data pair and nothing else', () => {
    const twisted = rows.filter((r) => String(r['group']).includes('twisted')).map((r) => r['signal']);
    expect(twisted).toEqual(['D-', 'D+']);
  });

  it('takes its four conductors from one shielded cable of no more than 5 m', () => {
    expect(rows.map((r) => r['cable'])).toEqual(TABLE.map((t) => `WC1:${t.signal}`));
    for (const r of rows) expect(r['lengthMm']).toBeLessThanOrEqual(5000);
    const cable = project.parts.find((p) => p.kind === 'cable');
    expect(cable?.kind === 'cable' && [cable.shield, cable.drainWire]).toEqual(['braid-and-foil', true]);
  });

  it('counts four contacts at each end, two plugs, and the length of one cable', () => {
    const list = partsList.table({ harness: result.harness, check: result, date: '2026-03-01' }).rows;
    const quantity = (partNumber: string): unknown =>
      list.find((r) => r['partNumber'] === partNumber)?.['quantity'];
    expect([quantity('CA-P'), quantity('CB-P'), quantity('A-PLUG'), quantity('B-PLUG')]).toEqual([
      4, 4, 1, 1,
    ]);
    expect(quantity('CABLE-28-24')).toBe(1.8);
  });

  it('joins each contact with the one of the same number through both receptacles', () => {
    const nets = result.harness.nets.map((n) =>
      n.points.map((p) => `${p.connector.connector.designator}:${p.cavity}`).sort(),
    );
    expect(nets).toHaveLength(4);
    for (const { contact } of TABLE)
      expect(nets).toContainEqual([`X11:${contact}`, `X12:${contact}`, `X1:${contact}`, `X2:${contact}`]);
  });

  it('leaves open only the shield, whose drain ends at the shell and not at a contact of the table', () => {
    expect(sentences(result).map((text) => text.split(':')[0])).toEqual(['shield-ends', 'drain-wire']);
  });
});
