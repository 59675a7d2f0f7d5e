import { readFileSync } from 'node:fs';
import type { Project } from '@latchwork/core/model/project';
import { parseProject } from '@latchwork/core/model/parse';

const read = (name: string): string =>
  readFileSync(new URL(`../../files/projects/${name}`, import.meta.url), 'utf8');

/** A saved project of format version 1. Its lines stay as they are: old files must open for ever. */
export const V1_TEXT = read('v1.latchwork');

/**
 * The saved project of the version that is written now, with every field that it allows. A field that is added as an
 * optional one is added to it by hand.
 */
export const SAMPLE_TEXT = read('v2.latchwork');

export function sampleProject(): Project {
  const parsed = parseProject(SAMPLE_TEXT);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problem));
  return parsed.value;
}

// eslint-disable-next-line @typescript-eslint/no-explicit-any
export type Raw = any;

/** The text of the sample after a change to its raw JSON. */
export function changed(change: (raw: Raw) => void): string {
  const raw: Raw = JSON.parse(SAMPLE_TEXT);
  change(raw);
  return JSON.stringify(raw);
}
