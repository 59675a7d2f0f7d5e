import type { Connector, Footprint } from '@latchwork/core/model/connector';
import { ChoiceField } from '../../ui/choice-field';
import { LengthField } from '../../ui/length-field';
import { attempt } from './fields';

/** What the layout of the board provides for a header: it is compared with the header's pitch and locks. */
export function FootprintFields({ connector }: { connector: Connector }) {
  const { footprint = {} } = connector;
  const edit = (change: { readonly [K in keyof Footprint]: Footprint[K] | null }): string | null => {
    const stated = Object.entries({ ...footprint, ...change }).filter(
      ([, value]) => value !== null && value !== undefined,
    );
    const next = stated.length > 0 ? (Object.fromEntries(stated) as Footprint) : null;
    return attempt({ id: 'connector.edit', args: { ids: [connector.id], change: { footprint: next } } });
  };
  return (
    <>
      <LengthField
        label="Footprint pitch"
        name="footprint-pitchMm"
        valueMm={footprint.pitchMm}
        commit={(pitchMm) => edit({ pitchMm })}
      />
      <LengthField
        label="Lock holes"
        name="footprint-lockHoleMm"
        valueMm={footprint.lockHoleMm}
        hint="diameter in the board"
        commit={(lockHoleMm) => edit({ lockHoleMm })}
      />
      <ChoiceField
        label="Lock holes plated"
        name="footprint-lockHolePlated"
        value={footprint.lockHolePlated === undefined ? '' : footprint.lockHolePlated ? 'yes' : 'no'}
        choices={[
          { value: '', text: 'not known' },
          { value: 'yes', text: 'plated' },
          { value: 'no', text: 'not plated' },
        ]}
        choose={(v) => void edit({ lockHolePlated: v === '' ? null : v === 'yes' })}
      />
    </>
  );
}
