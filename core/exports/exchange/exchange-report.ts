import type { ObjectRef } from '../../rules/finding';

/** Something of the project that a file could not hold as it is. */
export interface Loss {
  /** The object, as people name it. */
  readonly item: string;
  readonly why: string;
  readonly object?: ObjectRef | undefined;
}

/** What was written into an exchange file and what was not, kept while it is written. */
export class ExchangeReport {
  private readonly counts = new Map<string, number>();
  private readonly lost: Loss[] = [];

  /** Objects of a kind (a collection of the project, or a word) that stand in the file. */
  wrote(kind: string, count = 1): void {
    this.counts.set(kind, (this.counts.get(kind) ?? 0) + count);
  }

  lose(item: string, why: string, object?: ObjectRef): void {
    this.lost.push({ item, why, object });
  }

  countOf(kind: string): number {
    return this.counts.get(kind) ?? 0;
  }

  get losses(): readonly Loss[] {
    return this.lost;
  }
}
