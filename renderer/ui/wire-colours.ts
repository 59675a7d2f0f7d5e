import type { ColourCode } from '@latchwork/core/model/colour';

/** How an insulation colour is shown on a screen, the same in both themes: it is the colour of a thing. */
export const WIRE_COLOURS: Readonly<Record<ColourCode, string>> = {
  BK: '#23262a',
  BN: '#7a4a26',
  RD: '#cc2f27',
  OG: '#e5781e',
  YE: '#efc921',
  GN: '#2f8f46',
  BU: '#2b66c4',
  VT: '#7d4bae',
  GY: '#8d9399',
  WH: '#f4f2ec',
  PK: '#e79bb4',
  GD: '#b8963a',
  TQ: '#2bb0ad',
  SR: '#b9c0c6',
  GNYE: '#2f8f46',
};

/** Green-yellow is one code, drawn as green with a yellow stripe. */
export const GNYE_STRIPE = WIRE_COLOURS.YE;
