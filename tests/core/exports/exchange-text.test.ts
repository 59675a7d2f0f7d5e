import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { produce } from 'immer';
import type { Exporter } from '@latchwork/core/exports/exporter';
import { kbl } from '@latchwork/core/exports/kbl';
import { vec } from '@latchwork/core/exports/vec';
import { tiny } from '@latchwork/core/model/tiny';
import { Project } from '@latchwork/core/model/project';
import { fileOf, inputOf } from './exchange/cases';
import { nameErrors, referenceErrors, schemaTypes } from './exchange/schema-types';
import { readTree, walk } from './exchange/xml-tree';
import { schemaErrors } from './xml/xsd';
import { SAMPLE_TEXT, sampleProject } from '../model/sample-file';
import { createRandom } from '../../generate/harness/random';
import { withOddValue } from '../fuzz/odd-values';
import { parseProject } from '@latchwork/core/model/parse';

const FORMATS: readonly (readonly [Exporter, string])[] = [
  [vec, 'vec-2.1.0/vec_2.1.0-ud-strict.xsd'],
  [kbl, 'kbl/kbl24_sr1.xsd'],
];

/** Texts that break writers which put strings together. */
const AWKWARD = `</Value><Injected id="X"/> & "q" 'a' ]]> &lt; <!-- --> \u{1f50c} ä\u00a0 tab\tline\nline\r\nend`;

/** What of a project is written as text. Limits, decisions and equipment stay in the project file. */
const WRITTEN = [
  'revisions', 'titleBlock', 'notes', 'parts', 'connectors', 'wires', 'labels', 'signals', 'nodes', 'segments', 'splices',
  'cables', 'groups', 'fuses',
] as const; // prettier-ignore

/** Numbers of things: ten thousand of them would be written one by one. */
const COUNTS = /\/(ways|rows|quantity)$/;

/**
 * Every free text (or number) of a project replaced, each by one of its own. Which are free is asked of the model: what it
 * refuses (ids, dates, words of a list, fractions) gets its own value back.
 */
function withValues<T extends string | number>(
  project: Project,
  isMeant: (value: unknown) => boolean,
  make: (path: string, number: number) => T,
): { project: Project; made: Map<string, T> } {
  const kept = new Set<string>();
  for (let round = 0; round < 12; round++) {
    const made = new Map<string, T>();
    const change = (value: unknown, path: string): unknown => {
      if (isMeant(value)) {
        if (kept.has(path) || COUNTS.test(path)) return value;
        made.set(path, make(path, made.size));
        return made.get(path);
      }
      if (Array.isArray(value)) return value.map((v, i) => change(v, `${path}/${i}`));
      if (typeof value !== 'object' || value === null) return value;
      return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, change(v, `${path}/${k}`)]));
    };
    const changed = Object.fromEntries(WRITTEN.map((k) => [k, change(project[k], `/${k}`)]));
    const parsed = Project.safeParse({ ...project, ...changed });
    if (parsed.success) return { project: parsed.data, made };
    for (const issue of parsed.error.issues) {
      const path = `/${issue.path.join('/')}`;
      kept.add(path);
      // What names the form of an object that has several.
      for (const key of ['kind', 'at', 'system']) kept.add(`${path}/${key}`);
    }
  }
  throw new Error('no round left');
}

describe.each(FORMATS)('texts in a file of $id', (exporter, schema) => {
  it('come back as they were, whatever they hold, and add no element', () => {
    const isText = (v: unknown): boolean => typeof v === 'string';
    const { project, made } = withValues(sampleProject(), isText, (path) => `${path} ${AWKWARD}`);
    const text = fileOf(exporter, project);
    expect(schemaErrors(schema, text).slice(0, 5)).toEqual([]);
    const root = readTree(text);
    expect(referenceErrors(schemaTypes(schema), root).errors.slice(0, 5)).toEqual([]);
    const found = new Set<string>();
    for (const e of walk(root)) {
      expect(e.name).not.toBe('Injected');
      found.add(e.text);
    }
    for (const row of exporter.table(inputOf(project)).rows) found.add(`${row['item']} ${row['remark']}`);
    const all = [...found].join('\n');
    const isTold = (t: string): boolean => all.includes(t) || all.includes(JSON.stringify(t).slice(1, -1));
    const missing = [...made].filter(([, t]) => !isTold(t)).map(([path]) => path);
    expect(missing.filter((path) => !staysOut(exporter, project, path))).toEqual([]);
  });

  it('bring every number with them', () => {
    const isNumber = (v: unknown): boolean => typeof v === 'number';
    const { project, made } = withValues(sampleProject(), isNumber, (_, n) => 10_007 + 2 * n);
    const text = fileOf(exporter, project);
    const missing = [...made].filter(([, n]) => !new RegExp(`\\b${n}\\b`).test(text)).map(([path]) => path);
    expect(
      missing.filter((path) => !staysOut(exporter, project, path) && !NOT_AS_THEY_ARE.test(path)),
    ).toEqual([]);
    expect(made.size).toBeGreaterThan(150);
  });

  it.each([
    ['\u0000', 'U+0000'],
    ['\u001b', 'U+001B'],
    ['\ud800', 'U+D800'],
    ['\ufffe', 'U+FFFE'],
  ])('that XML cannot carry are refused by name (%j)', (bad, name) => {
    const made = exporter.xml?.text(
      inputOf(
        produce(tiny(), (d) => {
          d.titleBlock.title = `Lamp ${bad} harness`;
        }),
      ),
    );
    expect(made?.ok).toBe(false);
    if (made && !made.ok) {
      expect(made.problem).toContain(name);
      expect(made.problem).toContain('Lamp');
    }
  });

  it('may be anything in names: the file stays valid, its references whole', () => {
    const name = fc
      .string({ minLength: 1, unit: 'grapheme' })
      .filter((s) => [...s].every((c) => c >= ' ' || c === '\n'));
    const types = schemaTypes(schema);
    fc.assert(
      fc.property(fc.array(name, { minLength: 6, maxLength: 6 }), ([a, b, c, d, e, f]) => {
        const project = tiny((t) => {
          const [x1, x2, w1] = [t.connector('X1'), t.connector('X2'), t.wire('W1')];
          x1.designator = a as string;
          x2.designator = b as string;
          const [from] = w1.ends;
          if (from.at === 'cavity') from.cavity = d as string;
          w1.designator = c as string;
          for (const s of t.project.signals) s.name = e as string;
          for (const n of t.project.nodes) n.designator = f as string;
        });
        const made = exporter.xml?.text(inputOf(project));
        // Refused in words where XML cannot carry a character; never a broken file.
        if (!made?.ok) return expect(made?.problem).toContain('U+');
        expect(schemaErrors(schema, made.value)).toEqual([]);
        expect(referenceErrors(types, readTree(made.value)).errors).toEqual([]);
      }),
      { numRuns: 15 },
    );
  }, 60_000);
});

describe.each(FORMATS)('$id of a project with odd values', (exporter, schema) => {
  it(
    'is a valid file with whole references and unique names, or refused by the character',
    { timeout: 120_000 },
    () => {
      const types = schemaTypes(schema);
      const random = createRandom(11);
      let made = 0;
      for (let i = 0; i < 50; i++) {
        let raw = JSON.parse(SAMPLE_TEXT);
        for (let n = 1 + (i % 4); n > 0; n--) raw = withOddValue(raw, random);
        const parsed = parseProject(JSON.stringify(raw));
        if (!parsed.ok) continue;
        const text = exporter.xml?.text(inputOf(parsed.value));
        if (!text?.ok) {
          expect(text?.problem).toContain('U+');
          continue;
        }
        made++;
        const root = readTree(text.value);
        expect(schemaErrors(schema, text.value).slice(0, 3)).toEqual([]);
        expect(referenceErrors(types, root).errors.slice(0, 3)).toEqual([]);
        expect(nameErrors(root, ['Identification', 'Id', 'Wire_number']).slice(0, 3)).toEqual([]);
      }
      expect(made).toBeGreaterThan(10);
    },
  );
});

/** Offers stay out; headers without wires, tools and signals without wires are in no KBL file, and the table says so. */
function staysOut(exporter: Exporter, project: Project, path: string): boolean {
  const [, collection, index] = /^\/(parts|signals)\/(\d+)\//.exec(path) ?? [];
  const object = collection && project[collection as 'parts' | 'signals'][Number(index)];
  if (path.includes('/offers/')) return true;
  if (exporter.id !== 'kbl' || !object) return false;
  if ('kind' in object) return object.kind === 'tool' || object.kind === 'header';
  return project.wires.every((w) => w.signal !== object.id);
}

/** Where things are drawn on the diagram; limits of a diameter, which are written as differences to it. */
const NOT_AS_THEY_ARE = /^\/(connectors|wires|splices).*\/position\/|\/od(Min|Max)Mm$/;
