import { readFileSync } from 'node:fs';
import type { Project } from '@latchwork/core/model/project';
import { parseProject } from '@latchwork/core/model/parse';

/**
 * The saved project of format version 1. Its lines stay as they are, since old files must open for ever; a field that
 * is added to version 1 as an optional one is added to it by hand, so that the sample keeps covering the format.
 */
export const V1_TEXT = readFileSync(new URL('../../files/projects/v1.latchwork', import.meta.url), 'utf8');

export function v1Project(): Project {
  const parsed = parseProject(V1_TEXT);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problem));
  return parsed.value;
}

// eslint-disable-next-line @typescript-eslint/no-explicit-any
export type Raw = any;

/** The text of the sample after a change to its raw JSON. */
export function changed(change: (raw: Raw) => void): string {
  const raw: Raw = JSON.parse(V1_TEXT);
  change(raw);
  return JSON.stringify(raw);
}
