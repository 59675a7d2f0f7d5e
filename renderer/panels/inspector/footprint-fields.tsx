import type { Connector, Footprint } from '@latchwork/core/model/connector';
import { ChoiceField } from '../../ui/choice-field';
import { LengthField } from '../../ui/length-field';
import { attempt } from './fields';

const CORNERS = (['top-left', 'top-right', 'bottom-left', 'bottom-right'] as const).map((value) => ({
  value,
  text: value.replace('-', ' '),
}));

/** What the layout of the board provides for a header: it is compared with the header's pitch, locks and pin 1. */
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
      <ChoiceField
        label="Pad 1"
        name="footprint-padOneCorner"
        value={footprint.padOneCorner ?? ''}
        hint="the header turned as on its mating face"
        choices={[{ value: '', text: 'not known' }, ...CORNERS]}
        choose={(v) => void edit({ padOneCorner: v === '' ? null : v })}
      />
      <ChoiceField
        label="Pads seen from"
        name="footprint-seenFrom"
        value={footprint.seenFrom ?? ''}
        choices={[
          { value: '', text: 'not known' },
          { value: 'header-side', text: 'the side of the header' },
          { value: 'far-side', text: 'the other side, through the board' },
        ]}
        choose={(v) => void edit({ seenFrom: v === '' ? null : v })}
      />
      <ChoiceField
        label="Looks over the edge"
        name="footprint-facesEdge"
        value={footprint.facesEdge === undefined ? '' : footprint.facesEdge ? 'yes' : 'no'}
        hint="a right-angle header"
        choices={[
          { value: '', text: 'not known' },
          { value: 'yes', text: 'yes' },
          { value: 'no', text: 'no, into the board' },
        ]}
        choose={(v) => void edit({ facesEdge: v === '' ? null : v === 'yes' })}
      />
    </>
  );
}
