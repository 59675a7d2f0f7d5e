import { type z } from 'zod';
import { problem, ok, type Result } from '../base/result';
import type { Issue } from '../model/problem';
import { parseWireSize } from '../model/wire-size';
import type { CalcProblem } from './calc-problem';
import { fieldMeta, type AnyCalculation } from './calculation';
import { inputKind } from './input-kind';
import { listColumns } from './list-columns';
import { readQuantity } from './quantity-text';

export { coreOf, isOptional } from './input-kind';

/** Fields of a calculation by key, in the order in which they are asked for. */
export const inputFields = (entry: AnyCalculation): readonly [string, z.ZodType][] =>
  Object.entries(entry.inputs.shape as Record<string, z.ZodType>);

/** A line of a list as typed: texts by the path of the column, joined by dots. */
export type RowTexts = Readonly<Record<string, string>>;

/**
 * Texts ("12", "12 in", "22 AWG", "true", a list) as the inputs of a calculation, for the command line and for forms.
 * A number may carry its own unit. A list of numbers is "1.5, 1.5, 0.9" or "7 x 1.5"; a list of objects is JSON, or rows of
 * texts. Names that no field has are refused; an empty text counts as not given.
 */
export function readInputs(
  entry: AnyCalculation,
  texts: Readonly<Record<string, string | readonly RowTexts[]>>,
): Result<Record<string, unknown>, CalcProblem> {
  const fields = new Map(inputFields(entry));
  const values: Record<string, unknown> = {};
  const issues: Issue[] = [];
  for (const [key, text] of Object.entries(texts)) {
    const schema = fields.get(key);
    if (!schema) {
      issues.push({ path: key, message: `no such input; known: ${[...fields.keys()].join(', ')}` });
      continue;
    }
    if (typeof text !== 'string') {
      const rows = readRows(schema, text, key, issues);
      if (rows.length) values[key] = rows;
      continue;
    }
    if (text.trim() === '') continue;
    const read = readValue(schema, text.trim(), fieldMeta(schema).unit);
    if (read.ok) values[key] = read.value;
    else issues.push({ path: key, message: read.problem });
  }
  return issues.length ? problem({ code: 'bad-input', issues }) : ok(values);
}

function readValue(schema: z.ZodType, text: string, unit: string): Result<unknown, string> {
  const input = inputKind(schema);
  switch (input.kind) {
    case 'wire-size':
      return parseWireSize(text);
    case 'yes-no':
      return readBoolean(text);
    case 'number':
      return readQuantity(text, unit);
    case 'choice':
      return input.numeric ? readQuantity(text, unit) : ok(text);
    case 'text':
      return ok(text);
    case 'numbers':
      return text.startsWith('[') ? readJson(text) : readNumbers(text, unit);
    case 'rows':
    case 'json':
      return readJson(text);
  }
}

function readJson(text: string): Result<unknown, string> {
  try {
    return ok(JSON.parse(text));
  } catch {
    return problem('expected JSON');
  }
}

function readBoolean(text: string): Result<boolean, string> {
  if (/^(true|yes|1)$/i.test(text)) return ok(true);
  return /^(false|no|0)$/i.test(text) ? ok(false) : problem('expected true or false');
}

/** Far above any list that a calculation takes; keeps "999999999 x 1" from filling the memory. */
const MOST_ITEMS = 10_000;

/** "1.5, 0.9", with semicolons where commas are decimal, and "7 x 1.5" for seven of a kind. */
function readNumbers(text: string, unit: string): Result<number[], string> {
  const numbers: number[] = [];
  const parts = text.split(text.includes(';') ? ';' : ',').map((p) => p.trim());
  for (const part of parts.filter((p) => p !== '')) {
    const many = /^(\d+)\s*[x×*]\s*(.+)$/i.exec(part);
    const count = many ? Number(many[1]) : 1;
    const value = readQuantity(many ? (many[2] as string) : part, unit);
    if (!value.ok) return value;
    if (numbers.length + count > MOST_ITEMS) return problem(`more than ${MOST_ITEMS} values`);
    for (let i = 0; i < count; i++) numbers.push(value.value);
  }
  return ok(numbers);
}

/** Rows of texts as objects; a row in which nothing is typed is none. Issues name the row and the column. */
function readRows(schema: z.ZodType, rows: readonly RowTexts[], key: string, issues: Issue[]): unknown[] {
  const columns = listColumns(schema);
  const items: unknown[] = [];
  for (const [i, row] of rows.entries()) {
    const item: Record<string, unknown> = {};
    let typed = false;
    for (const column of columns) {
      const name = column.path.join('.');
      const text = (row[name] ?? '').trim();
      if (text === '') continue;
      typed = true;
      const read = readValue(column.schema, text, column.unit);
      if (read.ok) place(item, column.path, read.value);
      else issues.push({ path: `${key}.${i}.${name}`, message: read.problem });
    }
    if (typed) items.push(item);
  }
  return items;
}

function place(item: Record<string, unknown>, path: readonly string[], value: unknown): void {
  const [first, ...rest] = path as [string, ...string[]];
  if (rest.length === 0) item[first] = value;
  else {
    const inner = (item[first] ?? {}) as Record<string, unknown>;
    item[first] = inner;
    place(inner, rest, value);
  }
}
