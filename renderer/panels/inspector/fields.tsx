import { compareNatural } from '@latchwork/core/base/stable-order';
import type { Call } from '@latchwork/core/commands/dispatch';
import { appStore, useApp } from '../../app/store';
import { ChoiceField } from '../../ui/choice-field';
import { TextField } from '../../ui/text-field';

/** Carries out a command for a field: null, or why not. */
export const attempt = (call: Call): string | null => appStore.getState().attempt(call);

/** The name of an object: never empty. */
export const DesignatorField = ({ value, call }: { value: string; call: (designator: string) => Call }) => (
  <TextField
    label="Designator"
    name="designator"
    mono
    value={value}
    commit={(text) => (text === '' ? 'A designator cannot be empty.' : attempt(call(text)))}
  />
);

/** One of the project's signals, or none. */
export function SignalField({
  label = 'Signal',
  value,
  choose,
  none = 'none',
}: {
  label?: string;
  value: string | undefined;
  choose: (id: string | null) => void;
  none?: string;
}) {
  const signals = useApp((s) => s.history.project.signals);
  const choices = [...signals]
    .sort((a, b) => compareNatural(a.name, b.name))
    .map((s) => ({ value: s.id, text: s.name }));
  return (
    <ChoiceField
      label={label}
      name="signal"
      mono
      value={value ?? ''}
      choices={[{ value: '', text: none }, ...choices]}
      choose={(id) => choose(id || null)}
    />
  );
}

/** One of the project's formboard nodes, or none. */
export function NodeField({
  value,
  choose,
}: {
  value: string | undefined;
  choose: (id: string | null) => void;
}) {
  const nodes = useApp((s) => s.history.project.nodes);
  const choices = [...nodes]
    .sort((a, b) => compareNatural(a.designator, b.designator))
    .map((n) => ({ value: n.id, text: n.designator }));
  return (
    <ChoiceField
      label="Formboard node"
      name="node"
      mono
      value={value ?? ''}
      choices={[{ value: '', text: 'none' }, ...choices]}
      choose={(id) => choose(id || null)}
    />
  );
}

/** Empty text takes an optional field away. */
export const orNull = (text: string): string | null => (text === '' ? null : text);
