import { z } from 'zod';
import { problem, ok, type Result } from '../base/result';
import type { Issue } from '../model/problem';
import { parseLength } from '../model/length-text';
import { parseWireSize } from '../model/wire-size';
import type { CalcProblem } from './calc-problem';
import { fieldMeta, type AnyCalculation } from './calculation';

/** Fields of a calculation by key, in the order in which they are asked for. */
export const inputFields = (entry: AnyCalculation): readonly [string, z.ZodType][] =>
  Object.entries(entry.inputs.shape as Record<string, z.ZodType>);

/** What a field holds under its `optional` and `default`. */
export function coreOf(schema: z.ZodType): z.ZodType {
  let inner = schema;
  while (inner instanceof z.ZodOptional || inner instanceof z.ZodDefault || inner instanceof z.ZodNullable)
    inner = inner.unwrap() as z.ZodType;
  return inner;
}

/** True where the calculation can do without: the field is optional or has a default. */
export const isOptional = (schema: z.ZodType): boolean => schema.safeParse(undefined).success;

/**
 * Texts ("12", "12 in", "22 AWG", "true", a JSON list) as the inputs of a calculation, for the command line and for forms.
 * A number may carry its own unit; lengths may carry any that `parseLength` knows. Names that no field has are refused.
 */
export function readInputs(
  entry: AnyCalculation,
  texts: Readonly<Record<string, string>>,
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
    if (text.trim() === '') continue;
    const read = readValue(schema, text.trim());
    if (read.ok) values[key] = read.value;
    else issues.push({ path: key, message: read.problem });
  }
  return issues.length ? problem({ code: 'bad-input', issues }) : ok(values);
}

function readValue(schema: z.ZodType, text: string): Result<unknown, string> {
  const core = coreOf(schema);
  const { unit } = fieldMeta(schema);
  if (isWireSize(core)) return parseWireSize(text);
  if (core instanceof z.ZodBoolean) return readBoolean(text);
  if (core instanceof z.ZodNumber || isNumberChoice(core)) return readNumber(text, unit);
  if (core instanceof z.ZodEnum || core instanceof z.ZodString) return ok(text);
  try {
    return ok(JSON.parse(text));
  } catch {
    return problem('expected JSON');
  }
}

const isWireSize = (schema: z.ZodType): boolean =>
  schema instanceof z.ZodDiscriminatedUnion && schema.def.discriminator === 'system';

const isNumberChoice = (schema: z.ZodType): boolean =>
  schema instanceof z.ZodUnion &&
  schema.options.every((o) => o instanceof z.ZodLiteral && typeof o.value === 'number');

function readBoolean(text: string): Result<boolean, string> {
  if (/^(true|yes|1)$/i.test(text)) return ok(true);
  return /^(false|no|0)$/i.test(text) ? ok(false) : problem('expected true or false');
}

function readNumber(text: string, unit: string): Result<number, string> {
  if (unit === 'mm') return parseLength(text, 'mm');
  const bare = unit && text.endsWith(unit) ? text.slice(0, -unit.length).trim() : text;
  const value = Number(bare);
  return bare !== '' && Number.isFinite(value)
    ? ok(value)
    : problem(`"${text}" is not a number${unit ? ` in ${unit}` : ''}`);
}
