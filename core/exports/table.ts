import { z } from 'zod';
import { ObjectRef } from '../rules/finding';

export const Column = z.strictObject({
  key: z.string(),
  title: z.string(),
  unit: z.string().optional(),
  align: z.enum(['left', 'right']).optional(),
});
export type Column = z.infer<typeof Column>;

/** A cell. Null is "not known", never zero and never "none". */
export const Cell = z.union([z.string(), z.number(), z.null()]);
export type Cell = z.infer<typeof Cell>;

/**
 * A document as rows, before it becomes bytes. `objects[i]` are the objects that `rows[i]` speaks of, so that a
 * view can select them; files leave them out.
 */
export const Table = z.strictObject({
  id: z.string(),
  title: z.string(),
  /** What stands above the columns: the title block, the limit set, the cautions. */
  head: z.array(z.tuple([z.string(), z.string()])),
  columns: z.array(Column),
  rows: z.array(z.record(z.string(), Cell)),
  objects: z.array(z.array(ObjectRef)),
});
export type Table = z.infer<typeof Table>;

/** A row together with the objects that it speaks of. */
export interface RowOf<K extends string> {
  readonly cells: Readonly<Record<K, Cell>>;
  readonly objects: readonly ObjectRef[];
}

/** The heading of a column with its unit: "Length (mm)". */
export const columnHeading = (column: Column): string =>
  column.unit ? `${column.title} (${column.unit})` : column.title;
