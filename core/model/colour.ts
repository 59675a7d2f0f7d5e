import { z } from 'zod';
import { problem, ok, type Result } from '../base/result';

/**
 * Letter codes of IEC 60757 (code list from memory, not verified against the standard). Green-yellow is one
 * code of its own: it is the protective conductor and nothing else.
 */
export const COLOUR_CODES = [
  'BK', 'BN', 'RD', 'OG', 'YE', 'GN', 'BU', 'VT', 'GY', 'WH', 'PK', 'GD', 'TQ', 'SR', 'GNYE',
] as const; // prettier-ignore

export const ColourCode = z.enum(COLOUR_CODES);
export type ColourCode = z.infer<typeof ColourCode>;

/** Base colour and stripes are kept apart; the joined code of IEC 60757 cannot tell which is which. */
export const Colour = z.strictObject({ base: ColourCode, stripes: z.array(ColourCode).optional() });
export type Colour = z.infer<typeof Colour>;

export const COLOUR_NAMES: Readonly<Record<ColourCode, string>> = {
  BK: 'black', BN: 'brown', RD: 'red', OG: 'orange', YE: 'yellow', GN: 'green', BU: 'blue', VT: 'violet',
  GY: 'grey', WH: 'white', PK: 'pink', GD: 'gold', TQ: 'turquoise', SR: 'silver', GNYE: 'green-yellow',
}; // prettier-ignore

/** "RD" or "RD/BU": base, then stripes behind slashes. */
export const colourText = (colour: Colour): string => [colour.base, ...(colour.stripes ?? [])].join('/');

/** Reads "RD" or "RD/BU" (case-blind). */
export function parseColour(text: string): Result<Colour, string> {
  const [base, ...stripes] = text
    .trim()
    .toUpperCase()
    .split('/')
    .map((s) => s.trim());
  for (const code of [base, ...stripes]) {
    if (!COLOUR_CODES.includes(code as ColourCode))
      return problem(`"${code ?? ''}" is not a colour code; known: ${COLOUR_CODES.join(', ')}`);
  }
  const colour = { base: base as ColourCode };
  return ok(stripes.length ? { ...colour, stripes: stripes as ColourCode[] } : colour);
}

export const sameColour = (a: Colour | undefined, b: Colour | undefined): boolean =>
  a === b || (a !== undefined && b !== undefined && colourText(a) === colourText(b));
