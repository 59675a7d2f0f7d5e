import './working.css';

export interface Band {
  readonly value: number;
  /** Where the measured value is itself a range, its upper end. */
  readonly valueTo?: number | undefined;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly unit: string;
}

const WIDTH = 320;

/** A limit as a bar with the measured value on it: the allowed range is filled, the value is a tick. */
export function LimitBar({ value, valueTo = value, min, max, unit }: Band) {
  const known = [value, valueTo, min, max].filter((n) => n !== undefined);
  const low = Math.min(...known);
  const high = Math.max(...known);
  const span = high - low || Math.abs(high) || 1;
  const start = low - span * 0.2;
  const at = (n: number): number => ((n - start) / (span * 1.4)) * WIDTH;
  const from = min === undefined ? 0 : at(min);
  const to = max === undefined ? WIDTH : at(max);
  const inside = value >= (min ?? -Infinity) && valueTo <= (max ?? Infinity);
  const measured = valueTo === value ? `${value}` : `${value} to ${valueTo}`;
  const middle = at((value + valueTo) / 2);
  const tone = inside ? 'var(--good)' : 'var(--critical)';
  const limit = [min === undefined ? '' : `from ${min}`, max === undefined ? '' : `to ${max}`]
    .filter(Boolean)
    .join(' ');
  const anchor = (x: number): 'start' | 'middle' | 'end' =>
    x < 40 ? 'start' : x > WIDTH - 40 ? 'end' : 'middle';
  return (
    <svg
      className="limit-bar"
      viewBox={`0 0 ${WIDTH} 44`}
      role="img"
      aria-label={`${measured} ${unit}, limit ${limit} ${unit}`}
    >
      <line x1={0} x2={WIDTH} y1={22} y2={22} stroke="var(--line)" strokeWidth={1} />
      <rect
        x={from}
        width={Math.max(to - from, 1)}
        y={18}
        height={8}
        fill="var(--good)"
        fillOpacity={0.28}
        stroke="var(--good)"
      />
      {[value, valueTo].map((v, i) => (
        <line key={i} x1={at(v)} x2={at(v)} y1={14} y2={30} stroke={tone} strokeWidth={2.5} />
      ))}
      <line x1={at(value)} x2={at(valueTo)} y1={22} y2={22} stroke={tone} strokeWidth={2.5} />
      <text x={middle} y={10} textAnchor={anchor(middle)} style={{ fill: tone }}>
        {measured} {unit}
      </text>
      {min === undefined ? null : (
        <text className="limit-bar-limit" x={from} y={41} textAnchor={anchor(from)}>
          {min}
        </text>
      )}
      {max === undefined ? null : (
        <text className="limit-bar-limit" x={to} y={41} textAnchor={anchor(to)}>
          {max}
        </text>
      )}
    </svg>
  );
}
