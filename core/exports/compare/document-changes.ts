import type { DocumentInput, Exporter } from '../exporter';
import type { Table } from '../table';

/** How the rows of one document differ. */
export interface DocumentChange {
  readonly exporter: Exporter;
  readonly added: number;
  readonly removed: number;
  readonly changed: number;
  /** Lines of the head that differ, those of the revision itself aside. */
  readonly head: readonly string[];
}

/** Every paper bears these anew with each revision. */
const OF_EVERY_REVISION = new Set(['Revision', 'Date of issue', 'Approved by']);

/** Documents that say something else after the change than before; under a new revision all are issued again. */
export const documentChanges = (
  exporters: readonly Exporter[],
  before: DocumentInput,
  after: DocumentInput,
): readonly DocumentChange[] =>
  exporters.flatMap((exporter) => {
    const change = { exporter, ...tableChange(exporter.table(before), exporter.table(after)) };
    return change.added + change.removed + change.changed + change.head.length > 0 ? [change] : [];
  });

/** Rows that are equal are left out of account; of the others those of the same objects are one row that changed. */
export function tableChange(before: Table, after: Table): Omit<DocumentChange, 'exporter'> {
  // A row more moves the numbers of all that follow: that alone changes none of them.
  const skip = isRunning(before) && isRunning(after) ? 1 : 0;
  const [was, is] = [rowsOf(before, skip), rowsOf(after, skip)];
  const gone = without(was, is);
  const come = without(is, was);
  const left = new Map<string, number>();
  for (const row of gone) left.set(row.of, (left.get(row.of) ?? 0) + 1);
  let changed = 0;
  for (const { of } of come) {
    const n = left.get(of) ?? 0;
    if (n > 0) {
      changed++;
      left.set(of, n - 1);
    }
  }
  return {
    added: come.length - changed,
    removed: gone.length - changed,
    changed,
    head: headChange(before, after),
  };
}

interface Row {
  readonly text: string;
  /** What the row speaks of. */
  readonly of: string;
}

/** Whether the first column does nothing but count the rows. */
function isRunning({ columns: [first], rows }: Table): boolean {
  return first !== undefined && rows.every((row, i) => row[first.key] === i + 1);
}

/** `skip` columns at the front are left out of account. */
function rowsOf(table: Table, skip: number): readonly Row[] {
  const columns = table.columns.slice(skip);
  return table.rows.map((row, i) => {
    const objects = table.objects[i] ?? [];
    const named = columns.map((c) => row[c.key]).find((cell) => typeof cell === 'string');
    return {
      text: JSON.stringify(columns.map((c) => [c.key, row[c.key] ?? null])),
      of: objects.length > 0 ? JSON.stringify(objects) : String(named ?? ''),
    };
  });
}

/** Rows of the first list that have no equal in the second, each counted. */
function without(rows: readonly Row[], others: readonly Row[]): readonly Row[] {
  const there = new Map<string, number>();
  for (const { text } of others) there.set(text, (there.get(text) ?? 0) + 1);
  return rows.filter(({ text }) => {
    const n = there.get(text) ?? 0;
    if (n === 0) return true;
    there.set(text, n - 1);
    return false;
  });
}

function headChange(before: Table, after: Table): readonly string[] {
  const lines = (table: Table): Map<string, string> => {
    const out = new Map<string, string>();
    for (const [label, value] of table.head) out.set(label, `${out.get(label) ?? ''}\n${value}`);
    return out;
  };
  const [was, is] = [lines(before), lines(after)];
  const labels = new Set([...was.keys(), ...is.keys()]);
  return [...labels].filter((l) => !OF_EVERY_REVISION.has(l) && was.get(l) !== is.get(l));
}

/** "2 rows added, 1 changed". */
export function documentChangeText({ added, removed, changed, head }: DocumentChange): string {
  const rows = ([['added', added], ['removed', removed], ['changed', changed]] as const).filter(([, n]) => n > 0);
  const counted = rows.map(([word, n]) => `${n} ${n === 1 ? 'row' : 'rows'} ${word}`).join(', ');
  return counted || `head: ${head.join(', ').toLowerCase()}`;
} // prettier-ignore
