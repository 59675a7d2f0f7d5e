import { z } from 'zod';
import { TitleBlock } from '../../model/title-block';
import { Drawing } from '../drawing/drawing';
import { Point } from '../../base/point';
import { MarkKind } from './paper-mark';
import { Sheet } from './sheet';

/** Piece of text with its own look inside a line. */
export const PaperText = z.strictObject({
  text: z.string(),
  look: z.enum(['strong', 'code', 'second']).optional(),
});
export type PaperText = z.infer<typeof PaperText>;

/** What stands on pages, top to bottom. How it is drawn is the work of others. */
export const PaperBlock = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('heading'), text: z.string() }),
  z.strictObject({ kind: z.literal('text'), text: z.array(PaperText) }),
  /** Label and value, one below the other. */
  z.strictObject({ kind: z.literal('fields'), rows: z.array(z.tuple([z.string(), z.string()])) }),
  z.strictObject({
    kind: z.literal('table'),
    /** `share` divides the width. */
    columns: z.array(
      z.strictObject({
        title: z.string(),
        share: z.number().positive(),
        align: z.literal('right').optional(),
      }),
    ),
    rows: z.array(z.array(z.string())),
  }),
  /** A picture at true size, or smaller where `scale` says so; it is kept whole. */
  z.strictObject({
    kind: z.literal('drawing'),
    drawing: Drawing,
    /** Paper size over true size; 1 unless said. The caption tells it. No drawing is legible beyond these. */
    scale: z.number().min(1e-4).max(1e4).optional(),
    caption: z.string().optional(),
    /** A form to write in: nothing is measured on it, so its scale is not told. */
    form: z.literal(true).optional(),
  }),
  /** What follows begins a page. */
  z.strictObject({ kind: z.literal('page-break') }),
  /** A page that is one picture, laid out by `sheetPlan`. The layers stand at true size, mm from the top left of the sheet. */
  z.strictObject({
    kind: z.literal('sheet'),
    sheet: Sheet,
    /** No frame, cautions and title block: stock that is cut apart. The picture says itself what it is. */
    bare: z.literal(true).optional(),
    layers: z.array(
      z.strictObject({
        drawing: Drawing,
        /** Where the origin of the drawing lies on the sheet. */
        at: Point,
        /** What of the sheet it is confined to. */
        clip: z
          .strictObject({ minX: z.number(), minY: z.number(), maxX: z.number(), maxY: z.number() })
          .optional(),
      }),
    ),
  }),
  /** Begins a matter: its mark, its name and its state in one line. It is kept together with what follows. */
  z.strictObject({
    kind: z.literal('matter'),
    mark: MarkKind.optional(),
    name: z.string(),
    state: z.string(),
  }),
]);
export type PaperBlock = z.infer<typeof PaperBlock>;

/** A document as pages, before it becomes bytes. */
export const Paper = z.strictObject({
  id: z.string(),
  title: z.string(),
  titleBlock: TitleBlock,
  /** "B (draft)". */
  revision: z.string(),
  /** SHA-256 of the project that it was made from. */
  baseline: z.string(),
  /** The day that it speaks of (YYYY-MM-DD). */
  date: z.iso.date(),
  /** Of the pages that hold blocks; `sheetOfPaper` says what it is where it is not named. */
  sheet: Sheet.optional(),
  /** The first stands on every page, all of them on the first. */
  cautions: z.array(z.string()),
  blocks: z.array(PaperBlock),
});
export type Paper = z.infer<typeof Paper>;
