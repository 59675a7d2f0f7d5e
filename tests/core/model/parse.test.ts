import { describe, expect, it } from 'vitest';
import { MIGRATIONS } from '@latchwork/core/model/migrations/index';
import { parseProject } from '@latchwork/core/model/parse';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { openProblemText, type OpenProblem } from '@latchwork/core/model/problem';
import { Project, PROJECT_FORMAT_VERSION } from '@latchwork/core/model/project';
import { changed, SAMPLE_TEXT, sampleProject, V1_TEXT, type Raw } from './sample-file';
import { fieldsIn, fieldsOf } from './schema-fields';

function problemOf(text: string): OpenProblem {
  const parsed = parseProject(text);
  if (parsed.ok) throw new Error('this text was accepted');
  return parsed.problem;
}

function pathsOf(text: string): string[] {
  const p = problemOf(text);
  return 'issues' in p ? p.issues.map((i) => i.path) : [];
}

describe('a saved project of this version', () => {
  it('opens', () => {
    expect(parseProject(SAMPLE_TEXT).ok).toBe(true);
  });

  it('has every field that the format allows, so that opening it proves something', () => {
    const present = fieldsIn(sampleProject());
    const missing = fieldsOf(Project).filter((field) => !present.has(field));
    expect(missing).toEqual([]);
  });

  it('opens with a byte-order mark in front', () => {
    expect(parseProject(`\uFEFF${SAMPLE_TEXT}`)).toEqual(parseProject(SAMPLE_TEXT));
  });

  it('opens with the line ends of another system', () => {
    expect(parseProject(SAMPLE_TEXT.replaceAll('\n', '\r\n'))).toEqual(parseProject(SAMPLE_TEXT));
  });
});

describe('a saved project of an older format version', () => {
  it.each([['1', V1_TEXT]])('opens from version %s and is written as the one of now', (_, text) => {
    const opened = parseProject(text);
    if (!opened.ok) throw new Error(openProblemText(opened.problem));
    expect(opened.value.formatVersion).toBe(PROJECT_FORMAT_VERSION);
    expect(opened.value).toMatchObject({ fixings: [], dimensions: [] });
    expect(opened.value.wires).toEqual(JSON.parse(text).wires);
    expect(parseProject(serialiseProject(opened.value))).toEqual(opened);
  });

  it('is there for every step', () => {
    expect(MIGRATIONS.map((m) => m.to)).toEqual([2]);
  });
});

describe('a text that is not JSON', () => {
  it.each([
    ['', 1, 1],
    ['{"format": "latchwork-project",\n  "formatVersion": 1,,\n}', 2, 22],
    ['{\n  "format": "latchwork-project"\n  "id": 1\n}', 3, 3],
    ['hello', 1, 1],
    ['\uFEFF{"format": hello}', 1, 12],
    [SAMPLE_TEXT.slice(0, SAMPLE_TEXT.indexOf('"signals"')), undefined, undefined],
  ] as const)('is refused with line and column: %j', (text, line, column) => {
    const p = problemOf(text);
    expect(p.code).toBe('not-json');
    if (line !== undefined) expect(p).toMatchObject({ line, column });
    expect(openProblemText(p)).toMatch(/line \d+, column \d+/);
  });
});

describe('a file of another kind', () => {
  it.each([
    ['null', 'no object'],
    ['[1, 2]', 'no object'],
    ['"text"', 'no object'],
    ['{"a": 1}', 'nothing'],
    ['{"format": "latchwork-catalogue", "formatVersion": 1}', '"latchwork-catalogue"'],
    ['{"format": 7}', '7'],
  ])('is not ours: %s', (text, found) => {
    expect(problemOf(text)).toEqual({ code: 'not-ours', expected: 'latchwork-project', found });
  });
});

describe('the format version', () => {
  it('of a newer program is refused and said', () => {
    const newer = PROJECT_FORMAT_VERSION + 1;
    const p = problemOf(changed((raw) => (raw.formatVersion = newer)));
    expect(p).toEqual({ code: 'too-new', found: newer, known: PROJECT_FORMAT_VERSION });
    expect(openProblemText(p)).toContain(`version ${newer}`);
  });

  it.each([['1'], [0], [-1], [0.5], [null], [undefined]])('%j is no version', (version) => {
    expect(pathsOf(changed((raw) => (raw.formatVersion = version)))).toContain('formatVersion');
  });
});

describe('a file that lacks the shape of its format names the place', () => {
  const cases: readonly [string, (raw: Raw) => void, string, RegExp][] = [
    ['a key nobody knows', (raw) => (raw.shoeSize = 42), '(whole file)', /shoeSize/],
    ['a key nobody knows in a wire', (raw) => (raw.wires[1].gauge = 22), 'wires[1]', /gauge/],
    ['a key nobody knows in an end', (raw) => (raw.wires[0].ends[1].pin = '1'), 'wires[0].ends[1]', /pin/],
    ['a missing collection', (raw) => delete raw.nodes, 'nodes', /array/],
    ['a text for a number', (raw) => (raw.segments[0].lengthMm = '212'), 'segments[0].lengthMm', /number/],
    ['a length of zero', (raw) => (raw.wires[0].lengthMm = 0), 'wires[0].lengthMm', />0/],
    ['a colour of our own', (raw) => (raw.wires[0].colour.base = 'RED'), 'wires[0].colour.base', /BK/],
    ['an id that is none', (raw) => (raw.splices[0].id = 'XS1'), 'splices[0].id', /UUID/],
    ['a third end', (raw) => raw.wires[0].ends.push(raw.wires[0].ends[0]), 'wires[0].ends', /2/],
    ['an unknown kind of part', (raw) => (raw.parts[0].kind = 'toaster'), 'parts[0].kind', /./],
    ['a date that is none', (raw) => (raw.revisions[0].date = '2026-02-30'), 'revisions[0].date', /date/],
    ['a number beyond all numbers', (raw) => (raw.parts[0].ways = 1e999), 'parts[0].ways', /number/],
  ];
  it.each(cases)('%s', (_name, change, path, message) => {
    const p = problemOf(changed(change));
    expect(p.code).toBe('bad-shape');
    const issue = 'issues' in p ? p.issues.find((i) => i.path === path) : undefined;
    expect(issue, JSON.stringify(p)).toBeDefined();
    expect(issue?.message).toMatch(message);
    expect(openProblemText(p)).toContain(path);
  });

  it('a key that would reach into the program is refused like any other', () => {
    const text = SAMPLE_TEXT.replace('"notes": [', '"__proto__": {"polluted": true}, "notes": [');
    expect(problemOf(text).code).toBe('bad-json');
    expect(({} as Raw).polluted).toBeUndefined();
  });
});

describe('a reference to an object that is not there names both', () => {
  const nobody = '11111111-2222-4333-8444-555555555555';
  const cases: readonly [string, (raw: Raw) => void][] = [
    ['purchasing.stock[0].part', (raw) => (raw.purchasing.stock[0].part = nobody)],
    ['connectors[0].part', (raw) => (raw.connectors[0].part = nobody)],
    ['connectors[0].equipment', (raw) => (raw.connectors[0].equipment = nobody)],
    ['connectors[0].node', (raw) => (raw.connectors[0].node = nobody)],
    ['connectors[0].cavities[0].contact', (raw) => (raw.connectors[0].cavities[0].contact = nobody)],
    ['connectors[0].cavities[0].signal', (raw) => (raw.connectors[0].cavities[0].signal = nobody)],
    ['connectors[0].cavities[1].plug', (raw) => (raw.connectors[0].cavities[1].plug = nobody)],
    ['connectors[0].accessories[0].part', (raw) => (raw.connectors[0].accessories[0].part = nobody)],
    ['contacts[2].part', (raw) => (raw.contacts[2].part = nobody)],
    ['cables[0].part', (raw) => (raw.cables[0].part = nobody)],
    ['wires[0].part', (raw) => (raw.wires[0].part = nobody)],
    ['wires[1].core.cable', (raw) => (raw.wires[1].core.cable = nobody)],
    ['wires[0].signal', (raw) => (raw.wires[0].signal = nobody)],
    ['wires[0].path[0]', (raw) => (raw.wires[0].path[0] = nobody)],
    ['wires[0].ends[0].connector', (raw) => (raw.wires[0].ends[0].connector = nobody)],
    ['wires[0].ends[0].contact', (raw) => (raw.wires[0].ends[0].contact = nobody)],
    ['wires[0].ends[0].seal', (raw) => (raw.wires[0].ends[0].seal = nobody)],
    ['wires[0].ends[1].splice', (raw) => (raw.wires[0].ends[1].splice = nobody)],
    ['wires[1].ends[1].terminal', (raw) => (raw.wires[1].ends[1].terminal = nobody)],
    ['wires[1].ends[1].node', (raw) => (raw.wires[1].ends[1].node = nobody)],
    ['groups[0].wires[1]', (raw) => (raw.groups[0].wires[1] = nobody)],
    ['splices[0].part', (raw) => (raw.splices[0].part = nobody)],
    ['splices[0].node', (raw) => (raw.splices[0].node = nobody)],
    ['mates[0].a', (raw) => (raw.mates[0].a = nobody)],
    ['mates[0].b', (raw) => (raw.mates[0].b = nobody)],
    ['signals[0].source.connector', (raw) => (raw.signals[0].source.connector = nobody)],
    ['signals[0].pairedWith', (raw) => (raw.signals[0].pairedWith = nobody)],
    ['signals[0].returnsOn', (raw) => (raw.signals[0].returnsOn = nobody)],
    ['signals[0].redundantTo', (raw) => (raw.signals[0].redundantTo = nobody)],
    ['fuses[0].part', (raw) => (raw.fuses[0].part = nobody)],
    ['fuses[0].wire', (raw) => (raw.fuses[0].wire = nobody)],
    ['segments[0].from', (raw) => (raw.segments[0].from = nobody)],
    ['segments[0].to', (raw) => (raw.segments[0].to = nobody)],
    ['coverings[0].part', (raw) => (raw.coverings[0].part = nobody)],
    ['coverings[0].from.segment', (raw) => (raw.coverings[0].from.segment = nobody)],
    ['coverings[0].to.segment', (raw) => (raw.coverings[0].to.segment = nobody)],
    ['ties[0].part', (raw) => (raw.ties[0].part = nobody)],
    ['ties[0].station.segment', (raw) => (raw.ties[0].station.segment = nobody)],
    ['fixings[0].part', (raw) => (raw.fixings[0].part = nobody)],
    ['fixings[0].station.segment', (raw) => (raw.fixings[0].station.segment = nobody)],
    ['dimensions[0].datums[0].node', (raw) => (raw.dimensions[0].datums[0].node = nobody)],
    ['dimensions[0].datums[1].connector', (raw) => (raw.dimensions[0].datums[1].connector = nobody)],
    [
      'dimensions[0].datums[2].station.segment',
      (raw) => (raw.dimensions[0].datums[2].station.segment = nobody),
    ],
    ['labels[0].part', (raw) => (raw.labels[0].part = nobody)],
    ['labels[0].on.wire', (raw) => (raw.labels[0].on.wire = nobody)],
    ['labels[1].on.connector', (raw) => (raw.labels[1].on.connector = nobody)],
    ['labels[2].on.station.segment', (raw) => (raw.labels[2].on.station.segment = nobody)],
    ['labels[3].on.cable', (raw) => (raw.labels[3].on.cable = nobody)],
  ];
  it.each(cases)('%s', (path, change) => {
    const p = problemOf(changed(change));
    expect(p.code).toBe('broken-reference');
    expect('issues' in p && p.issues.find((i) => i.path === path)?.message).toContain(nobody);
  });

  it('covers every place of the format that names another object', () => {
    const references = fieldsOf(Project)
      .map((f) => f.replace(/\{[^}]*\}/g, ''))
      // Shares of scrap are keyed by kind of part.
      .filter((f) => REFERENCE_KEYS.test(f) && !/^(parts|purchasing\.scrap)\b/.test(f));
    const covered = new Set(cases.map(([path]) => path.replace(/\[\d+\]/g, '[]')));
    // Ids inside arrays of ids end in [] in the cases and name the array in the schema.
    const open = [...new Set(references)].filter((f) => !covered.has(f) && !covered.has(`${f}[]`));
    expect(open).toEqual([]);
  });
});

const REFERENCE_KEYS =
  /\.(part|equipment|node|contact|plug|seal|signal|cable|splice|terminal|connector|wire|wires|path|segment|pairedWith|returnsOn|redundantTo)$|^mates\[\]\.[ab]$|^segments\[\]\.(from|to)$/;

describe('an id that is used twice in a collection', () => {
  it.each([
    'parts',
    'equipment',
    'signals',
    'connectors',
    'contacts',
    'cables',
    'wires',
    'groups',
    'splices',
    'mates',
    'fuses',
    'nodes',
    'segments',
    'coverings',
    'ties',
    'labels',
    'decisions',
  ])('%s', (name) => {
    const p = problemOf(changed((raw) => raw[name].push(raw[name][0])));
    const last = JSON.parse(SAMPLE_TEXT)[name].length;
    expect(p.code).toBe('broken-reference');
    expect(pathsOf(changed((raw) => raw[name].push(raw[name][0])))).toContain(`${name}[${last}].id`);
  });
});

describe('a contact', () => {
  it('cannot be in two cavities', () => {
    const text = changed((raw) => (raw.wires[1].ends[0].contact = raw.wires[0].ends[0].contact));
    expect(pathsOf(text)).toEqual(['wires[1].ends[0].contact']);
  });

  it('cannot be crimped on a wire and sit elsewhere as a spare', () => {
    const text = changed((raw) => (raw.connectors[0].cavities[0].contact = raw.wires[0].ends[0].contact));
    expect(pathsOf(text)).toEqual(['wires[0].ends[0].contact']);
  });

  it('may hold two wire ends of one cavity', () => {
    const text = changed((raw) => {
      raw.wires[1].ends[0] = { ...raw.wires[0].ends[0] };
    });
    expect(parseProject(text).ok).toBe(true);
  });
});
