import { describe, expect, test } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { buildSequence } from '@latchwork/core/exports/build-sequence';
import { connectionTable } from '@latchwork/core/exports/connection-table';
import { crimpSheets } from '@latchwork/core/exports/crimp-sheets';
import { cutList } from '@latchwork/core/exports/cut-list';
import type { DocumentInput, Exporter } from '@latchwork/core/exports/exporter';
import { formboard } from '@latchwork/core/exports/formboard';
import { partsList } from '@latchwork/core/exports/parts-list';
import { pinouts } from '@latchwork/core/exports/pinouts';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { generateProject } from '../../generate/harness-generator';
import { demoFromFile } from '../demos/demo-files';

/** What the shop has before it. The records of purchase are made from the parts list itself and prove nothing. */
const SHOP: readonly Exporter[] = [connectionTable, pinouts, cutList, crimpSheets, buildSequence, formboard];

const textOf = (e: Exporter, input: DocumentInput): string =>
  JSON.stringify([e.table(input).rows, e.paper?.(input).blocks, e.drawing?.(input).items]);

const projects = [
  ...['bench-lamp', 'weather-station', 'workshop-faults'].map((n) => [n, () => demoFromFile(n)] as const),
  ['random, 41 wires', () => generateProject({ wires: 41, seed: 2 })],
] as const;

describe('V7: the parts list and the papers name the same parts', () => {
  test.each(projects)('%s', (_, make) => {
    const harness = deriveHarness(make());
    const input: DocumentInput = { harness, check: checkHarness(harness, []), date: '2026-03-01' };
    const shop = SHOP.map((e) => textOf(e, input)).join('\n');
    const lines = partsList.table(input).rows.filter((r) => r.partNumber !== null && r.kind !== 'tool');
    const inShop = (text: unknown): boolean => shop.includes(JSON.stringify(String(text)).slice(1, -1));
    const mine = lines.filter((r) => r.suppliedWith === 'harness');
    expect(mine.filter((r) => !inShop(r.partNumber)).map((r) => r.partNumber)).toEqual([]);
    // What comes with the equipment is not handled by the shop: it knows it as the other half of what it builds.
    const other = lines.filter((r) => r.suppliedWith !== 'harness');
    const places = other.flatMap((r) => String(r.designators).split(', '));
    expect(places.filter((d) => !inShop(d))).toEqual([]);
    const numbers = [...new Set(lines.map((r) => String(r.partNumber)))];
    // The other way round: a number that stands in the shop's tables is bought, comes with the equipment, or is a tool.
    const bought = new Set(numbers);
    const known = harness.project.parts.filter((p) => p.kind !== 'tool').map((p) => p.partNumber);
    const cells = SHOP.flatMap((e) => e.table(input).rows.flatMap((r) => Object.values(r).map(String)));
    const named = known.filter((n) => cells.includes(n));
    expect(named.filter((n) => !bought.has(n))).toEqual([]);
  });
});
