import { basename } from 'node:path';
import { partsToEmbed, parseCatalogue } from '@latchwork/core/catalogue/parse-catalogue';
import { importCatalogueCsv } from '@latchwork/core/import/catalogue-csv';
import { importProblemText } from '@latchwork/core/import/import-problem';
import { openProblemText } from '@latchwork/core/model/problem';
import { type Part } from '@latchwork/core/model/parts/part';
import { readText } from './read-text';

export interface ReadCatalogues {
  readonly parts: readonly Part[];
  readonly problems: readonly string[];
  /** What was left out of a table, for the user to know. */
  readonly remarks: readonly string[];
}

/** Catalogues in JSON or CSV, told apart by what they begin with. A part may stand in one of them only. */
export async function readCatalogues(paths: readonly string[]): Promise<ReadCatalogues> {
  const problems: string[] = [];
  const remarks: string[] = [];
  const parts: Part[] = [];
  const fileOf = new Map<string, string>();
  for (const path of paths) {
    const text = await readText(path);
    if (!text.ok) {
      problems.push(text.problem);
      continue;
    }
    for (const part of partsOf(path, text.value, problems, remarks)) {
      const name = `${part.partNumber} of ${part.maker}`;
      const before = fileOf.get(name);
      if (before !== undefined) problems.push(`${path}: ${name} stands in ${before} already.`);
      fileOf.set(name, path);
      parts.push(part);
    }
  }
  return { parts, problems, remarks };
}

function partsOf(path: string, text: string, problems: string[], remarks: string[]): readonly Part[] {
  if (/^\ufeff?\s*\{/.test(text)) {
    const catalogue = parseCatalogue(text);
    if (catalogue.ok) return partsToEmbed(catalogue.value);
    problems.push(`${path}: ${openProblemText(catalogue.problem)}`);
    return [];
  }
  const table = importCatalogueCsv(basename(path), text);
  if (!table.ok) {
    problems.push(...table.problem.map(importProblemText));
    return [];
  }
  remarks.push(...table.value.leftOut.map(importProblemText));
  return table.value.catalogue.parts;
}
