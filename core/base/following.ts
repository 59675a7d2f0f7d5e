/**
 * A table that follows its input: worked out once, then brought from one input to the next. One is kept for each owner, and
 * belongs to the very input that it was last brought to.
 */
export function following<In extends object, Table>(
  make: (input: In) => Table,
  /** May change the table and give it back. */
  bring: (table: Table, before: In, after: In) => Table,
): (owner: object, input: In) => Table {
  const kept = new WeakMap<object, { input: In; table: Table }>();
  return (owner, input) => {
    const slot = kept.get(owner);
    if (!slot) {
      const table = make(input);
      kept.set(owner, { input, table });
      return table;
    }
    if (slot.input !== input) {
      slot.table = bring(slot.table, slot.input, input);
      slot.input = input;
    }
    return slot.table;
  };
}
