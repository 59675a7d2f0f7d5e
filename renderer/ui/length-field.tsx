import type { ReactNode } from 'react';
import { lengthText, parseLength } from '@latchwork/core/model/length-text';
import { useApp } from '../app/store';
import { TextField } from './text-field';

export interface LengthFieldProps {
  readonly label: ReactNode;
  readonly valueMm: number | undefined;
  /** Null takes the length away. Answers why it was refused, or null. */
  readonly commit: (valueMm: number | null) => string | null;
  readonly name?: string;
  readonly hint?: ReactNode;
  readonly placeholder?: string;
  readonly digits?: number;
  readonly stack?: boolean;
  /** What may be typed; zero and less are refused unless it says otherwise. */
  readonly allow?: 'positive' | 'not-negative' | 'signed';
}

/** A length in any unit: "120 mm", "12 in", "1 ft". A bare number is in the unit that is shown. */
export function LengthField({
  label,
  valueMm,
  commit,
  allow = 'positive',
  digits,
  placeholder = 'not known',
  ...rest
}: LengthFieldProps) {
  const unit = useApp((s) => s.view.lengthUnit);
  const read = (text: string): string | null => {
    if (text === '') return commit(null);
    const length = parseLength(text, unit);
    if (!length.ok) return length.problem;
    if (allow === 'positive' && length.value <= 0) return 'A length here is greater than zero.';
    if (allow === 'not-negative' && length.value < 0) return 'A length here cannot be negative.';
    return commit(length.value);
  };
  const shown = valueMm === undefined ? '' : lengthText(valueMm, unit, digits ?? (unit === 'mm' ? 3 : 4));
  return <TextField label={label} value={shown} commit={read} placeholder={placeholder} mono {...rest} />;
}
