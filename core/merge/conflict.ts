import type { Collection } from '../model/project';

export type Side = 'mine' | 'theirs';

/** A value that both sides changed, each in its own way; undefined where a side has it no more. */
export interface Conflict {
  /** Names the conflict among the choices. */
  readonly key: string;
  readonly collection: Collection | 'project';
  readonly id: string;
  /** Null where it is about the object as a whole. */
  readonly field: string | null;
  readonly base: unknown;
  readonly mine: unknown;
  readonly theirs: unknown;
}

export type Choices = ReadonlyMap<string, Side>;

/** Meets conflicts during a merge: takes the side that was chosen, or keeps the conflict for a choice. */
export class Meeting {
  readonly open: Conflict[] = [];

  constructor(private readonly choices: Choices) {}

  take(about: Omit<Conflict, 'key'>): unknown {
    const side = this.sideOf(about);
    return side === null ? about.mine : about[side];
  }

  /** The chosen side, or null where none is chosen yet. */
  sideOf(about: Omit<Conflict, 'key'>): Side | null {
    const key = [about.collection, about.id, about.field ?? ''].join(' ');
    const side = this.choices.get(key) ?? null;
    if (side === null && !this.open.some((c) => c.key === key)) this.open.push({ key, ...about });
    return side;
  }
}
