import type { Limit } from '../limit-set';

type Value = Pick<Limit, 'value' | 'source' | 'edition' | 'verified'>;

const practice = (value: number, source = 'common practice'): Value => ({ value, source, verified: false });

/** What is to be kept apart, and how far a free end strays. The same in both shipped sets. */
export const SEPARATION_LIMITS = {
  'swap-reach-margin': practice(50, 'common practice: slack of a branch that is not tied down'),
  'hazardous-voltage': practice(50, 'scope of IEC 61984: connectors above 50 V'),
  'orange-voltage-from': practice(
    0,
    'not asked for; ISO 6469-3 asks for orange above 60 V DC in road vehicles (from memory)',
  ),
  'neutral-blue': practice(1, 'IEC 60204-1, 13.2.3 and IEC 60445: light blue for the neutral (from memory)'),
  'earth-extra-length-min': practice(
    0,
    'common practice: the protective earth is at least as long as what runs with it, so that it is torn off last',
  ),
  'pair-length-difference-max': practice(10, 'common practice: the wires of a pair are cut to one length'),
  'noise-gap-min': practice(50, 'common practice: two clips beside each other, a hand between them'),
  'noise-together-max': practice(100, 'common practice: noisy and quiet cross, they do not run side by side'),
} as const satisfies Record<string, Value>;
