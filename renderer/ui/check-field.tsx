import type { ReactNode } from 'react';

/** Yes or no. */
export function CheckField({
  label,
  checked,
  choose,
  name,
}: {
  label: ReactNode;
  checked: boolean;
  choose: (checked: boolean) => void;
  name?: string;
}) {
  return (
    <label className="check" data-field={name}>
      <input type="checkbox" checked={checked} onChange={(e) => choose(e.target.checked)} />
      {label}
    </label>
  );
}
