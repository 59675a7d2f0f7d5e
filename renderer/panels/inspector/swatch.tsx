import type { Colour } from '@latchwork/core/model/colour';
import { colourText } from '@latchwork/core/model/colour';
import { GNYE_STRIPE, WIRE_COLOURS } from '../../ui/wire-colours';

/** A wire colour as a patch: base with its stripes across, in an ink casing. The letter code stands beside it. */
export function Swatch({ colour, size = 18 }: { colour: Colour; size?: number }) {
  const stripes = colour.base === 'GNYE' ? [GNYE_STRIPE] : (colour.stripes ?? []).map((c) => WIRE_COLOURS[c]);
  return (
    <svg className="swatch" width={size} height={size} viewBox="0 0 18 18" aria-hidden>
      <rect x={0.75} y={0.75} width={16.5} height={16.5} rx={2} fill={WIRE_COLOURS[colour.base]} />
      {stripes.map((stroke, i) => (
        <path key={i} d={`M${1 + i * 5} 17 L${12 + i * 5} 1`} stroke={stroke} strokeWidth={4} />
      ))}
      <rect
        x={0.75}
        y={0.75}
        width={16.5}
        height={16.5}
        rx={2}
        fill="none"
        stroke="var(--ink-2)"
        strokeWidth={1}
      />
    </svg>
  );
}

/** Patch and letter code. */
export function ColourName({ colour }: { colour: Colour }) {
  return (
    <span className="colour-button">
      <Swatch colour={colour} />
      <span className="mono">{colourText(colour)}</span>
    </span>
  );
}
