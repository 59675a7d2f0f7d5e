import type { ReactNode } from 'react';
import { TextField } from './text-field';

export interface NumberFieldProps {
  readonly label: ReactNode;
  readonly value: number | undefined;
  /** Null takes the value away. Answers why it was refused, or null. */
  readonly commit: (value: number | null) => string | null;
  readonly unit?: string;
  readonly name?: string | undefined;
  readonly hint?: ReactNode;
  readonly placeholder?: string;
  readonly whole?: boolean;
  readonly positive?: boolean;
}

/** A number with a fixed unit: "5", "0,5", also with the unit behind it. Empty means not known. */
export function NumberField({
  label,
  value,
  commit,
  unit,
  name,
  hint,
  placeholder,
  whole,
  positive,
}: NumberFieldProps) {
  const read = (text: string): string | null => {
    if (text === '') return commit(null);
    const bare = unit && text.toLowerCase().endsWith(unit.toLowerCase()) ? text.slice(0, -unit.length) : text;
    const n = /^[+-]?\d+(?:[.,]\d+)?$/.test(bare.trim()) ? Number(bare.trim().replace(',', '.')) : NaN;
    if (Number.isNaN(n)) return `"${text}" is not a number${unit ? ` of ${unit}` : ''}.`;
    if (whole && !Number.isInteger(n)) return 'A whole number is needed here.';
    if (positive && n <= 0) return 'A number greater than zero is needed here.';
    return commit(n);
  };
  return (
    <TextField
      label={
        unit ? (
          <>
            {label} <span className="second">{unit}</span>
          </>
        ) : (
          label
        )
      }
      value={value === undefined ? '' : String(value)}
      commit={read}
      name={name}
      hint={hint}
      placeholder={placeholder ?? 'not known'}
      mono
    />
  );
}
