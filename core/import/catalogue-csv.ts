import { ok, problem, type Result } from '../base/result';
import { CATALOGUE_FORMAT, type Catalogue } from '../catalogue/catalogue';
import { idFromText } from '../model/ids';
import { Part } from '../model/parts/part';
import { CATALOGUE_COLUMNS, placeOf, type CatalogueField } from './catalogue-columns';
import { partOfRow } from './catalogue-parts';
import type { ImportProblem } from './import-problem';
import { readRows } from './read-rows';

export interface ImportedCatalogue {
  readonly catalogue: Catalogue;
  /** Values that were left out because the kind has no place for them, each with its cell. */
  readonly leftOut: readonly ImportProblem[];
}

/**
 * A catalogue CSV, one part a row. The revision is made from the text, so that two states of a table can be told
 * apart; ids are made from maker and part number, so that the same part keeps its id from one state to the next.
 */
export function importCatalogueCsv(
  file: string,
  text: string,
): Result<ImportedCatalogue, readonly ImportProblem[]> {
  const rows = readRows(file, text, CATALOGUE_COLUMNS);
  if (!rows.ok) return rows;
  const about = { name: file.replace(/\.[^.]*$/, '') || file, revision: idFromText(text).slice(0, 8) };
  const problems: ImportProblem[] = [];
  const leftOut: ImportProblem[] = [];
  const parts: Part[] = [];
  const lineOf = new Map<string, number>();
  for (const row of rows.value) {
    const { kind } = row.values;
    for (const field of Object.keys(row.values) as CatalogueField[]) {
      const place = placeOf(kind, field);
      if (place === 'refused') problems.push(row.problem(field, `a ${kind} has no ${field}`));
      else if (place === 'left-out') leftOut.push(row.problem(field, `a ${kind} has no ${field}; not kept`));
    }
    const made = partOfRow(row, about);
    if ('problems' in made) {
      problems.push(...made.problems);
      continue;
    }
    const before = lineOf.get(made.part.id);
    if (before !== undefined)
      problems.push(
        row.problem('part', `${made.part.partNumber} of ${made.part.maker} stands in line ${before} already`),
      );
    lineOf.set(made.part.id, row.line);
    // Whatever the readers let through must be a record: if it is not, a reader is wrong.
    parts.push(Part.parse(made.part));
  }
  if (problems.length) return problem(problems);
  return ok({ catalogue: { format: CATALOGUE_FORMAT, formatVersion: 1, ...about, parts }, leftOut });
}
