import { describe, expect, it, test } from 'vitest';
import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory, type History } from '@latchwork/core/commands/history';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { connectionTable } from '@latchwork/core/exports/connection-table';
import { partsList } from '@latchwork/core/exports/parts-list';
import { importHarness } from '@latchwork/core/import/import-harness';
import { importProblemText } from '@latchwork/core/import/import-problem';
import { countingIds } from '@latchwork/core/model/ids';
import { newProject } from '@latchwork/core/model/new-project';
import { parseProject } from '@latchwork/core/model/parse';
import type { Part } from '@latchwork/core/model/parts/part';
import type { Project } from '@latchwork/core/model/project';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';

const CATALOGUE = tiny().parts;
const CONNECTORS = [
  'designator,part,mates_with,equipment',
  'X1,H-SOCKET,X3,',
  'X2,H-PIN,X4,',
  'X3,HEADER,X1,A1',
  'X4,H-SOCKET,,A2',
].join('\n');
const FROM_TO = [
  'wire,signal,from,from_cavity,to,to_cavity,size,colour,length_mm,current_a,voltage_v,group,note',
  'W1,SUP,X1,1,X2,1,22 AWG,RD,300,1,12,P1,',
  'W2,RTN,X1,2,X2,2,22 AWG,BK,300,1,0,P1,by the wall',
  'W3,,X1,3,S1,,22 AWG,BU,120,,,,',
  'W4,,S1,,X2,3,22 AWG,BU,180,,,,',
].join('\n');

const imported = (
  fromTo: string,
  connectors: string | undefined = CONNECTORS,
  catalogue: readonly Part[] = CATALOGUE,
) =>
  importHarness({
    fromTo: { file: 'wires.csv', text: fromTo },
    ...(connectors === undefined ? {} : { connectors: { file: 'places.csv', text: connectors } }),
    catalogue,
    title: 'Sample',
  });
const projectOf = (...args: Parameters<typeof imported>): Project => {
  const result = imported(...args);
  if (!result.ok) throw new Error(result.problem.map(importProblemText).join('\n'));
  return result.value;
};
const problemsOf = (...args: Parameters<typeof imported>) => {
  const result = imported(...args);
  return result.ok ? [] : result.problem.map(importProblemText);
};
const tablesOf = (project: Project) => {
  const harness = deriveHarness(project);
  const check = checkHarness(harness, []);
  return {
    parts: partsList.table({ harness, check, date: '2026-03-01' }).rows,
    wires: connectionTable.table({ harness, check, date: '2026-03-01' }).rows,
  };
};

/** The same harness as a user draws it. */
function drawnByCommands(): Project {
  const newId = countingIds(1);
  const part = <K extends Part['kind']>(kind: K, number: string) =>
    CATALOGUE.find((p) => p.kind === kind && p.partNumber === number) as Extract<Part, { kind: K }>;
  let history: History = startHistory(newProject({ id: newId(), revisionId: newId() }));
  const run = (call: Call): void => {
    const done = dispatch(history, call, { newId, catalogue: CATALOGUE });
    if (!done.ok) throw new Error(done.problem.reason);
    history = done.value;
  };
  const position = { x: 0, y: 0 };
  const box = { position, widthMm: 50, heightMm: 50 };
  run({ id: 'equipment.add', args: { equipment: { kind: 'board', ...box } } });
  run({ id: 'equipment.add', args: { equipment: { kind: 'device', ...box } } });
  const [board, device] = history.project.equipment.map((e) => e.id) as [string, string];
  run({ id: 'connector.place', args: { part: part('housing', 'H-SOCKET'), position } });
  run({ id: 'connector.place', args: { part: part('housing', 'H-PIN'), position } });
  run({ id: 'connector.place', args: { part: part('header', 'HEADER'), position, equipment: board } });
  run({ id: 'connector.place', args: { part: part('housing', 'H-SOCKET'), position, equipment: device, supply: 'equipment' } });
  const [x1, x2, x3, x4] = history.project.connectors.map((c) => c.id) as [string, string, string, string];
  run({ id: 'mate.add', args: { a: x1, b: x3 } });
  run({ id: 'mate.add', args: { a: x2, b: x4 } });
  run({ id: 'splice.add', args: { position, designator: 'S1' } });
  const splice = history.project.splices[0]!.id;
  const at = (connector: string, cavity: string) => ({ at: 'cavity' as const, connector, cavity });
  const wire = part('wire', 'WIRE-22');
  run({ id: 'wire.add', args: { from: at(x1, '1'), to: at(x2, '1'), part: wire, colour: { base: 'RD' }, lengthMm: 300 } });
  run({ id: 'wire.add', args: { from: at(x1, '2'), to: at(x2, '2'), part: wire, colour: { base: 'BK' }, lengthMm: 300 } });
  run({ id: 'wire.add', args: { from: at(x1, '3'), to: { at: 'splice', splice }, part: wire, colour: { base: 'BU' }, lengthMm: 120 } });
  run({ id: 'wire.add', args: { from: { at: 'splice', splice }, to: at(x2, '3'), part: wire, colour: { base: 'BU' }, lengthMm: 180 } });
  return history.project;
} // prettier-ignore

describe('import of a harness from tables', () => {
  it('gives the same parts list as the same harness drawn by commands', () => {
    expect(tablesOf(projectOf(FROM_TO)).parts).toEqual(tablesOf(drawnByCommands()).parts);
  });

  it('counts as by hand', () => {
    const lines = tablesOf(projectOf(FROM_TO)).parts.map((r) => `${r.partNumber} ${r.colour ?? ''} ${r.quantity} ${r.suppliedWith}`); // prettier-ignore
    expect(lines).toEqual([
      'H-PIN  1 harness',
      'H-SOCKET  1 harness',
      'H-SOCKET  1 equipment',
      'HEADER  1 equipment',
      'C-PIN  3 harness',
      'C-SOCKET  3 harness',
      'null  1 harness', // the splice S1, for which the table names no part
      'WIRE-22 BK 0.3 harness',
      'WIRE-22 BU 0.3 harness',
      'WIRE-22 RD 0.3 harness',
    ]);
  });

  it('keeps what each row says', () => {
    const project = projectOf(FROM_TO);
    const rows = tablesOf(project).wires;
    expect(rows.map((r) => [r.wire, r.signal, r.from, r.fromCavity, r.to, r.toCavity, r.colour, r.lengthMm, r.group, r.remarks])).toEqual([
      ['W1', 'SUP', 'X1', '1', 'X2', '1', 'RD', 300, 'P1 (twisted)', null],
      ['W2', 'RTN', 'X1', '2', 'X2', '2', 'BK', 300, 'P1 (twisted)', 'by the wall'],
      ['W3', null, 'X1', '3', 'S1', null, 'BU', 120, null, null],
      ['W4', null, 'S1', null, 'X2', '3', 'BU', 180, null, null],
    ]); // prettier-ignore
    expect(rows[0]).toMatchObject({ fromContact: 'C-SOCKET', toContact: 'C-PIN', fromStripMm: 2.5, wirePart: 'WIRE-22' }); // prettier-ignore
    expect(project.signals).toMatchObject([
      { name: 'SUP', voltageV: 12, currentA: 1 },
      { name: 'RTN', voltageV: 0, currentA: 1 },
    ]);
    expect(project.equipment.map((e) => [e.designator, e.kind])).toEqual([['A1', 'board'], ['A2', 'device']]); // prettier-ignore
    expect(project.mates).toHaveLength(2);
    expect(project.notes).toEqual(['Imported from wires.csv and places.csv.']);
  });

  it('writes a file that opens again, and the same one each time', () => {
    const text = serialiseProject(projectOf(FROM_TO));
    expect(serialiseProject(projectOf(FROM_TO))).toBe(text);
    expect(parseProject(text)).toMatchObject({ ok: true });
  });

  it('reads the same from semicolons, with a byte-order mark, capitals and another order of columns', () => {
    const swapped =
      '\ufeffTO_CAVITY;To;From_Cavity;FROM;Wire;Colour;Size;LENGTH\r\n"1";X2;1;X1;W1;rd;AWG 22;"12 in"\r\n';
    expect(tablesOf(projectOf(swapped)).wires[0]).toMatchObject({ wire: 'W1', from: 'X1', to: 'X2', colour: 'RD', size: '22 AWG', lengthMm: 304.8 }); // prettier-ignore
  });

  it('puts mated and wired connectors side by side, and nothing on top of another', () => {
    const project = projectOf(FROM_TO);
    const at = (d: string) => project.connectors.find((c) => c.designator === d)!.position.x;
    expect(new Set(['X1', 'X2', 'X3', 'X4'].map((d) => `${at(d)}`)).size).toBeGreaterThan(1);
    const places = [...project.connectors, ...project.splices].map((c) => `${c.position.x} ${c.position.y}`);
    expect(new Set(places).size).toBe(5);
    for (const c of project.connectors.filter((x) => x.equipment)) {
      const e = project.equipment.find((x) => x.id === c.equipment)!;
      expect(c.position.x).toBeGreaterThanOrEqual(e.position.x);
      expect(c.position.y).toBeGreaterThanOrEqual(e.position.y);
      expect(c.position.y).toBeLessThan(e.position.y + e.heightMm);
    }
  });

  it('chooses nothing where the table says nothing: no wire, no contact, no colour', () => {
    const rows = tablesOf(projectOf('wire,from,from_cavity,to,to_cavity\nW1,X1,1,X2,1')).wires;
    expect(rows[0]).toMatchObject({ wirePart: null, fromContact: null, toContact: null, colour: null, lengthMm: null }); // prettier-ignore
    const named = tablesOf(projectOf('from,from_cavity,to,to_cavity,wire_part\nX1,1,X2,1,WIRE-22')).wires;
    expect(named[0]).toMatchObject({
      wire: 'W1',
      wirePart: 'WIRE-22',
      fromContact: 'C-SOCKET',
      colour: null,
    });
  });

  it('leaves the contact open where none fits: 26 AWG is below the band of 24 to 20', () => {
    const rows = tablesOf(projectOf('from,from_cavity,to,to_cavity,size\nX1,1,X2,1,26 AWG')).wires;
    expect(rows[0]).toMatchObject({ wirePart: 'WIRE-26', fromContact: null, toContact: null });
  });

  it('takes, of several wires of the size and colour, the thinnest that the contacts take, and says so', () => {
    const wire = CATALOGUE.find((p) => p.partNumber === 'WIRE-22') as Extract<Part, { kind: 'wire' }>;
    const other = (partNumber: string, id: number, odMm: number): Part => ({ ...wire, partNumber, odMm, id: countingIds(id)() }); // prettier-ignore
    // The insulation support takes 0.89 to 1.53 mm.
    const more = [...CATALOGUE, other('WIRE-22-THIN', 800, 0.7), other('WIRE-22-MID', 801, 1.0)];
    const row = tablesOf(projectOf('from,from_cavity,to,to_cavity,size,colour\nX1,1,X2,1,22 AWG,RD', CONNECTORS, more)).wires[0]; // prettier-ignore
    expect(row).toMatchObject({ wirePart: 'WIRE-22-MID', fromContact: 'C-SOCKET' });
    expect(row?.remarks).toBe('length not known, needs a formboard node at both ends, or a typed length; wire chosen on import among 3 of 22 AWG in RD'); // prettier-ignore
  });

  it('keeps a mate that cannot be, for the findings to show', () => {
    const project = projectOf('from,to\nS1,S2\nS2,S1', 'designator,part,mates_with\nX1,H-SOCKET,X2\nX2,H-SOCKET,').mates; // prettier-ignore
    expect(project).toHaveLength(1);
  });
});

describe('a bad row is named with file, line, column and field, and nothing is imported', () => {
  const HEAD =
    'wire,from,from_cavity,to,to_cavity,size,colour,length_mm,length,current_a,voltage_v,signal,group,wire_part';
  const row = (changes: Record<string, string>): string => {
    const values: Record<string, string> = { wire: 'W1', from: 'X1', from_cavity: '1', to: 'X2', to_cavity: '1', ...changes }; // prettier-ignore
    return HEAD.split(',').map((k) => values[k] ?? '').join(','); // prettier-ignore
  };

  test.each([
    [{ from: '' }, 'line 2, column 2 (from): must be given'],
    [{ from: 'X9' }, 'line 2, column 2 (from): there is no connector X9'],
    [{ from_cavity: '' }, 'line 2, column 3 (from_cavity): X1 is a connector: name the cavity'],
    [{ from_cavity: '4' }, 'line 2, column 3 (from_cavity): X1 has no cavity 4 (H-SOCKET has 1 to 3)'],
    [{ to: 'X3' }, 'line 2, column 4 (to): X3 is a header'],
    [{ to: 'S7', to_cavity: '' }, 'line 2, column 4 (to): S7 is no connector of the connectors file, and a splice joins two wire ends or more'],
    [{ to: 'X1' }, 'line 2, column 4 (to): a wire needs two different ends'],
    [{ size: '22' }, 'line 2, column 6 (size): "22" is not a wire size'],
    [{ size: '18 AWG' }, 'line 2, column 6 (size): no catalogue has a wire of 18 AWG'],
    [{ size: '22 AWG', colour: 'YE' }, 'line 2, column 6 (size): no catalogue has a wire of 22 AWG in YE'],
    [{ size: '0.35 mm2' }, 'line 2, column 6 (size): no catalogue has a wire of 0.35 mm2'],
    [{ colour: 'XX' }, 'line 2, column 7 (colour): "XX" is not a colour code'],
    [{ length_mm: '-3' }, 'line 2, column 8 (length_mm): "-3" must be greater than zero'],
    [{ length: '12' }, 'line 2, column 9 (length): "12" has no unit'],
    [{ length: '12 in', length_mm: '300' }, 'line 2, column 9 (length): the length is given twice'],
    [{ current_a: '2' }, 'line 2, column 10 (current_a): a current belongs to a signal'],
    [{ group: 'P1' }, 'line 2, column 13 (group): P1 has one wire'],
    [{ wire_part: 'NONE' }, 'line 2, column 14 (wire_part): no catalogue has a wire with part number NONE'],
    [{ wire_part: 'C-PIN' }, 'line 2, column 14 (wire_part): C-PIN is a contact, not a wire'],
    [{ wire_part: 'WIRE-22', size: '26 AWG' }, 'line 2, column 6 (size): WIRE-22 is 22 AWG, not 26 AWG'],
  ])('%j', (changes: Record<string, string>, message) => {
    const problems = problemsOf(`${HEAD}\n${row(changes)}`);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain(`wires.csv, ${message}`);
  }); // prettier-ignore

  test.each([
    ['wire,from,to\nW1,S1,S2\nW1,S2,S1', 'line 3, column 1 (wire): wire W1 stands in line 2 already'],
    ['signal,voltage_v,from,to\nA,5,S1,S2\nA,12,S1,S2', 'line 3, column 2 (voltage_v): A has 5 V in line 2'],
    ['from,to,length_mm,lenght\nS1,S2,1,', 'line 1, column 4 (lenght): there is no column "lenght"'],
    ['wire,from,from_cavity,to,to_cavity,note\nW1,X1,1,X2,1,"two\nlines"\nW2,X1,9,X2,2,', 'line 4, column 3 (from_cavity): X1 has no cavity 9'],
  ])('%j', (text, message) => {
    expect(problemsOf(text)).toEqual([expect.stringContaining(`wires.csv, ${message}`)]);
  }); // prettier-ignore

  test.each([
    ['designator,part\nX1,H-NONE', 'line 2, column 2 (part): no catalogue has a housing or header with part number H-NONE'],
    ['designator,part\nX1,WIRE-22', 'line 2, column 2 (part): WIRE-22 is a wire, not a housing or header'],
    ['designator,part\nX1,H-PIN\nX1,H-PIN', 'line 3, column 1 (designator): X1 stands in line 2 already'],
    ['designator,part,mates_with\nX1,H-PIN,X2', 'line 2, column 3 (mates_with): there is no connector X2'],
    ['designator,part,mates_with\nX1,H-PIN,X1', 'line 2, column 3 (mates_with): a connector cannot mate with itself'],
    ['designator,part,mates_with\nX1,H-PIN,X2\nX2,H-SOCKET,\nX3,H-PIN,X2', 'line 4, column 3 (mates_with): X2 is mated with X1 already'],
  ])('%j', (text, message) => {
    expect(problemsOf('from,to\nS1,S2\nS2,S1', text)).toEqual([expect.stringContaining(`places.csv, ${message}`)]);
  }); // prettier-ignore

  it('tells the problems of both files at once', () => {
    expect(problemsOf('from,to\n,S2', 'designator,part\nX1,H-NONE')).toHaveLength(2);
  });

  it('asks for the connectors file when a cavity is named without it', () => {
    const result = importHarness({ fromTo: { file: 'w.csv', text: 'from,from_cavity,to\nX1,1,S1' }, catalogue: CATALOGUE, title: '' }); // prettier-ignore
    expect(!result.ok && result.problem.map(importProblemText)[0]).toContain('w.csv, line 2, column 1 (from): there is no connector X1'); // prettier-ignore
  });
});
