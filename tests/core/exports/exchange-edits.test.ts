import fc from 'fast-check';
import { expect, it } from 'vitest';
import { dispatch } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { kbl } from '@latchwork/core/exports/kbl';
import { vec } from '@latchwork/core/exports/vec';
import { countingIds } from '@latchwork/core/model/ids';
import { parseProject } from '@latchwork/core/model/parse';
import type { Project } from '@latchwork/core/model/project';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { randomEdit } from '../../generate/random-edit';
import { CASES, fileOf, inputOf } from './exchange/cases';
import { readKbl } from './exchange/kbl-reader';
import { nameErrors, referenceErrors, schemaTypes } from './exchange/schema-types';
import { readVec } from './exchange/vec-reader';
import { partsListBill, plainNames, sortedWires, wireListOf } from './exchange/wire-list';
import { readTree, textOf, walk } from './exchange/xml-tree';
import { schemaErrors } from './xml/xsd';
import { sampleProject } from '../model/sample-file';

const FORMATS = [
  [vec, 'vec-2.1.0/vec_2.1.0-ud-strict.xsd', readVec],
  [kbl, 'kbl/kbl24_sr1.xsd', readKbl],
] as const;

function edited(edits: readonly number[]): Project {
  let history = startHistory(sampleProject());
  const newId = countingIds(500_000);
  for (const n of edits) {
    const call = randomEdit(n, history.project);
    const result = call && dispatch(history, call, { newId, catalogue: [] });
    if (result?.ok) history = result.value;
  }
  return history.project;
}

it.each(FORMATS)('whatever is edited, $id stays valid, whole, and tells the same parts and wires', (exporter, schema, read) => {
  const types = schemaTypes(schema);
  fc.assert(
    fc.property(fc.array(fc.integer({ min: -5000, max: 5000 }), { maxLength: 25 }), (edits) => {
      const project = edited(edits);
      const text = fileOf(exporter, project);
      expect(schemaErrors(schema, text)).toEqual([]);
      const root = readTree(text);
      expect(referenceErrors(types, root).errors).toEqual([]);
      expect(nameErrors(root, ['Identification', 'Id', 'Wire_number'])).toEqual([]);
      const { bill, wires } = read(text);
      expect(bill).toEqual(partsListBill(project));
      expect(sortedWires(wires.map(plainNames))).toEqual(sortedWires(wireListOf(project)));
    }),
    { numRuns: 15 },
  );
}, 120_000); // prettier-ignore

it.each(FORMATS)('$id is the same file after saving and opening, and names what stays as before', (exporter) => {
  const before = named(fileOf(exporter, sampleProject()));
  fc.assert(
    fc.property(fc.array(fc.integer({ min: -5000, max: 5000 }), { maxLength: 12 }), (edits) => {
      const project = edited(edits);
      const text = fileOf(exporter, project);
      const opened = parseProject(serialiseProject(project));
      if (!opened.ok) throw new Error(opened.problem.code);
      expect(fileOf(exporter, opened.value) === text).toBe(true);
      const stays = new Set([...project.connectors, ...project.nodes, ...project.wires, ...project.parts].map((o) => o.id));
      const after = named(text);
      for (const [id, name] of before)
        if ([...stays].some((s) => id.endsWith(`_${s}`)) && after.has(id)) expect(after.get(id)).toBe(name);
      expect([...before.keys()].filter((id) => after.has(id)).length).toBeGreaterThan(10);
    }),
    { numRuns: 10 },
  );
}, 120_000); // prettier-ignore

/** Names by id, of elements that have one. */
function named(text: string): Map<string, string> {
  const out = new Map<string, string>();
  for (const e of walk(readTree(text))) {
    const name =
      textOf(e, 'Identification') ?? textOf(e, 'Id') ?? textOf(e, 'PartNumber') ?? textOf(e, 'Part_number');
    if (e.id !== undefined && name !== undefined) out.set(e.id, name);
  }
  return out;
}

// Whatever is in the project and not in the file has a line that says why.
it.each(CASES)('of %s, nothing is left out without a word', (_, make) => {
  for (const [exporter] of FORMATS) {
    const project = make();
    const rows = exporter.table(inputOf(project)).rows;
    const count = (item: string, column: 'inProject' | 'written') => Number(rows.find((r) => r['item'] === item)?.[column] ?? 0);
    const named = (pattern: RegExp) => rows.filter((r) => r['written'] === null && pattern.test(`${r['item']} ${r['remark']}`)).length;
    for (const item of ['wires', 'cables', 'splices', 'nodes', 'segments', 'coverings', 'ties', 'fixings', 'labels', 'fuses'])
      expect(count(item, 'written'), item).toBe(count(item, 'inProject'));
    expect(count('connectors', 'written') + named(/left out with its mates/)).toBe(project.connectors.length);
    expect(count('parts', 'written') + named(/^(tool|header) /)).toBe(project.parts.length);
    expect(count('signals', 'written') + named(/^signal .*no wire/)).toBe(project.signals.length);
  }
}); // prettier-ignore
