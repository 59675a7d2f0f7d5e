import { useId } from 'react';
import type { PurchaseLine } from '@latchwork/core/exports/purchase/purchase-line';
import { weighedChoices } from './weighed-choices';

const WIDTH = 320;
const ROW = 22;
const NAME = 116;
const COST = 92;

/** The quantities that were weighed as bars of their cost; what is left over is hatched, the cheapest is marked. */
export function BreakPicture({ line }: { line: PurchaseLine }) {
  const hatch = useId();
  const choices = weighedChoices(line);
  if (choices.length === 0) return null;
  const most = Math.max(...choices.map((c) => c.choice.cost)) || 1;
  const toBuy = line.need?.toBuy ?? 0;
  const { unit } = line.line;
  const words = choices.map(
    ({ choice, offer, currency, best }) =>
      `${choice.quantity} ${unit} of ${offer} cost ${choice.cost.toFixed(2)} ${currency}${best ? ', the cheapest' : ''}`,
  );
  return (
    <svg
      className="break-picture"
      viewBox={`0 0 ${WIDTH} ${choices.length * ROW}`}
      role="img"
      aria-label={words.join('; ')}
    >
      <defs>
        <pattern id={hatch} width={5} height={5} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1={0} y1={0} x2={0} y2={5} stroke="var(--ink-2)" strokeWidth={1.5} />
        </pattern>
      </defs>
      {choices.map(({ choice: { quantity, cost }, offer, currency, best }, i) => {
        const y = i * ROW;
        const length = (cost / most) * (WIDTH - NAME - COST);
        const used = length * Math.min(1, toBuy / quantity);
        const tone = best ? 'var(--copper)' : 'var(--ink-2)';
        const weight = best ? 700 : 400;
        return (
          <g key={`${offer} ${quantity}`}>
            <text x={NAME - 8} y={y + 15} textAnchor="end" fontWeight={weight}>
              {best ? '▸ ' : ''}
              {quantity} · {offer.replace('offer ', '#')}
            </text>
            <rect x={NAME} y={y + 4} width={used} height={14} fill={tone} />
            <rect
              x={NAME + used}
              y={y + 4}
              width={Math.max(0, length - used)}
              height={14}
              fill={`url(#${hatch})`}
            />
            <rect x={NAME} y={y + 4} width={Math.max(1, length)} height={14} fill="none" stroke={tone} />
            <text x={WIDTH} y={y + 15} textAnchor="end" fontWeight={weight}>
              {cost.toFixed(2)} {currency}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
