/** What can be told of a text that is no JSON any more: the fields and objects that stand whole on a line of their own. */
export interface ReadLines {
  readonly fields: Readonly<Record<string, unknown>>;
  /** Entries of the lists, by the name of the list. */
  readonly lists: ReadonlyMap<string, readonly unknown[]>;
  /** Numbers of lines that hold something and could not be read, from 1. */
  readonly unread: readonly number[];
}

const LIST_BEGINS = /^ {2}"(\w+)": \[$/;
const FIELD = /^ {2}"(\w+)": (.+?),?$/;
const ENTRY = /^ {4}(.+?),?$/;
const FRAME = /^(?:\s*|\{|\}| {2}\],?)$/;

/** Reads a broken file of ours line by line: it is written with one object on each. */
export function readLines(text: string): ReadLines {
  const fields: Record<string, unknown> = {};
  const lists = new Map<string, unknown[]>();
  const unread: number[] = [];
  let list: unknown[] | null = null;
  text.split(/\r?\n/).forEach((line, i) => {
    const begins = LIST_BEGINS.exec(line);
    const entry = ENTRY.exec(line);
    const field = FIELD.exec(line);
    if (begins) lists.set(begins[1] as string, (list = []));
    else if (entry && list) {
      const value = valueOf(entry[1] as string);
      if (value === undefined) unread.push(i + 1);
      else list.push(value);
    } else if (field) {
      list = null;
      const value = valueOf(field[2] as string);
      if (value === undefined) unread.push(i + 1);
      else fields[field[1] as string] = value;
    } else if (!FRAME.test(line)) unread.push(i + 1);
  });
  return { fields, lists, unread };
}

function valueOf(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}
