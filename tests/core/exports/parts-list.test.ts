import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { partsList } from '@latchwork/core/exports/parts-list';
import { csvOfTable } from '@latchwork/core/exports/csv';
import { jsonOfTable } from '@latchwork/core/exports/json';
import type { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';

const tableOf = (project: Project) => {
  const harness = deriveHarness(project);
  return partsList.table({ harness, check: checkHarness(harness, []), date: '2026-03-01' });
};
const linesOf = (change?: (t: TinyDraft) => void) =>
  tableOf(tiny(change)).rows.map((r) =>
    [r.kind, r.partNumber ?? '?', r.colour, r.quantity ?? '?', r.unit, r.suppliedWith, r.designators]
      .filter((c) => c !== null)
      .join(' | '),
  );
const remarksOf = (change: (t: TinyDraft) => void) =>
  tableOf(tiny(change)).rows.flatMap((r) =>
    r.remarks === null ? [] : [`${r.partNumber ?? '?'}: ${r.remarks}`],
  );

describe('parts list', () => {
  it('counts the tiny harness as by hand', () => {
    // W1 and W2: segment 300 mm, housing datum 4 mm at each end, 308 mm each.
    expect(linesOf()).toEqual([
      'housing | H-PIN | 1 | pcs | harness | X2',
      'housing | H-SOCKET | 1 | pcs | harness | X1',
      'housing | H-SOCKET | 1 | pcs | equipment | X4',
      'header | HEADER | 1 | pcs | equipment | X3',
      'contact | C-PIN | 2 | pcs | harness | X2:1, X2:2',
      'contact | C-SOCKET | 2 | pcs | harness | X1:1, X1:2',
      'secondary lock | LOCK | 2 | pcs | harness | X1, X2',
      'secondary lock | LOCK | 1 | pcs | equipment | X4',
      'wire | WIRE-22 | BK | 0.308 | m | harness | W2',
      'wire | WIRE-22 | RD | 0.308 | m | harness | W1',
    ]);
  });

  it('numbers items by line and finds by part', () => {
    const rows = tableOf(tiny()).rows;
    expect(rows.map((r) => r.item)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(rows.map((r) => r.find)).toEqual([1, 2, 2, 3, 4, 5, 6, 6, 7, 7]);
  });

  it('sums wire of one part and colour in metres', () => {
    const lines = linesOf((t) => {
      t.wire('W2').colour = { base: 'RD' };
      t.wire('W2').lengthMm = 1250;
    });
    expect(lines.filter((l) => l.startsWith('wire'))).toEqual([
      'wire | WIRE-22 | RD | 1.558 | m | harness | W1, W2',
    ]);
  });

  it('counts one contact for two wires that share a crimp', () => {
    const lines = linesOf((t) => {
      const shared = t.wire('W1').ends[0];
      const end = t.wire('W2').ends[0];
      if (shared.at !== 'cavity' || end.at !== 'cavity') throw new Error('tiny has changed');
      end.cavity = '1';
      end.contact = shared.contact;
    });
    expect(lines).toContain('contact | C-SOCKET | 1 | pcs | harness | X1:1');
  });

  it('does not count a contact that nothing uses', () => {
    expect(
      linesOf((t) => {
        t.project.contacts.push({ id: t.newId(), part: t.part('contact', 'C-SOCKET').id });
      }),
    ).toEqual(linesOf());
  });

  it('counts a spare contact with the connector that holds it', () => {
    const spare = (designator: string) =>
      linesOf((t) => {
        const id = t.newId();
        t.project.contacts.push({ id, part: t.part('contact', 'C-SOCKET-AU').id });
        const connector = t.connector(designator);
        connector.cavities = connector.cavities.filter((e) => e.cavity !== '3');
        connector.cavities.push({ cavity: '3', state: 'spare-contact', contact: id });
      });
    expect(spare('X1')).toContain('contact | C-SOCKET-AU | 1 | pcs | harness | X1:3');
    expect(spare('X4')).toContain('contact | C-SOCKET-AU | 1 | pcs | equipment | X4:3');
  });

  it('counts plugs where a cavity is plugged, not where a wire came in later', () => {
    const plugged = (cavity: string, state: 'plugged' | 'blocked' = 'plugged') =>
      linesOf((t) => {
        const id = t.newId();
        t.project.parts.push({
          kind: 'cavity-plug',
          id,
          maker: 'Example Works (invented)',
          partNumber: 'PLUG',
          description: 'Plug',
        });
        t.connector('X1').cavities = [{ cavity, state, plug: id }];
      }).filter((l) => l.startsWith('cavity plug'));
    expect(plugged('3')).toEqual(['cavity plug | PLUG | 1 | pcs | harness | X1:3']);
    expect(plugged('1')).toEqual([]);
    // A key plug blocks its cavity for good.
    expect(plugged('3', 'blocked')).toEqual(['cavity plug | PLUG | 1 | pcs | harness | X1:3']);
  });

  it('shows what was not chosen as a line without a part', () => {
    const lines = linesOf((t) => {
      const end = t.wire('W1').ends[0];
      if (end.at === 'cavity') delete end.contact;
      delete t.wire('W2').part;
      t.connector('X2').cavities = [{ cavity: '3', state: 'plugged' }];
    });
    expect(lines).toContain('contact | ? | 1 | pcs | harness | X1:1');
    expect(lines).toContain('wire | ? | BK | 0.308 | m | harness | W2');
    expect(lines).toContain('cavity plug | ? | 1 | pcs | harness | X2:3');
  });

  it('flags an unknown length and never counts it as zero', () => {
    const unrouted = (t: TinyDraft) => void delete t.connector('X1').node;
    expect(linesOf(unrouted)).toContain('wire | WIRE-22 | RD | ? | m | harness | W1');
    expect(remarksOf(unrouted)).toEqual(['WIRE-22: length not known: W2', 'WIRE-22: length not known: W1']);
    const half = (t: TinyDraft) => {
      unrouted(t);
      t.wire('W2').colour = { base: 'RD' };
      t.wire('W2').lengthMm = 500;
    };
    expect(linesOf(half)).toContain('wire | WIRE-22 | RD | 0.5 | m | harness | W1, W2');
    expect(remarksOf(half)).toEqual(['WIRE-22: quantity incomplete, length not known: W1']);
  });

  it('says when a length lacks an input, a colour is open, a part is replaced', () => {
    expect(
      remarksOf((t) => {
        delete t.part('housing', 'H-PIN').datumMm;
        delete t.wire('W1').colour;
        t.part('contact', 'C-PIN').replacedBy = 'C-PIN-2';
      }),
    ).toEqual([
      'C-PIN: replaced by C-PIN-2',
      'WIRE-22: colour not chosen; cut length without datum of H-PIN: W1',
      'WIRE-22: cut length without datum of H-PIN: W2',
    ]);
  });

  it('orders tape by its helix round the bundle, and says what it needs where that is not known', () => {
    const taped = (tapeOverlap?: number) => (t: TinyDraft) => {
      const tape = t.newId();
      const segment = t.project.segments[0]!.id;
      t.project.parts.push({
        kind: 'covering',
        id: tape,
        partNumber: 'TAPE',
        form: 'tape',
        tapeWidthMm: 19,
        maker: 'Example Works (invented)',
        description: '',
        ...(tapeOverlap === undefined ? {} : { tapeOverlap }),
      });
      t.project.coverings.push({
        id: t.newId(),
        layer: 1,
        part: tape,
        from: { segment, atMm: 50 },
        to: { segment, atMm: 250 },
        designator: 'CV1',
      });
    };
    // Worked by hand: two wires of 1.2 mm lie in a circle of 2.4 mm; pi x 2.4 x 200 / (19 x 0.5) = 158.7 mm.
    expect(linesOf(taped(0.5))).toContain('covering | TAPE | 0.159 | m | harness | CV1');
    expect(linesOf(taped())).toContain('covering | TAPE | ? | m | harness | CV1');
  });

  it('measures coverings along the run, over several segments too, with take-up; counts ties, labels, splices, fuses', () => {
    const lines = linesOf((t) => {
      const [n3, s2, tube, braid, tie, label] = [
        t.newId(),
        t.newId(),
        t.newId(),
        t.newId(),
        t.newId(),
        t.newId(),
      ];
      const [s1, n2] = [t.project.segments[0]!.id, t.project.nodes[1]!.id];
      const maker = { maker: 'Example Works (invented)', description: '' };
      t.project.nodes.push({ id: n3, designator: 'N3', position: { x: 500, y: 0 } });
      t.project.segments.push({ id: s2, designator: 'S2', from: n3, to: n2, lengthMm: 200 });
      t.project.parts.push(
        { kind: 'covering', id: tube, partNumber: 'TUBE', form: 'tube', ...maker },
        { kind: 'covering', id: braid, partNumber: 'BRAID', form: 'braid', takeUp: 0.1, ...maker },
        { kind: 'tie', id: tie, partNumber: 'TIE', ...maker },
        { kind: 'label', id: label, partNumber: 'LABEL', ...maker },
      );
      const covering = { id: t.newId(), layer: 1 };
      t.project.coverings.push(
        {
          ...covering,
          part: tube,
          from: { segment: s1, atMm: 250 },
          to: { segment: s1, atMm: 50 },
          designator: 'CV1',
        },
        // 300 - 100 to the end of S1, then S2 runs back from N3 to N2: 200 - 150 from N2.
        {
          ...covering,
          id: t.newId(),
          part: braid,
          from: { segment: s1, atMm: 100 },
          to: { segment: s2, atMm: 150 },
          designator: 'CV2',
        },
      );
      t.project.ties.push(
        { id: t.newId(), part: tie, station: { segment: s1, atMm: 10 } },
        { id: t.newId(), part: tie, station: { segment: s1, atMm: 90 } },
      );
      t.project.labels.push({
        id: t.newId(),
        part: label,
        text: 'X1',
        on: { at: 'connector', connector: t.connector('X1').id },
      });
      t.project.splices.push({ id: t.newId(), designator: 'XS1', position: { x: 0, y: 0 } });
      t.project.fuses.push({ id: t.newId(), designator: 'F1', wire: t.wire('W1').id });
    });
    expect(lines).toContain('covering | TUBE | 0.2 | m | harness | CV1');
    expect(lines).toContain('covering | BRAID | 0.275 | m | harness | CV2');
    expect(lines).toContain('tie | TIE | 2 | pcs | harness | S1');
    expect(lines).toContain('label | LABEL | 1 | pcs | harness | X1');
    expect(lines).toContain('splice | ? | 1 | pcs | harness | XS1');
    expect(lines).toContain('fuse | ? | 1 | pcs | harness | F1');
  });

  it('cuts a cable as long as its longest core', () => {
    const withCable = (lengths: (number | undefined)[]) =>
      linesOf((t) => {
        const [part, cable] = [t.newId(), t.newId()];
        const core = (name: string) => ({ name, size: { system: 'awg' as const, gauge: 26 } });
        t.project.parts.push({
          kind: 'cable',
          id: part,
          maker: 'Example Works (invented)',
          partNumber: 'CABLE',
          description: '',
          cores: [core('1'), core('2')],
        });
        t.project.cables.push({ id: cable, designator: 'WC1', part });
        for (const [i, w] of [t.wire('W1'), t.wire('W2')].entries()) {
          delete w.part;
          w.core = { cable, name: String(i + 1) };
          if (lengths[i] === undefined) delete t.connector('X1').node;
          else w.lengthMm = lengths[i];
        }
      }).filter((l) => /^(cable|wire)/.test(l));
    expect(withCable([500, 520])).toEqual(['cable | CABLE | 0.52 | m | harness | WC1']);
    expect(withCable([500, undefined])).toEqual(['cable | CABLE | ? | m | harness | WC1']);
  });

  it('stands under the title block, the limit set and the cautions', () => {
    const head = tableOf(tiny((t) => void (t.project.titleBlock.identificationNumber = 'H-100'))).head;
    expect(head).toContainEqual(['Title', 'Tiny example']);
    expect(head).toContainEqual(['Identification number', 'H-100']);
    expect(head).toContainEqual(['Revision', 'A (draft)']);
    expect(head).toContainEqual(['Limit set', 'General, revision 1']);
    expect(head.find(([label]) => label === 'Caution')?.[1]).toMatch(/^Checked against the limits entered/);
  });

  it('gives the same bytes for the same harness, however its objects are ordered', () => {
    const shuffled = (p: Project): Project => ({
      ...p,
      parts: p.parts.toReversed(),
      connectors: p.connectors.toReversed(),
      wires: p.wires.toReversed(),
      contacts: p.contacts.toReversed(),
    });
    for (const bytes of [csvOfTable, jsonOfTable]) {
      expect(bytes(tableOf(tiny()))).toBe(bytes(tableOf(structuredClone(tiny()))));
      expect(bytes(tableOf(shuffled(tiny())))).toBe(bytes(tableOf(tiny())));
    }
  });

  it('names the objects behind each line', () => {
    const table = tableOf(tiny());
    expect(table.objects).toHaveLength(table.rows.length);
    const wires = table.objects.at(-1);
    expect(wires).toEqual([{ type: 'wire', id: tiny().wires[0]!.id }]);
  });
});
