import type { Part, PartKind } from '../../model/parts/part';
import type { ObjectRef } from '../../rules/finding';

/** Who brings a part: bought with the harness, or there already on the board or in the equipment. */
export type Supply = 'harness' | 'equipment';
export type Unit = 'pcs' | 'm';

/** What makes two objects one line of the list. A colour is a line of its own: reels are bought by colour. */
export interface LineKey {
  readonly kind: PartKind;
  /** Undefined where an object needs such a part but none was chosen. */
  readonly part: Part | undefined;
  /** Null for parts that are not ordered by colour; empty where a colour is needed and not chosen. */
  readonly colour: string | null;
  readonly supply: Supply;
  readonly unit: Unit;
}

/** One object that is counted into a line. */
export interface Use {
  /** Pieces, or millimetres where the unit is metres. Undefined: not known, and said so. */
  readonly amount: number | undefined;
  readonly designator: string;
  readonly object: ObjectRef;
  readonly remark?: string | undefined;
}

export interface PartLine extends LineKey {
  readonly uses: readonly Use[];
}

/** Puts uses of the same part together, in the order in which they come. */
export class PartLines {
  private readonly lines = new Map<string, { key: LineKey; uses: Use[] }>();

  add(key: LineKey, use: Use): void {
    const text = [key.kind, key.part?.id ?? '', key.colour ?? '-', key.supply, key.unit].join(' ');
    const line = this.lines.get(text);
    if (line) line.uses.push(use);
    else this.lines.set(text, { key, uses: [use] });
  }

  list(): PartLine[] {
    return [...this.lines.values()].map(({ key, uses }) => ({ ...key, uses }));
  }
}
