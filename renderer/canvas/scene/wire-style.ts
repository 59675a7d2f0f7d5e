import { memoByIdentity } from '@latchwork/core/base/memo-by-identity';
import { colourText, type Colour } from '@latchwork/core/model/colour';
import { GNYE_STRIPE, WIRE_COLOURS } from '../../ui/wire-colours';

/** How a wire's colour is drawn: a base line, stripes as dashes over it, and its letter code. */
export interface WireStyle {
  readonly base: string;
  readonly stripes: readonly string[];
  readonly code: string;
}

/** A wire whose colour is not said is drawn as an empty casing. */
export const NO_COLOUR: WireStyle = { base: '', stripes: [], code: '' };

export const wireStyleOf = memoByIdentity((colour: Colour): WireStyle => ({
  base: WIRE_COLOURS[colour.base],
  stripes: [
    ...(colour.base === 'GNYE' ? [GNYE_STRIPE] : []),
    ...(colour.stripes ?? []).map((s) => WIRE_COLOURS[s]),
  ],
  code: colourText(colour),
}));
