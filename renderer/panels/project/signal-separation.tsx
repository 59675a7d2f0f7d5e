import type { Signal } from '@latchwork/core/model/electrical';
import { ChoiceField, choicesOf } from '../../ui/choice-field';
import { attempt } from '../inspector/fields';

type Change = Extract<Parameters<typeof attempt>[0], { id: 'signal.edit' }>['args']['change'];

const NOISE = ['quiet', 'ordinary', 'noisy'] as const;

/** What a signal is to be kept with or apart from, and whether it is mated live: each field sets a rule to work. */
export function SignalSeparation({ signal, others }: { signal: Signal; others: readonly Signal[] }) {
  const edit = (change: Change): void => void attempt({ id: 'signal.edit', args: { id: signal.id, change } });
  const names = others.map((s) => ({ value: s.id, text: s.name }));
  const live = signal.liveMating === undefined ? '' : signal.liveMating ? 'yes' : 'no';
  return (
    <>
      <ChoiceField
        label="Noise"
        name="noiseClass"
        value={signal.noiseClass ?? ''}
        choices={[{ value: '', text: 'not known' }, ...choicesOf(NOISE)]}
        choose={(noise) => edit({ noiseClass: noise === '' ? null : noise })}
      />
      <ChoiceField
        label="Mated under power"
        name="liveMating"
        value={live}
        choices={[{ value: '', text: 'not known' }, ...choicesOf(['yes', 'no'] as const)]}
        choose={(yes) => edit({ liveMating: yes === '' ? null : yes === 'yes' })}
      />
      <ChoiceField
        label="Pair with"
        name="pairedWith"
        mono
        value={signal.pairedWith ?? ''}
        choices={[{ value: '', text: 'none' }, ...names]}
        choose={(id) => edit({ pairedWith: id || null })}
      />
      <ChoiceField
        label="Redundant to"
        name="redundantTo"
        mono
        value={signal.redundantTo ?? ''}
        choices={[{ value: '', text: 'none' }, ...names]}
        choose={(id) => edit({ redundantTo: id || null })}
      />
    </>
  );
}
