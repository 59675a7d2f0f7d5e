import type { ReactNode } from 'react';
import { FieldShell } from './field';

export interface Choice<T extends string> {
  readonly value: T;
  readonly text: string;
}

export interface ChoiceFieldProps<T extends string> {
  readonly label: ReactNode;
  readonly value: T;
  readonly choices: readonly Choice<T>[];
  readonly choose: (value: T) => void;
  readonly name?: string;
  readonly hint?: ReactNode;
  readonly mono?: boolean;
}

/** One of a few. */
export function ChoiceField<T extends string>({
  label,
  value,
  choices,
  choose,
  name,
  hint,
  mono,
}: ChoiceFieldProps<T>) {
  return (
    <FieldShell label={label} name={name} hint={hint}>
      {({ id, describedBy }) => (
        <select
          id={id}
          className={mono ? 'input mono' : 'input'}
          value={value}
          aria-describedby={describedBy}
          onChange={(e) => choose(e.target.value as T)}
        >
          {choices.map((c) => (
            <option key={c.value} value={c.value}>
              {c.text}
            </option>
          ))}
        </select>
      )}
    </FieldShell>
  );
}

/** Choices whose words are their values. */
export const choicesOf = <T extends string>(values: readonly T[]): Choice<T>[] =>
  values.map((value) => ({ value, text: value.replaceAll('-', ' ') }));
