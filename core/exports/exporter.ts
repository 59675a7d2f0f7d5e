import type { Harness } from '../derive/harness';
import type { CheckResult } from '../rules/check-harness';
import type { Paper } from './paper/paper';
import type { Table } from './table';

/** One document of a harness: model in, rows out. Bytes and files are the work of others. */
export interface Exporter {
  /** Name of the document: file name, command line argument, key in the window. */
  readonly id: string;
  readonly title: string;
  /** One line: what the document is for. */
  readonly summary: string;
  /** `date` (YYYY-MM-DD) is the day on which decisions are judged, for the documents that tell their standing. */
  table(harness: Harness, check: CheckResult, date?: string): Table;
  /** The same as pages, where the document is made as such. */
  paper?(harness: Harness, check: CheckResult, date: string): Paper;
}
