import type { CalcSource } from '../calculation';

/** A table as a standard or handbook prints it. `source.verified` is false where the rows were recalled, not seen. */
export interface PublishedTable<Row> {
  readonly source: CalcSource;
  readonly edition: string;
  readonly rows: readonly Row[];
}
