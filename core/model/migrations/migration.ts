/** A step from one format version to the next. `up` changes the raw JSON value in place. */
export interface Migration {
  readonly name: string;
  readonly to: number;
  up(raw: Record<string, unknown>): void;
}
