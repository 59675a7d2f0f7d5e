import { ok, type Result } from '../base/result';
import { WireSize, wireSizeText } from '../model/wire-size';
import type { CalcProblem } from './calc-problem';
import { fieldMeta, runCalculation, type AnyCalculation, type Working } from './calculation';
import { choiceWords } from './choice-words';
import { inputKind } from './input-kind';
import { shownNumber } from './quantity-text';
import { inputFields } from './read-inputs';

/** A named value of the question or of the answer. */
export interface ReportLine {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  readonly value: unknown;
}

/** One question with its answer, complete: for the command line, the window and a text to paste. */
export interface CalcReport {
  readonly calculation: string;
  readonly title: string;
  readonly about: string;
  /** What went in. `given: false`: it was left out, and the value stands by default. */
  readonly inputs: readonly (ReportLine & { readonly given: boolean })[];
  readonly results: readonly ReportLine[];
  readonly working: Working;
}

/** Asks a calculation and keeps what was asked beside what was answered. */
export function calcReport(
  entry: AnyCalculation,
  input: Readonly<Record<string, unknown>>,
): Result<CalcReport, CalcProblem> {
  const answer = runCalculation(entry, input);
  if (!answer.ok) return answer;
  const taken = entry.inputs.parse(input) as Readonly<Record<string, unknown>>;
  const values = answer.value as unknown as Readonly<Record<string, unknown>>;
  return ok({
    calculation: entry.id,
    title: entry.title,
    about: entry.about,
    inputs: inputFields(entry).flatMap(([key, schema]) =>
      taken[key] === undefined
        ? []
        : [{ key, ...fieldMeta(schema), value: taken[key], given: input[key] !== undefined }],
    ),
    results: Object.entries(entry.outputs).flatMap(([key, meta]) =>
      values[key] === undefined || values[key] === null ? [] : [{ key, ...meta, value: values[key] }],
    ),
    working: answer.value.working,
  });
}

/** A value for people; lists of objects are told by their number (see `listLines`). */
export function valueText(value: unknown): string {
  if (typeof value === 'number') return shownNumber(value);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return value;
  if (Array.isArray(value)) {
    if (value.length === 0) return 'none';
    const items: readonly unknown[] = value;
    return isObjectList(value) ? `${items.length} listed` : items.map(valueText).join(', ');
  }
  const size = WireSize.safeParse(value);
  if (size.success) return wireSizeText(size.data);
  return value === undefined || value === null ? 'not known' : JSON.stringify(value);
}

export const isObjectList = (value: unknown): value is readonly Readonly<Record<string, unknown>>[] =>
  Array.isArray(value) && value.length > 0 && value.every((v) => typeof v === 'object' && v !== null);

/** The objects of a list, one a line: "id W1, currentA 2". */
const listLines = (value: unknown): string[] =>
  isObjectList(value)
    ? value.map((item) =>
        Object.entries(item)
          .filter(([, v]) => v !== undefined)
          .map(([key, v]) => `${key} ${valueText(v)}`)
          .join(', '),
      )
    : [];

/** An input for people: choices in words. */
export const inputText = (entry: AnyCalculation, line: ReportLine): string => {
  const schema = inputFields(entry).find(([key]) => key === line.key)?.[1];
  const words = schema && inputKind(schema).kind === 'choice' && typeof line.value === 'string';
  return words ? choiceWords(line.value as string) : valueText(line.value);
};

const withUnit = (text: string, unit: string): string => (unit && text !== '' ? `${text} ${unit}` : text);

/** The report as plain text: results first, then the working, so that it can be pasted and read alone. */
export function reportText(entry: AnyCalculation, report: CalcReport): string {
  const table = (lines: readonly { label: string; text: string; list: readonly string[] }[]): string[] => {
    const width = Math.max(0, ...lines.map((l) => l.label.length));
    return lines.flatMap((l) => [
      `  ${l.label.padEnd(width)}  ${l.text}`,
      ...l.list.map((item) => `    ${item}`),
    ]);
  };
  const { formula, figures, sources, notes } = report.working;
  return [
    report.title,
    ...table(
      report.results.map((r) => ({
        label: r.label,
        text: isObjectList(r.value) ? valueText(r.value) : withUnit(valueText(r.value), r.unit),
        list: listLines(r.value),
      })),
    ),
    '',
    `Formula: ${formula}`,
    ...table(figures.map((f) => ({ label: f.name, text: withUnit(valueText(f.value), f.unit), list: [] }))),
    '',
    'Inputs',
    ...table(
      report.inputs.map((i) => ({
        label: i.label,
        text: `${withUnit(inputText(entry, i), isObjectList(i.value) ? '' : i.unit)}${i.given ? '' : ' (by default)'}`,
        list: listLines(i.value),
      })),
    ),
    '',
    ...sources.map(
      (s) => `Source: ${s.title}${s.verified ? '' : ' (not verified)'}${s.note ? `; ${s.note}` : ''}`,
    ),
    ...notes.map((n) => `Note: ${n}`),
    '',
  ].join('\n');
}
