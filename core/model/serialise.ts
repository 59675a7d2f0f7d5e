import { Catalogue } from '../catalogue/catalogue';
import { Project } from './project';

/**
 * The file's text: two-space indent at the top, one object per line in the arrays, keys in schema order, a line
 * feed at the end. Parsing first makes the order independent of how the object was built, and refuses to write
 * what could not be read back.
 */
export const serialiseProject = (project: Project): string => linesOf(Project.parse(project));

export const serialiseCatalogue = (catalogue: Catalogue): string => linesOf(Catalogue.parse(catalogue));

function linesOf(value: Record<string, unknown>): string {
  const fields = Object.entries(value)
    .filter(([, v]) => v !== undefined)
    .map(([key, v]) => `  ${JSON.stringify(key)}: ${fieldText(v)}`);
  return `{\n${fields.join(',\n')}\n}\n`;
}

function fieldText(value: unknown): string {
  if (!Array.isArray(value) || value.length === 0) return JSON.stringify(value);
  return `[\n${value.map((item) => `    ${JSON.stringify(item)}`).join(',\n')}\n  ]`;
}
