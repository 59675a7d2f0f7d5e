import { ok, problem, type Result } from '../base/result';

/** A field of a CSV text: the line on which it starts and its number in the row, both from 1. */
export interface CsvCell {
  readonly text: string;
  readonly line: number;
  readonly column: number;
}

export type Delimiter = ',' | ';' | '\t';

export interface CsvTable {
  readonly delimiter: Delimiter;
  readonly rows: readonly (readonly CsvCell[])[];
}

export interface CsvProblem {
  readonly line: number;
  readonly column: number;
  readonly message: string;
}

/**
 * Reads comma-, semicolon- or tab-separated text (RFC 4180, with any line ends and a byte-order mark). Quoted fields
 * may hold separators, doubled quotes and line breaks. Lines without any text are left out. What is not clean CSV is
 * named and not mended.
 */
export function readCsv(text: string): Result<CsvTable, CsvProblem> {
  const body = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  const delimiter = detectDelimiter(body);
  const rows: CsvCell[][] = [];
  let row: CsvCell[] = [];
  let line = 1;
  let i = 0;

  const endRow = (): void => {
    if (row.some((c) => c.text.trim() !== '')) rows.push(row);
    row = [];
  };

  while (i < body.length) {
    const column = row.length + 1;
    const start = line;
    const quote = openingQuote(body, i);
    let value = '';
    if (quote >= 0) {
      let at = quote + 1;
      for (;;) {
        const next = body.indexOf('"', at);
        if (next < 0) return problem({ line: start, column, message: 'the opening quote is never closed' });
        value += body.slice(at, next);
        if (body[next + 1] !== '"') {
          i = next + 1;
          break;
        }
        value += '"';
        at = next + 2;
      }
      line += lineBreaksIn(value);
      while (body[i] === ' ') i++;
      if (i < body.length && body[i] !== delimiter && body[i] !== '\r' && body[i] !== '\n')
        return problem({
          line,
          column,
          message: 'text follows the closing quote; a quote inside a field is written twice',
        });
    } else {
      const end = endOfPlain(body, i, delimiter);
      value = body.slice(i, end);
      if (value.includes('"'))
        return problem({
          line,
          column,
          message:
            'a quote stands inside a field that is not quoted; quote the field and write the quote twice',
        });
      i = end;
    }
    row.push({ text: value, line: start, column });
    if (body[i] === delimiter) {
      i++;
      if (i < body.length) continue;
      row.push({ text: '', line, column: row.length + 1 });
    }
    if (body[i] === '\r' && body[i + 1] === '\n') i++;
    i++;
    line++;
    endRow();
  }
  return ok({ delimiter, rows });
}

/** Where a quoted field opens (spaces before the quote are let pass), or -1. */
function openingQuote(text: string, from: number): number {
  let i = from;
  while (text[i] === ' ') i++;
  return text[i] === '"' ? i : -1;
}

function endOfPlain(text: string, from: number, delimiter: Delimiter): number {
  let i = from;
  while (i < text.length && text[i] !== delimiter && text[i] !== '\n' && text[i] !== '\r') i++;
  return i;
}

const lineBreaksIn = (text: string): number => (text.match(/\r\n|\r|\n/g) ?? []).length;

/** The separator that the first line uses most, outside quotes; a single column is taken as comma-separated. */
function detectDelimiter(text: string): Delimiter {
  const counts = { ',': 0, ';': 0, '\t': 0 };
  let quoted = false;
  let seen = false;
  for (const c of text) {
    if (c === '"') quoted = !quoted;
    if (quoted) continue;
    if (c === '\n' || c === '\r') {
      if (seen) break;
      continue;
    }
    seen = true;
    if (c === ',' || c === ';' || c === '\t') counts[c]++;
  }
  const best = (Object.keys(counts) as Delimiter[]).reduce((a, b) => (counts[b] > counts[a] ? b : a));
  return best;
}
