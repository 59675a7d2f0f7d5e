import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { connectionTable } from '@latchwork/core/exports/connection-table';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';

const rowsOf = (change?: (t: TinyDraft) => void) => {
  const harness = deriveHarness(tiny(change));
  return connectionTable.table({ harness, check: checkHarness(harness, []), date: '2026-03-01' }).rows;
};
const rowOf = (wire: string, change?: (t: TinyDraft) => void) => rowsOf(change).find((r) => r.wire === wire);

describe('connection table', () => {
  it('states both ends of a wire with contacts and strip lengths, size, colour, length and path', () => {
    expect(rowOf('W1')).toEqual({
      wire: 'W1',
      signal: 'SUP',
      from: 'X1',
      fromCavity: '1',
      fromContact: 'C-SOCKET',
      fromSeal: null,
      fromStripMm: 2.5,
      to: 'X2',
      toCavity: '1',
      toContact: 'C-PIN',
      toSeal: null,
      toStripMm: 2.5,
      wirePart: 'WIRE-22',
      size: '22 AWG',
      areaMm2: 0.355,
      colour: 'RD',
      lengthMm: 308,
      lengthKind: 'routed',
      group: null,
      cable: null,
      path: 'S1',
      splice: null,
      fromLabel: null,
      toLabel: null,
      remarks: null,
    });
  });

  it('never makes an area from a gauge', () => {
    const row = rowOf('W1', (t) => void delete t.part('wire', 'WIRE-22').areaMm2);
    expect([row?.size, row?.areaMm2]).toEqual(['22 AWG', null]);
  });

  it('keeps base and stripe apart, names the group, marks and notes', () => {
    const row = rowOf('W1', (t) => {
      const w = t.wire('W1');
      w.colour = { base: 'RD', stripes: ['BU'] };
      w.lengthMm = 420;
      w.note = 'first turn';
      t.project.groups.push({
        id: t.newId(),
        designator: 'WG1',
        form: 'twisted',
        wires: [w.id, t.wire('W2').id],
      });
      t.project.labels.push({ id: t.newId(), text: 'X1-1', on: { at: 'wire-end', wire: w.id, end: 0 } });
    });
    expect(row).toMatchObject({ colour: 'RD/BU', lengthMm: 420, lengthKind: 'typed', group: 'WG1 (twisted)', fromLabel: 'X1-1', toLabel: null, remarks: 'first turn' }); // prettier-ignore
  });

  it('names splices, terminals of free ends and cores', () => {
    const rows = rowsOf((t) => {
      const [splice, terminal, cablePart, cable] = [t.newId(), t.newId(), t.newId(), t.newId()];
      const maker = { maker: 'Example Works (invented)', description: '' };
      t.project.splices.push({ id: splice, designator: 'XS1', position: { x: 0, y: 0 } });
      t.project.parts.push(
        { kind: 'terminal', id: terminal, partNumber: 'RING', ...maker },
        { kind: 'cable', id: cablePart, partNumber: 'CABLE', cores: [{ name: 'a', size: { system: 'mm2', areaMm2: 0.25 } }], ...maker },
      ); // prettier-ignore
      t.project.cables.push({ id: cable, designator: 'WC1', part: cablePart });
      t.wire('W1').ends[1] = { at: 'splice', splice };
      const w2 = t.wire('W2');
      w2.ends[1] = { at: 'free', position: { x: 0, y: 0 }, terminal, text: 'chassis' };
      delete w2.part;
      w2.core = { cable, name: 'a' };
    });
    expect(rows[0]).toMatchObject({ wire: 'W1', to: 'XS1', toCavity: null, toContact: null, splice: 'XS1' });
    expect(rows[1]).toMatchObject({ wire: 'W2', to: 'chassis', toContact: 'RING', cable: 'WC1:a', size: '0.25 mm2', wirePart: 'CABLE' }); // prettier-ignore
  });

  it('leaves blank what is not known and says so', () => {
    const row = rowOf('W1', (t) => {
      const w = t.wire('W1');
      delete w.part;
      if (w.ends[0].at === 'cavity') delete w.ends[0].contact;
      delete t.connector('X1').node;
    });
    expect(row).toMatchObject({ size: null, wirePart: null, lengthMm: null, lengthKind: 'unknown', fromContact: null, path: null }); // prettier-ignore
    expect(row?.remarks).toBe(
      'from: no contact chosen; no wire part chosen; length not known, needs a formboard node at both ends, or a typed length',
    );
  });

  it('orders wires as people count them', () => {
    const rows = rowsOf((t) => {
      t.wire('W1').designator = 'W10';
    });
    expect(rows.map((r) => r.wire)).toEqual(['W2', 'W10']);
  });
});
