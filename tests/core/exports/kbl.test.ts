import { describe, expect, it } from 'vitest';
import { kbl } from '@latchwork/core/exports/kbl';
import { tiny } from '@latchwork/core/model/tiny';
import { CASES, fileOf, inputOf } from './exchange/cases';
import { readKbl } from './exchange/kbl-reader';
import { nameErrors, referenceErrors, schemaTypes } from './exchange/schema-types';
import { partsListBill, plainNames, sortedWires, wireListOf } from './exchange/wire-list';
import { find, findAll, readTree, refsOf, textOf } from './exchange/xml-tree';
import { schemaErrors } from './xml/xsd';

/** prostep ivip / VDA 4964: KBL 2.4 SR-1, and 2.5 SR-1 in its strict form, which reads 2.4 as well. */
const SCHEMA = 'kbl/kbl24_sr1.xsd';
const LATER_SCHEMA = 'kbl/kbl2.5-sr1-strict.xsd';
const types = schemaTypes(SCHEMA);

describe.each(CASES)('a KBL file of %s', (name, make) => {
  const text = fileOf(kbl, make());
  const root = readTree(text);

  // Outside: the schemas of the standard, read by libxml2.
  it('is valid against KBL 2.4 and the strict schema of 2.5', () => {
    expect(schemaErrors(SCHEMA, text).slice(0, 5)).toEqual([]);
    expect(schemaErrors(LATER_SCHEMA, text).slice(0, 5)).toEqual([]);
  });

  // Outside: "ref to …" in the documentation of the schema; no validator reads it.
  it('has references to what is there and of the right type only', () => {
    const { errors, count } = referenceErrors(types, root);
    expect(errors.slice(0, 5)).toEqual([]);
    if (name !== 'an empty one') expect(count).toBeGreaterThan(50);
  });

  it('has names that are unique where they stand', () => {
    expect(nameErrors(root, ['Id', 'Wire_number', 'Cavity_number', 'Special_wire_id']).slice(0, 5)).toEqual(
      [],
    );
    const parts = root.children
      .filter((c) => find(c, 'Part_number') && find(c, 'Part_number')?.text !== '/NULL')
      .map((p) => JSON.stringify([p.name, ...['Company_name', 'Part_number', 'Version'].map((n) => find(p, n)?.text)])); // prettier-ignore
    expect(parts.filter((p, i) => parts.indexOf(p) !== i)).toEqual([]);
  });

  it('joins each wire by one connection, between two contact points', () => {
    const connections = findAll(find(root, 'Harness'), 'Connection');
    const wires = connections.flatMap((c) => refsOf(c, 'Wire'));
    expect(new Set(wires).size).toBe(make().wires.length);
    for (const c of connections) expect(findAll(c, 'Extremities')).toHaveLength(2);
  });

  it('is the same file for the same project', () => {
    expect(fileOf(kbl, make()) === text).toBe(true);
  });
});

describe.each(
  CASES.filter(([name]) => name !== 'names that stand twice' && name !== 'parts of the wrong kind'),
)('from a KBL file of %s alone', (_, make) => {
  const project = make();
  const read = readKbl(fileOf(kbl, project));

  it('the parts can be counted as the parts list counts them', () => {
    expect(read.bill).toEqual(partsListBill(project));
  });

  it('the wires can be listed as the connection table lists them', () => {
    expect(sortedWires(read.wires.map(plainNames))).toEqual(sortedWires(wireListOf(project)));
  });
});

it('counts what it writes, and names what it leaves out', () => {
  const rows = kbl.table(inputOf(CASES[2]?.[1]() as never)).rows;
  const row = (item: string) => rows.find((r) => r['item'] === item);
  expect(row('wires')).toMatchObject({ inProject: 41, written: 41 });
  expect(row('mates')).toMatchObject({ inProject: 20, written: 1, remark: 'the others are named below' });
  expect(row('X1')?.['remark']).toContain('comes with the equipment');
  expect(row('signal FAN_SUP')?.['remark']).toContain('no wire carries it');
});

it('joins the cavities of two halves of the harness that are plugged together, both ways', () => {
  const project = tiny((t) => {
    // X4 comes with the device in the tiny one; here both halves are of the harness.
    t.connector('X4').supply = 'harness';
  });
  const harness = find(readTree(fileOf(kbl, project)), 'Harness');
  const occurrence = (name: string) =>
    findAll(harness, 'Connector_occurrence').find((c) => textOf(c, 'Id') === name);
  const mated = (name: string) =>
    findAll(find(occurrence(name), 'Slots'), 'Cavities').map((c) => [c.id, refsOf(c, 'Mated_cavities')[0]]);
  expect(mated('X2')).toHaveLength(3);
  expect(
    mated('X2')
      .map(([own, other]) => [other, own])
      .sort(),
  ).toEqual(mated('X4').sort());
});
