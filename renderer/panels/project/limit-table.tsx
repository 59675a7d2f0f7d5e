import { useApp } from '../../app/store';
import { NumberField } from '../../ui/number-field';
import { attempt } from '../inspector/fields';

/** The limits that the rules compare with, each with where it comes from. A changed value says so. */
export function LimitTable() {
  const { limits } = useApp((s) => s.history.project.limitSet);
  return limits.map((limit) => (
    <NumberField
      key={limit.id}
      label={limit.id.replaceAll('-', ' ')}
      unit={limit.unit}
      name={`limit.${limit.id}`}
      value={limit.value}
      hint={
        <>
          {limit.source}
          {limit.edition ? `, ${limit.edition}` : ''}
          {limit.verified ? '' : ' · not verified'}
        </>
      }
      commit={(value) =>
        value === null
          ? 'A limit needs a value.'
          : attempt({
              id: 'project.set-limit',
              args: { limit: { ...limit, value, source: 'typed in this project', verified: false } },
            })
      }
    />
  ));
}
