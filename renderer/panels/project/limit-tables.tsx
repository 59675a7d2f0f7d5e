import { AMPACITY_TABLES } from '@latchwork/core/calc/ampacity-base';
import { choiceWords } from '@latchwork/core/calc/choice-words';
import { pullForce } from '@latchwork/core/calc/pull-force';
import { creepage } from '@latchwork/core/calc/creepage';
import { TABLE_IDS, type TableId } from '@latchwork/core/model/limit-sets/limit-ids';
import { useApp } from '../../app/store';
import { ChoiceField } from '../../ui/choice-field';
import { attempt } from '../inspector/fields';

/** What can be chosen for each question; a new question does not compile until it says so. */
export const TABLES: Readonly<Record<TableId, readonly string[]>> = {
  'pull-force': pullForce.inputs.shape.table.options,
  ampacity: AMPACITY_TABLES,
  'material-group': creepage.inputs.shape.group.options,
};

const LABELS: Readonly<Record<TableId, string>> = {
  'pull-force': 'Pull-out force by',
  ampacity: 'Current of wires by',
  'material-group': 'Material group',
};

/** Which published table answers a question that several answer differently. */
export function LimitTables() {
  const limitSet = useApp((s) => s.history.project.limitSet);
  const tables = limitSet.tables ?? [];
  const choose = (id: TableId, table: string): void => {
    const others = tables.filter((t) => t.id !== id);
    const changed = table === '' ? others : [...others, { id, table }];
    attempt({ id: 'project.use-limit-set', args: { limitSet: { ...limitSet, tables: changed } } });
  };
  return (Object.keys(TABLE_IDS) as TableId[]).map((id) => {
    const chosen = tables.find((t) => t.id === id)?.table ?? '';
    // A name that this version does not know is shown as it stands, not dropped.
    const known = TABLES[id].includes(chosen) || chosen === '';
    return (
      <ChoiceField
        key={id}
        label={LABELS[id]}
        name={`limit.${id}`}
        value={chosen}
        choices={[
          { value: '', text: 'not chosen: cannot verify' },
          ...(known ? [] : [{ value: chosen, text: chosen }]),
          ...TABLES[id].map((value) => ({ value, text: choiceWords(value) })),
        ]}
        choose={(table) => choose(id, table)}
      />
    );
  });
}
