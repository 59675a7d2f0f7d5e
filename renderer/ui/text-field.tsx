import type { ReactNode } from 'react';
import { FieldShell } from './field';
import { type Commit, useDraftText } from './use-draft-text';

export interface TextFieldProps {
  readonly label: ReactNode;
  readonly value: string;
  readonly commit: Commit;
  readonly name?: string | undefined;
  readonly hint?: ReactNode;
  readonly mono?: boolean;
  readonly placeholder?: string | undefined;
  readonly multiline?: boolean;
  readonly stack?: boolean;
  readonly autoFocus?: boolean;
}

/** A line of text, or several. */
export function TextField({
  label,
  value,
  commit,
  name,
  hint,
  mono,
  placeholder,
  multiline,
  stack,
  autoFocus,
}: TextFieldProps) {
  const draft = useDraftText(value, commit, multiline);
  return (
    <FieldShell label={label} name={name} problem={draft.problem} hint={hint} stack={stack}>
      {({ id, describedBy }) => {
        const shared = {
          id,
          className: mono ? 'input mono' : 'input',
          value: draft.text,
          placeholder,
          autoFocus,
          'aria-invalid': draft.problem ? true : undefined,
          'aria-describedby': describedBy,
          onBlur: draft.finish,
          onKeyDown: draft.onKeyDown,
        };
        return multiline ? (
          <textarea {...shared} rows={3} onChange={(e) => draft.change(e.target.value)} />
        ) : (
          <input {...shared} type="text" onChange={(e) => draft.change(e.target.value)} />
        );
      }}
    </FieldShell>
  );
}

/** A commit for text that must not be empty. */
export const needed =
  (what: string, take: Commit): Commit =>
  (text) =>
    text === '' ? `${what} cannot be empty.` : take(text);
