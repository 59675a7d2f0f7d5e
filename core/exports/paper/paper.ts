import type { MarkKind } from './paper-mark';
import type { TitleBlock } from '../../model/title-block';

/** Piece of text with its own look inside a line. */
export interface PaperText {
  readonly text: string;
  readonly look?: 'strong' | 'code' | 'second';
}

/** What stands on pages, top to bottom. How it is drawn is the work of others. */
export type PaperBlock =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'text'; readonly text: readonly PaperText[] }
  /** Label and value, one below the other. */
  | { readonly kind: 'fields'; readonly rows: readonly (readonly [string, string])[] }
  | {
      readonly kind: 'table';
      /** `share` divides the width. */
      readonly columns: readonly {
        readonly title: string;
        readonly share: number;
        readonly align?: 'right';
      }[];
      readonly rows: readonly (readonly string[])[];
    }
  /** Begins a matter: its mark, its name and its state in one line. It is kept together with what follows. */
  | {
      readonly kind: 'matter';
      readonly mark?: MarkKind;
      readonly name: string;
      readonly state: string;
    };

/** A document as pages, before it becomes bytes. */
export interface Paper {
  readonly id: string;
  readonly title: string;
  readonly titleBlock: TitleBlock;
  /** "B (draft)". */
  readonly revision: string;
  /** SHA-256 of the project that it was made from. */
  readonly baseline: string;
  /** The day that it speaks of (YYYY-MM-DD). */
  readonly date: string;
  /** The first stands on every page, all of them on the first. */
  readonly cautions: readonly string[];
  readonly blocks: readonly PaperBlock[];
}
