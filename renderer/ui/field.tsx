import { type ReactNode, useId } from 'react';
import { SeverityMark } from './severity-mark';

export interface FieldShellProps {
  readonly label: ReactNode;
  /** Name of the field in the model: a finding that lacks it puts the focus here. */
  readonly name?: string | undefined;
  readonly problem?: string | null | undefined;
  readonly hint?: ReactNode;
  /** Label above the input instead of beside it. */
  readonly stack?: boolean | undefined;
  readonly children: (ids: { id: string; describedBy: string | undefined }) => ReactNode;
}

/** Label, input and what there is to say about it, in the places where every field has them. */
export function FieldShell({ label, name, problem, hint, stack, children }: FieldShellProps) {
  const id = useId();
  const said = problem ? `${id}-problem` : hint ? `${id}-hint` : undefined;
  return (
    <div className="field" data-stack={stack ? '' : undefined} data-field={name}>
      <label htmlFor={id}>{label}</label>
      <div>
        {children({ id, describedBy: said })}
        {problem ? (
          <p className="field-problem" id={said} role="alert">
            <SeverityMark kind="critical" size={12} />
            {problem}
          </p>
        ) : hint ? (
          <p className="field-hint" id={said}>
            {hint}
          </p>
        ) : null}
      </div>
    </div>
  );
}
