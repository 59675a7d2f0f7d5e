import { describe, expect, it } from 'vitest';
import { vec } from '@latchwork/core/exports/vec';
import { CASES, fileOf, inputOf } from './exchange/cases';
import { nameErrors, referenceErrors, schemaTypes } from './exchange/schema-types';
import { readVec } from './exchange/vec-reader';
import { partsListBill, plainNames, sortedWires, wireListOf } from './exchange/wire-list';
import { readTree, walk } from './exchange/xml-tree';
import { schemaErrors } from './xml/xsd';

/** prostep ivip / VDA 4968, VEC 2.1.0 of 2024-01-08, the strict form: only literals of the standard. */
const SCHEMA = 'vec-2.1.0/vec_2.1.0-ud-strict.xsd';
const types = schemaTypes(SCHEMA);

describe.each(CASES)('a VEC file of %s', (name, make) => {
  const text = fileOf(vec, make());
  const root = readTree(text);

  // Outside: the schema of the standard, read by libxml2.
  it('is valid against the strict schema', () => {
    expect(schemaErrors(SCHEMA, text).slice(0, 5)).toEqual([]);
  });

  // Outside: the target type of every reference, as the schema states it; validators do not read it.
  it('has references to what is there and of the right type only', () => {
    const { errors, count } = referenceErrors(types, root);
    expect(errors.slice(0, 5)).toEqual([]);
    if (name !== 'an empty one') expect(count).toBeGreaterThan(50);
  });

  it('has names that are unique where they stand, and global names that are unique at all', () => {
    expect(nameErrors(root, ['Identification', 'CavityNumber', 'SlotNumber']).slice(0, 5)).toEqual([]);
    const iris = [...walk(root)].flatMap((e) => e.attributes.get('immutable-global-iri') ?? []);
    expect(iris.filter((iri, i) => iris.indexOf(iri) !== i)).toEqual([]);
    const parts = root.children
      .filter((c) => c.name === 'PartVersion')
      .map((p) => JSON.stringify(['CompanyName', 'PartNumber', 'PartVersion'].map((n) => p.children.find((c) => c.name === n)?.text))); // prettier-ignore
    expect(parts.filter((p, i) => parts.indexOf(p) !== i)).toEqual([]);
  });

  it('is the same file for the same project', () => {
    expect(fileOf(vec, make()) === text).toBe(true);
  });
});

describe.each(CASES.filter(([name]) => name !== 'names that stand twice'))(
  'from a VEC file of %s alone',
  (name, make) => {
    const project = make();
    const read = readVec(fileOf(vec, project));

    it('the parts can be counted as the parts list counts them', () => {
      if (name !== 'parts of the wrong kind') expect(read.bill).toEqual(partsListBill(project));
    });

    it('the wires can be listed as the connection table lists them', () => {
      if (name !== 'parts of the wrong kind')
        expect(sortedWires(read.wires.map(plainNames))).toEqual(sortedWires(wireListOf(project)));
      else expect(read.wires).toHaveLength(project.wires.length);
    });
  },
);

it('counts what it writes, and names what it cannot write as it is', () => {
  const rows = vec.table(inputOf(CASES[2]?.[1]() as never)).rows;
  const row = (item: string) => rows.find((r) => r['item'] === item);
  expect(row('connectors')).toMatchObject({ inProject: 45, written: 45 });
  expect(row('wires')).toMatchObject({ inProject: 41, written: 41 });
  expect(row('F1')?.['remark']).toContain('no place for a fuse');
  expect(row('X42:4')?.['remark']).toContain('no such cavity');
});

describe('what is wrong in a VEC file is found', () => {
  const text = fileOf(vec, CASES[1]?.[1]() as never);
  const errors = (change: (text: string) => string) => referenceErrors(types, readTree(change(text))).errors;

  it('a word that the standard does not have', () => {
    expect(schemaErrors(SCHEMA, text.replace('SnapLock', 'Clip')).join()).toContain('LockingType');
  });

  it('a reference to nothing, and one to a thing of another type', () => {
    expect(errors((t) => t)).toEqual([]);
    expect(errors((t) => t.replace(/<EndNode>[^<]*/, '<EndNode>Nowhere')).join()).toContain('Nowhere');
    const connector = /<Component id="(X_[^"]*)"/.exec(text)?.[1] ?? '';
    expect(errors((t) => t.replace(/<EndNode>[^<]*/, `<EndNode>${connector}`)).join()).toContain(
      'TopologyNode',
    );
    // The schema itself lets that pass: a reference is any id to it.
    expect(schemaErrors(SCHEMA, text.replace(/<EndNode>[^<]*/, `<EndNode>${connector}`))).toEqual([]);
  });

  it('a wire that is gone, and one that is longer', () => {
    const project = CASES[1]?.[1]() as never;
    const short = readVec(text.replace(/<Component id="W_[\s\S]*?<\/Component>/, ''));
    expect(short.wires).toHaveLength(wireListOf(project).length - 1);
    const longer = text.replace(/(<LengthType>Production[\s\S]*?<ValueComponent>)/, '$19');
    expect(sortedWires(readVec(longer).wires)).not.toEqual(sortedWires(wireListOf(project)));
  });
});
