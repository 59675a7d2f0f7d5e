import type { CalcProblem } from '@latchwork/core/calc/calc-problem';
import { type CalcReport, calcReport } from '@latchwork/core/calc/calc-report';
import { type AnyCalculation, fieldMeta } from '@latchwork/core/calc/calculation';
import { inputFields, readInputs, type RowTexts } from '@latchwork/core/calc/read-inputs';

/** What stands in the form: texts as typed, and rows of texts for lists. */
export type FormTexts = Readonly<Record<string, string | readonly RowTexts[]>>;

export interface Asked {
  readonly report: CalcReport | null;
  /** Inputs that are missing, by their labels. */
  readonly needs: readonly string[];
  /** What is wrong at a field, by its key; in a list by "key.row.column". */
  readonly atFields: ReadonlyMap<string, string>;
  /** Why there is no answer although every field can be read. */
  readonly reason: string | null;
}

/** Answers what stands in the form. */
export function askCalculation(entry: AnyCalculation, texts: FormTexts): Asked {
  const read = readInputs(entry, texts);
  const report = read.ok ? calcReport(entry, read.value) : read;
  const none = { report: null, needs: [], atFields: new Map<string, string>(), reason: null };
  if (report.ok) return { ...none, report: report.value };
  return { ...none, ...problemOf(entry, report.problem) };
}

function problemOf(entry: AnyCalculation, p: CalcProblem): Partial<Asked> {
  switch (p.code) {
    case 'needs':
      return { needs: p.inputs.map((text) => inLabels(entry, text)) };
    case 'bad-input': {
      const known = new Set(inputFields(entry).map(([key]) => key));
      const atFields = new Map(p.issues.map((i) => [i.path, issueWords(i.message)]));
      const elsewhere = p.issues.filter((i) => !known.has(i.path.split('.')[0] ?? ''));
      return { atFields, reason: elsewhere.map((i) => issueWords(i.message)).join('; ') || null };
    }
    case 'out-of-range':
      return { reason: `${inLabels(entry, p.input)} is ${p.value}: ${p.range}` };
    case 'no-solution':
      return { reason: `${p.reason}${p.objects.length ? ` (${p.objects.join(', ')})` : ''}` };
  }
}

/** Keys in a text ("catalogueOhmPerKm or areaMm2") as the labels that the form shows. */
function inLabels(entry: AnyCalculation, text: string): string {
  const labels = new Map(inputFields(entry).map(([key, schema]) => [key, fieldMeta(schema).label]));
  return text.replace(/\b[a-z]\w*\b/g, (word) => labels.get(word) ?? word);
}

/** The words of the schema library in ours. */
function issueWords(message: string): string {
  const bound = /^Too (?:small|big): expected (\w+) to (?:be|have) (.+)$/.exec(message);
  if (bound) {
    const limit = (bound[2] as string).replace(/^(<|>)(=?)/, (_, sign: string, equal: string) =>
      equal ? `${sign === '<' ? 'at most' : 'at least'} ` : `${sign === '<' ? 'less' : 'greater'} than `,
    );
    return bound[1] === 'array' ? `needs ${limit}` : `must be ${limit}`;
  }
  if (/expected int/.test(message)) return 'must be a whole number';
  if (/received undefined/.test(message)) return 'needed here';
  return message;
}
