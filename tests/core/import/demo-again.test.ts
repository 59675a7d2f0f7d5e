import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseCatalogue, partsToEmbed } from '@latchwork/core/catalogue/parse-catalogue';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Harness, ResolvedEnd } from '@latchwork/core/derive/harness';
import { csvField } from '@latchwork/core/exports/csv';
import { partsList } from '@latchwork/core/exports/parts-list';
import { importHarness } from '@latchwork/core/import/import-harness';
import { importProblemText } from '@latchwork/core/import/import-problem';
import { colourText } from '@latchwork/core/model/colour';
import { parseProject } from '@latchwork/core/model/parse';
import { checkHarness } from '@latchwork/core/rules/check-harness';

const read = (path: string): string => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8');
const catalogue = parseCatalogue(read('assets/catalogues/workbench.json'));
if (!catalogue.ok) throw new Error('the bundled catalogue cannot be read');
const PARTS = partsToEmbed(catalogue.value);

const csv = (rows: (string | number | null | undefined)[][]): string =>
  rows.map((r) => r.map((c) => csvField(c ?? null)).join(',')).join('\r\n');

/** A drawn harness written down as the two tables that a user would bring. */
function tablesOf(harness: Harness): { fromTo: string; connectors: string } {
  const { connectors, equipment, mates } = harness.project;
  const name = (list: readonly { id: string; designator: string }[], id: string | undefined) =>
    list.find((o) => o.id === id)?.designator;
  const place = (e: ResolvedEnd) =>
    e.end.at === 'cavity' ? [e.connector?.connector.designator, e.end.cavity] : [e.splice?.designator, ''];
  return {
    connectors: csv([
      ['designator', 'part', 'mates_with', 'equipment'],
      ...connectors.map((c) => [
        c.designator,
        harness.parts.get(c.part)?.partNumber,
        name(connectors, mates.find((m) => m.a === c.id)?.b),
        name(equipment, c.equipment),
      ]),
    ]),
    fromTo: csv([
      [
        'wire',
        'signal',
        'from',
        'from_cavity',
        'to',
        'to_cavity',
        'wire_part',
        'colour',
        'length_mm',
        'group',
      ],
      ...harness.wires.map((w) => [
        w.wire.designator,
        w.signal?.name,
        ...place(w.from),
        ...place(w.to),
        w.part?.partNumber,
        w.wire.colour && colourText(w.wire.colour),
        w.length.cutMm,
        w.group?.designator,
      ]),
    ]),
  };
}

/** The lines that tables can tell of: locks, plugs, splice barrels and what lies on the way are drawn later. */
const linesOf = (harness: Harness): string[] =>
  partsList
    .table({ harness, check: checkHarness(harness, []), date: '2026-03-01' })
    .rows.filter((r) => ['housing', 'header', 'contact', 'wire seal', 'wire'].includes(String(r.kind)))
    .map((r) =>
      [r.kind, r.partNumber, r.colour, r.quantity, r.unit, r.suppliedWith, r.designators].join(' | '),
    );

describe.each(['bench-lamp', 'weather-station'])(
  'the demo %s, written down as tables and imported',
  (demo) => {
    const drawn = parseProject(read(`demo-projects/${demo}.latchwork`));
    if (!drawn.ok) throw new Error(`${demo} cannot be read`);
    const harness = deriveHarness(drawn.value);
    const { fromTo, connectors } = tablesOf(harness);
    const result = importHarness({
      fromTo: { file: 'wires.csv', text: fromTo },
      connectors: { file: 'places.csv', text: connectors },
      catalogue: PARTS,
      title: demo,
    });
    if (!result.ok) throw new Error(result.problem.map(importProblemText).join('\n'));
    const again = deriveHarness(result.value);

    it('needs the same housings, headers, contacts, seals and wire', () => {
      expect(linesOf(harness).length).toBeGreaterThan(5);
      expect(linesOf(again)).toEqual(linesOf(harness));
    });

    it('connects the same points', () => {
      const nets = (h: Harness): string[] =>
        h.nets
          .filter((n) => n.wires.length > 0)
          .map((n) =>
            n.points
              .map((p) => `${p.connector.connector.designator}:${p.cavity}`)
              .sort()
              .join(' '),
          ) // prettier-ignore
          .sort();
      expect(nets(again)).toEqual(nets(harness));
    });
  },
);
