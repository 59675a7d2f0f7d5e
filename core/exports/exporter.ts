import type { Harness } from '../derive/harness';
import type { CheckResult } from '../rules/check-harness';
import type { Table } from './table';

/** One document of a harness: model in, rows out. Bytes and files are the work of others. */
export interface Exporter {
  /** Name of the document: file name, command line argument, key in the window. */
  readonly id: string;
  readonly title: string;
  /** One line: what the document is for. */
  readonly summary: string;
  table(harness: Harness, check: CheckResult): Table;
}
