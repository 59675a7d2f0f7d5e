import type { Group } from '@latchwork/core/model/wire';
import { useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { ChoiceField, choicesOf } from '../../ui/choice-field';
import { LengthField } from '../../ui/length-field';
import { DesignatorField, attempt } from './fields';
import { RefLink } from './ref-link';
import { CardHead, Section } from './section';

type Change = Extract<Parameters<typeof attempt>[0], { id: 'group.edit' }>['args']['change'];

/** Wires that are handled together. */
export function GroupCard({ group }: { group: Group }) {
  const dispatch = useApp((s) => s.dispatch);
  const edit = (change: Change): string | null =>
    attempt({ id: 'group.edit', args: { id: group.id, change } });
  const twisted = group.form.includes('twisted');
  const shielded = group.form.includes('shielded');
  return (
    <>
      <CardHead name={group.designator} kind="group of wires" />
      <Section title="Group">
        <DesignatorField
          value={group.designator}
          call={(designator) => ({ id: 'group.edit', args: { id: group.id, change: { designator } } })}
        />
        <ChoiceField
          label="Form"
          name="form"
          value={group.form}
          choices={choicesOf(['twisted', 'shielded', 'twisted-shielded', 'bundled'] as const)}
          choose={(form) => void edit({ form })}
        />
        {twisted ? (
          <LengthField
            label="Lay"
            name="layMm"
            valueMm={group.layMm}
            hint="length of one full turn"
            commit={(layMm) => edit({ layMm })}
          />
        ) : null}
        {twisted || shielded ? (
          <LengthField
            label="Open ends"
            name="exposedMm"
            valueMm={group.exposedMm}
            allow="not-negative"
            hint="longest stretch untwisted or out of the shield"
            commit={(exposedMm) => edit({ exposedMm })}
          />
        ) : null}
        {shielded ? (
          <ChoiceField
            label="Shield ends"
            name="shieldEnds"
            value={group.shieldEnds ?? ''}
            choices={[
              { value: '', text: 'not known' },
              { value: 'a', text: 'connected at the first end' },
              { value: 'b', text: 'connected at the second end' },
              { value: 'both', text: 'connected at both' },
              { value: 'none', text: 'connected at neither' },
            ]}
            choose={(ends) => void edit({ shieldEnds: ends === '' ? null : ends })}
          />
        ) : null}
      </Section>
      <Section title="Wires">
        <div className="card-actions">
          {group.wires.map((id) => (
            <RefLink key={id} to={{ type: 'wire', id }} />
          ))}
        </div>
        <div className="card-actions">
          <Button onClick={() => dispatch({ id: 'objects.remove', args: { ids: [group.id] } })}>
            Ungroup
          </Button>
        </div>
      </Section>
    </>
  );
}
