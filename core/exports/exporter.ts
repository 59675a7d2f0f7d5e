import { z } from 'zod';
import type { Result } from '../base/result';
import type { Harness } from '../derive/harness';
import type { CheckResult } from '../rules/check-harness';
import type { Drawing } from './drawing/drawing';
import type { Paper } from './paper/paper';
import { LabelCode } from './labels/label-code';
import { LabelSheet } from './labels/templates';
import { SheetSize } from './paper/sheet';
import type { Table } from './table';

/** What may be asked of a document beyond the project. Each document reads what concerns it and ignores the rest. */
export const DocumentOptions = z.strictObject({
  /** Harnesses of an order. */
  quantity: z.int().positive().optional(),
  /** Whom a request goes to: only what this supplier has offered. */
  supplier: z.string().min(1).optional(),
  /** Sheets that a large drawing is cut into. */
  sheetSize: SheetSize.optional(),
  /** Sheets that labels are printed on; A4 with labels of the size of each part unless said. */
  labelSheet: LabelSheet.optional(),
  /** Codes on labels; QR unless said. */
  labelCode: LabelCode.optional(),
  /** Position of the first free label on the first sheet, row by row from 1. */
  labelStart: z.int().positive().optional(),
});
export type DocumentOptions = z.infer<typeof DocumentOptions>;

/** What a document is made from. The same input gives the same document. */
export interface DocumentInput {
  readonly harness: Harness;
  readonly check: CheckResult;
  /** The day (YYYY-MM-DD) on which decisions and prices are judged. */
  readonly date: string;
  readonly options?: DocumentOptions;
}

/** A document in an XML format of an open standard. */
export interface XmlForm {
  /** The standard with its version: "UBL 2.1". */
  readonly standard: string;
  /** Of the file name, without dot. */
  readonly extension: string;
  readonly mediaType: string;
  /** The text of the file, baseline hash included; or why there is none, in words. */
  text(input: DocumentInput): Result<string, string>;
}

/** One document of a harness: model in, rows out. Bytes and files are the work of others. */
export interface Exporter {
  /** Name of the document: file name, command line argument, key in the window. */
  readonly id: string;
  readonly title: string;
  /** One line: what the document is for. */
  readonly summary: string;
  /** Options that change it. */
  readonly asks?: readonly (keyof DocumentOptions)[];
  table(input: DocumentInput): Table;
  /** The same as pages, where the document is made as such. */
  paper?(input: DocumentInput): Paper;
  /** The same as one picture at true size, where it is a drawing. */
  drawing?(input: DocumentInput): Drawing;
  /** The same as a file of a standard, for other programs. */
  readonly xml?: XmlForm;
}
