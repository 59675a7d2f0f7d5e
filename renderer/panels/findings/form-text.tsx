import type { ReactNode } from 'react';
import { FieldShell } from '../../ui/field';

/** A line of a form that is handed in as a whole. */
export function FormText({
  label,
  value,
  set,
  type = 'text',
  lines,
  hint,
  autoFocus,
}: {
  label: string;
  value: string;
  set: (text: string) => void;
  type?: 'text' | 'date' | 'number';
  lines?: number;
  hint?: ReactNode;
  autoFocus?: boolean;
}) {
  return (
    <FieldShell label={label} hint={hint} stack>
      {({ id, describedBy }) => {
        const shared = { id, className: 'input', value, autoFocus, 'aria-describedby': describedBy };
        return lines ? (
          <textarea {...shared} rows={lines} onChange={(e) => set(e.target.value)} />
        ) : (
          <input
            {...shared}
            type={type}
            min={type === 'number' ? 1 : undefined}
            onChange={(e) => set(e.target.value)}
          />
        );
      }}
    </FieldShell>
  );
}
