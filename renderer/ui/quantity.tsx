import { lengthText } from '@latchwork/core/model/length-text';
import { useApp } from '../app/store';

/** A value with its unit in second ink. */
export function Quantity({ value, unit }: { value: string | number; unit?: string | undefined }) {
  return (
    <span className="mono">
      {value}
      {unit ? <span className="second"> {unit}</span> : null}
    </span>
  );
}

/** A length in the unit that the user has chosen. */
export function Length({ mm, digits }: { mm: number; digits?: number }) {
  const unit = useApp((s) => s.view.lengthUnit);
  const [value, name] = lengthText(mm, unit, digits ?? (unit === 'mm' ? 2 : 3)).split(' ');
  return <Quantity value={value ?? ''} unit={name} />;
}
