import { ok, problem, type Result } from '../base/result';
import { readCsv, type CsvCell } from './csv-reader';
import type { ReadField } from './fields';
import type { ImportProblem } from './import-problem';

/** What a column holds. */
export interface FieldSpec<T> {
  readonly read: ReadField<T>;
  /** The column must be there and filled in every row. */
  readonly required?: boolean;
}
export type FieldSpecs = Readonly<Record<string, FieldSpec<unknown>>>;

type ValueOf<S> = S extends FieldSpec<infer T> ? T : never;

/** A row with its values by field; an empty cell has none. */
export interface Row<S extends FieldSpecs> {
  readonly line: number;
  readonly values: {
    readonly [K in keyof S]: S[K] extends { required: true } ? ValueOf<S[K]> : ValueOf<S[K]> | undefined;
  };
  /** A problem at a cell of this row. */
  problem(field: keyof S & string, message: string): ImportProblem;
}

/**
 * A CSV text as rows of read values. The first line names the fields, in any order, whatever the case. Either every
 * cell could be read, or all problems of the file come back and nothing else.
 */
export function readRows<S extends FieldSpecs>(
  file: string,
  text: string,
  specs: S,
): Result<readonly Row<S>[], readonly ImportProblem[]> {
  const csv = readCsv(text);
  if (!csv.ok) return problem([{ file, field: '', ...csv.problem }]);
  const [header, ...lines] = csv.value.rows;
  if (!header) return problem([{ file, line: 1, column: 1, field: '', message: 'the file is empty' }]);
  const { fields, problems } = readHeader(file, header, lines, specs);
  const rows: Row<S>[] = [];
  for (const cells of lines) {
    const read = readLine(file, cells, fields, specs);
    problems.push(...read.problems);
    rows.push(read.row);
  }
  return problems.length ? problem(problems) : ok(rows);
}

function readHeader(
  file: string,
  header: readonly CsvCell[],
  lines: readonly (readonly CsvCell[])[],
  specs: FieldSpecs,
): { fields: readonly string[]; problems: ImportProblem[] } {
  const problems: ImportProblem[] = [];
  const at = (cell: CsvCell, field: string, message: string): void =>
    void problems.push({ file, line: cell.line, column: cell.column, field, message });
  const seen = new Set<string>();
  const fields = header.map((cell, i) => {
    const name = cell.text.trim();
    const field = name.toLowerCase();
    if (field === '') {
      if (lines.some((l) => l[i]?.text.trim())) at(cell, '', 'the column has values but no name');
    } else if (!Object.hasOwn(specs, field))
      at(cell, name, `there is no column "${name}"; known columns are ${Object.keys(specs).join(', ')}`);
    else if (seen.has(field)) at(cell, field, `the column "${name}" stands here twice`);
    seen.add(field);
    return field;
  });
  for (const [field, spec] of Object.entries(specs))
    if (spec.required && !seen.has(field))
      problems.push({
        file,
        line: header[0]?.line ?? 1,
        column: 1,
        field,
        message: `the column "${field}" is missing`,
      });
  return { fields, problems };
}

function readLine<S extends FieldSpecs>(
  file: string,
  cells: readonly CsvCell[],
  fields: readonly string[],
  specs: S,
): { row: Row<S>; problems: ImportProblem[] } {
  const problems: ImportProblem[] = [];
  const values: Record<string, unknown> = {};
  const first = cells[0] as CsvCell;
  const rowProblem = (field: string, message: string): ImportProblem => {
    const cell = cells[fields.indexOf(field)] ?? first;
    return { file, line: cell.line, column: cell.column, field, message };
  };
  // A missing separator shifts every value behind it: a short row is not taken for one with empty cells at its end.
  if (cells.length !== fields.length) {
    const last = cells[Math.min(cells.length, fields.length + 1) - 1] as CsvCell;
    const message = `the row has ${cells.length} cells, the header ${fields.length}`;
    problems.push({
      file,
      line: last.line,
      column: last.column,
      field: fields[last.column - 1] ?? '',
      message,
    });
  } else
    fields.forEach((field, i) => {
      const spec = Object.hasOwn(specs, field) ? specs[field] : undefined;
      const text = cells[i]?.text.trim() ?? '';
      if (!spec) return;
      if (text === '') {
        if (spec.required) problems.push(rowProblem(field, 'must be given'));
        return;
      }
      const value = spec.read(text);
      if (value.ok) values[field] = value.value;
      else problems.push(rowProblem(field, value.problem));
    });
  return { row: { line: first.line, values: values as Row<S>['values'], problem: rowProblem }, problems };
}
