import { type z } from 'zod';
import { ok, problem, type Result } from '../base/result';
import type { CalcProblem } from './calc-problem';

/** Where a formula, table or constant comes from. `verified: false`: recalled, not seen in the source. */
export interface CalcSource {
  readonly title: string;
  readonly verified: boolean;
  readonly note?: string;
}

/** One number (or word) of the working, with its unit ('' for none). */
export interface Figure {
  readonly name: string;
  readonly value: number | string;
  readonly unit: string;
}

/** How a result came about: the formula as text, the figures that went in and between, and whose they are. */
export interface Working {
  readonly formula: string;
  readonly figures: readonly Figure[];
  readonly sources: readonly CalcSource[];
  /** Conditions, assumptions and what was not counted. They stand beside the number wherever it is shown. */
  readonly notes: readonly string[];
}

/** What a calculation answers: its own named numbers, and the working. */
export interface Answer {
  readonly working: Working;
}

/** What a form or a table needs to know of one field. */
export interface FieldMeta {
  readonly label: string;
  readonly unit: string;
}

type FieldMetas<T> = { readonly [K in Exclude<keyof T, 'working'>]-?: FieldMeta };

/**
 * One question with its answer. `run` expects inputs that passed `inputs`; those who hold text or foreign data
 * go through `runCalculation`. The world's no (a size that no table has, a broken circuit) is a problem, not NaN.
 */
export interface Calculation<I extends z.ZodObject = z.ZodObject, O extends Answer = Answer> {
  readonly id: string;
  readonly title: string;
  /** One sentence: the method and where it holds. */
  readonly about: string;
  /** A strict object; each field carries its label and unit (see `field`). */
  readonly inputs: I;
  /** Label and unit of each number of the answer, in the order in which they are shown. */
  readonly outputs: FieldMetas<O>;
  readonly sources: readonly CalcSource[];
  run(input: z.output<I>): Result<O, CalcProblem>;
}

/** Lets the compiler infer the types of inputs and answer. */
export const calculation = <I extends z.ZodObject, O extends Answer>(
  entry: Calculation<I, O>,
): Calculation<I, O> => entry;

/** A schema with its label and unit ('' for none). Call it last: what is built on the schema loses them. */
export const field = <S extends z.ZodType>(schema: S, label: string, unit = ''): S =>
  schema.meta({ label, unit });

/** Label and unit of an input field. */
export function fieldMeta(schema: z.ZodType): FieldMeta {
  const meta = schema.meta() as Partial<FieldMeta> | undefined;
  return { label: meta?.label ?? '', unit: meta?.unit ?? '' };
}

/** A calculation whose types are forgotten, as a list of many must. */
export type AnyCalculation = Omit<Calculation, 'run' | 'outputs'> & {
  readonly outputs: Readonly<Record<string, FieldMeta>>;
  run(input: never): Result<Answer, CalcProblem>;
};

/** Checks the inputs, then runs. Fields that are missing are named as needs, wrong ones with their reason. */
export function runCalculation(
  entry: AnyCalculation,
  input: Readonly<Record<string, unknown>>,
): Result<Answer, CalcProblem> {
  const parsed = entry.inputs.safeParse(input);
  if (parsed.success) return entry.run(parsed.data as never);
  const missing = parsed.error.issues
    .filter((i) => i.path.length === 1 && input[String(i.path[0])] === undefined)
    .map((i) => String(i.path[0]));
  if (missing.length) return problem({ code: 'needs', inputs: [...new Set(missing)] });
  return problem({
    code: 'bad-input',
    issues: parsed.error.issues.map((i) => ({ path: i.path.join('.'), message: i.message })),
  });
}

/** The named numbers of an answer with label and unit, for a table. Absent ones are left out. */
export function figuresOf(entry: AnyCalculation, answer: Answer): readonly Figure[] {
  const values = answer as unknown as Readonly<Record<string, unknown>>;
  return Object.entries(entry.outputs).flatMap(([key, meta]) => {
    const value = values[key];
    if (value === undefined || value === null) return [];
    const shown = shownValue(value);
    return [{ name: meta.label, value: shown, unit: meta.unit }];
  });
}

function shownValue(value: unknown): number | string {
  if (typeof value === 'number' || typeof value === 'string') return value;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value) && value.every((v) => typeof v === 'string')) return value.join(', ') || 'none';
  return JSON.stringify(value);
}

/** Short forms for the files of calculations. */
export const figure = (name: string, value: number | string, unit = ''): Figure => ({ name, value, unit });

export const answer = <O extends Answer>(value: O): Result<O, CalcProblem> => ok(value);
