import { useState } from 'react';
import type { Connector, CutOut } from '@latchwork/core/model/connector';
import { ChoiceField } from '../../ui/choice-field';
import { LengthField } from '../../ui/length-field';
import { attempt } from './fields';

/** The hole that the drawing of the panel has for a connector. It is stated once width and height are typed. */
export function CutOutFields({ connector }: { connector: Connector }) {
  const [typed, setTyped] = useState<Partial<CutOut>>({});
  const hole: Partial<CutOut> = connector.cutOut ?? typed;
  const edit = (change: { readonly [K in keyof CutOut]?: CutOut[K] | null }): string | null => {
    const next: Partial<CutOut> = Object.fromEntries(
      Object.entries({ ...hole, ...change }).filter(([, value]) => value !== null && value !== undefined),
    );
    setTyped(next);
    const { widthMm, heightMm } = next;
    const cutOut = widthMm === undefined || heightMm === undefined ? null : { ...next, widthMm, heightMm };
    if (cutOut === null && connector.cutOut === undefined) return null;
    return attempt({ id: 'connector.edit', args: { ids: [connector.id], change: { cutOut } } });
  };
  return (
    <>
      <LengthField
        label="Cut-out width"
        name="cutOut-widthMm"
        valueMm={hole.widthMm}
        hint="as the panel is drawn"
        commit={(widthMm) => edit({ widthMm })}
      />
      <LengthField
        label="Cut-out height"
        name="cutOut-heightMm"
        valueMm={hole.heightMm}
        commit={(heightMm) => edit({ heightMm })}
      />
      <LengthField
        label="Cut-out corner radius"
        name="cutOut-cornerRadiusMm"
        valueMm={hole.cornerRadiusMm}
        allow="not-negative"
        commit={(cornerRadiusMm) => edit({ cornerRadiusMm })}
      />
      <ChoiceField
        label="Put in from"
        name="cutOut-insertFrom"
        value={hole.insertFrom ?? ''}
        choices={[
          { value: '', text: 'not known' },
          { value: 'front', text: 'the front' },
          { value: 'rear', text: 'the rear' },
        ]}
        choose={(v) => void edit({ insertFrom: v === '' ? null : v })}
      />
      <ChoiceField
        label="Punched from"
        name="cutOut-punchedFrom"
        value={hole.punchedFrom ?? ''}
        choices={[
          { value: '', text: 'not known' },
          { value: 'front', text: 'the front' },
          { value: 'rear', text: 'the rear' },
        ]}
        choose={(v) => void edit({ punchedFrom: v === '' ? null : v })}
      />
    </>
  );
}
