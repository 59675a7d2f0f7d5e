import { parse } from 'csv-parse/sync';
import { unzipSync, strFromU8 } from 'fflate';
import { XmlDocument } from 'libxml2-wasm';
import { beforeAll, describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { DocumentInput } from '@latchwork/core/exports/exporter';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { parseProject } from '@latchwork/core/model/parse';
import { Project } from '@latchwork/core/model/project';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import { fileFormatsOf } from '@latchwork/core/exports/file-format';
import { documentFile } from '../../../electron/services/document-file';
import { bareFileName, nearestFileName } from '../../../electron/services/file-name';
import { SAMPLE_TEXT } from '../../core/model/sample-file';

/** One text that is poison for each format: a formula, CSV and XML syntax, script, line breaks, control characters, direction marks. */
const POISON =
  '=HYPERLINK("http://x"&A1)\r\n@SUM(1),"\';<script>alert(1)</script>]]>&xxe;<!--\u0000\u0007\u202e${7*7}/../x';

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

/** Every text of the project that a user can type, poisoned: what the schema accepts in a place is typed there. */
function poisoned(): { readonly project: Project; readonly places: number } {
  const raw = JSON.parse(SAMPLE_TEXT) as { [key: string]: Json };
  let places = 0;
  for (const key of Object.keys(raw)) {
    const schema = Project.shape[key as keyof typeof Project.shape];
    const holders: (readonly [{ [key: string]: Json } | Json[], string | number])[] = [];
    collect(raw, key, holders);
    for (const [holder, at] of holders) {
      const list = holder as { [key: string | number]: Json };
      const was = list[at] as string;
      if (/^[0-9a-f]{8}-|^\d{4}-\d\d-\d\d/.test(was)) continue;
      list[at] = `${POISON}${places}`;
      if (schema.safeParse(raw[key]).success) places++;
      else list[at] = was;
    }
  }
  const parsed = parseProject(JSON.stringify(raw));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problem));
  return { project: parsed.value, places };
}

function collect(
  holder: { [key: string]: Json } | Json[],
  key: string | number,
  out: (readonly [{ [key: string]: Json } | Json[], string | number])[],
): void {
  const value = (holder as { [key: string | number]: Json })[key] as Json;
  if (typeof value === 'string') out.push([holder, key]);
  else if (Array.isArray(value)) value.forEach((_, i) => collect(value, i, out));
  else if (typeof value === 'object' && value !== null)
    for (const k of Object.keys(value)) collect(value, k, out);
}

let input: DocumentInput;
let places: number;
beforeAll(() => {
  const made = poisoned();
  places = made.places;
  const harness = deriveHarness(made.project);
  input = { harness, check: checkHarness(harness, RULES), date: '2026-03-01' };
}, 120_000);

const cases = EXPORTERS.flatMap((e) => fileFormatsOf(e).map((format) => [e.id, format, e] as const));

it('poison can be typed in many places', () => expect(places).toBeGreaterThan(80));

describe.each(cases)('%s as %s', (_id, format, exporter) => {
  it('does nothing but stand there', { timeout: 60_000 }, async () => {
    const file = await documentFile(exporter, input, format, 'assets/fonts');
    if (!file.ok) {
      // A format that cannot hold such a text says so and where; it does not write another.
      expect(file.problem.length).toBeGreaterThan(20);
      return;
    }
    const text = Buffer.from(file.value).toString('utf8');
    switch (format) {
      case 'csv': {
        const rows = parse(text, { columns: false, bom: true }) as string[][];
        expect(new Set(rows.map((r) => r.length)).size).toBeLessThanOrEqual(1);
        for (const cell of rows.flat())
          if (!/^[+-]?\d+(?:[.,]\d+)?(?:e[+-]?\d+)?$/i.test(cell))
            expect(cell, 'a formula').not.toMatch(/^\s*[=+\-@]/);
        break;
      }
      case 'xlsx': {
        const entries = unzipSync(file.value);
        for (const [name, bytes] of Object.entries(entries)) {
          expect(name).toMatch(/^[\w./[\]-]+$/);
          if (!/\.(xml|rels)$/.test(name)) continue;
          const xml = strFromU8(bytes);
          XmlDocument.fromString(xml).dispose();
          expect(xml).not.toMatch(/<f[ >]|<hyperlink|TargetMode="External"|<!DOCTYPE/i);
        }
        break;
      }
      case 'svg':
      case 'xml': {
        XmlDocument.fromString(text).dispose();
        expect(text).not.toMatch(/<script|<!DOCTYPE|<!ENTITY|<foreignObject|\son\w+=|javascript:/i);
        break;
      }
      case 'json':
        expect(() => JSON.parse(text) as unknown).not.toThrow();
        break;
      case 'dxf':
        // Pairs of lines, a group code and a value; a line break in a value would shift them all.
        text
          .split(/\r?\n/)
          .forEach((line, i) => i % 2 === 0 && line !== '' && expect(line).toMatch(/^\s*\d+$/));
        break;
      case 'pdf':
        expect(text.slice(0, 5)).toBe('%PDF-');
        expect(Buffer.from(file.value).toString('latin1')).not.toMatch(
          /\/(JavaScript|JS|Launch|URI|OpenAction)\b/,
        );
        break;
    }
  });
});

describe('file names from what a user typed', () => {
  it.each([
    POISON,
    '../../etc/passwd',
    'con',
    'a/b\\c',
    '',
    '.',
    'x'.repeat(500),
    '\u202egnp.exe',
    'NUL.latchwork',
  ])('%j', (text) => {
    const name = nearestFileName(text, 'document');
    expect(bareFileName(name).ok).toBe(true);
    expect(name).not.toMatch(/[\u202a-\u202e\u2066-\u2069]/);
  });
});
