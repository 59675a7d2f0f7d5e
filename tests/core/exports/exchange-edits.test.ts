import fc from 'fast-check';
import { expect, it } from 'vitest';
import { dispatch } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { kbl } from '@latchwork/core/exports/kbl';
import { vec } from '@latchwork/core/exports/vec';
import { countingIds } from '@latchwork/core/model/ids';
import type { Project } from '@latchwork/core/model/project';
import { randomEdit } from '../../generate/random-edit';
import { fileOf } from './exchange/cases';
import { readKbl } from './exchange/kbl-reader';
import { nameErrors, referenceErrors, schemaTypes } from './exchange/schema-types';
import { readVec } from './exchange/vec-reader';
import { partsListBill, plainNames, sortedWires, wireListOf } from './exchange/wire-list';
import { readTree } from './exchange/xml-tree';
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
