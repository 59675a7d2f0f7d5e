import type { LimitSet } from '@latchwork/core/model/limit-set';
import { LIMIT_SETS } from '@latchwork/core/model/limit-sets/index';
import { useApp } from '../../app/store';
import { ChoiceField } from '../../ui/choice-field';
import { attempt } from '../inspector/fields';
import { askLimitSet } from './compare-limit-set';

const OWN = '';

/** Shows what the set would change before it is taken. */
async function takeIfWanted(limitSet: LimitSet): Promise<void> {
  if (await askLimitSet(limitSet)) attempt({ id: 'project.use-limit-set', args: { limitSet } });
}

/** Takes one of the shipped sets for the project; values that were changed in it go with the old set, undo brings them back. */
export function LimitSetChoice() {
  const current = useApp((s) => s.history.project.limitSet);
  const shipped = LIMIT_SETS.find((s) => JSON.stringify(s) === JSON.stringify(current));
  return (
    <ChoiceField
      label="Limit set"
      name="limitSet"
      value={shipped?.name ?? OWN}
      choices={[
        ...(shipped ? [] : [{ value: OWN, text: `${current.name}, changed in this project` }]),
        ...LIMIT_SETS.map((s) => ({ value: s.name, text: `${s.name}, as shipped` })),
      ]}
      choose={(name) => {
        const limitSet = LIMIT_SETS.find((s) => s.name === name);
        if (limitSet && limitSet !== shipped) void takeIfWanted(limitSet);
      }}
    />
  );
}
