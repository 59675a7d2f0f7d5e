import type { HousingPart } from '@latchwork/core/model/parts/housing';
import type { Numbering } from '@latchwork/core/model/parts/mating-half';

export interface Arrangement {
  readonly ways: number;
  readonly rows: number;
}

/** What the halves of one connector family share. All values are invented. */
export interface Family {
  readonly code: string;
  readonly name: string;
  readonly pitchMm: number;
  readonly rowPitchMm: number;
  readonly arrangements: readonly Arrangement[];
  readonly keys: readonly string[];
  readonly numbering: Numbering;
  readonly latchSide: 'top' | 'both';
  readonly voltageMaxV: number;
  readonly temperatureMaxC: number;
  readonly cycles: number;
  /** Current per contact with one way loaded, at 30 degrees C. */
  readonly currentA: number;
  /** Metal area of a wire, and the share of `currentA` that a contact carries with it; thickest first. */
  readonly ratedWires: readonly (readonly [areaMm2: number, share: number])[];
  /** Between the live metal of neighbours in a row, along the plastic. */
  readonly creepageMm: number;
  readonly forcePerWayN: number;
  readonly wireOdMaxMm: number;
  readonly datumMm: number;
  readonly contactOrientations: 1 | 2;
  readonly sealed: boolean;
  readonly panelMm: readonly [number, number];
  readonly tailSectionMm: number;
  readonly price: number;
}

export const ways2 = (n: number): string => String(n).padStart(2, '0');

/** Rows and columns of an arrangement. */
export const columnsOf = (a: Arrangement): number => Math.ceil(a.ways / a.rows);

/**
 * Less current per contact the more of them are loaded (one and all ways, and six where there are more), and the thinner the
 * wire that leads the heat away.
 */
export function ratingsOf(family: Family, a: Arrangement): NonNullable<HousingPart['currentRatings']> {
  const steps = [...new Set([1, Math.min(6, a.ways), a.ways])];
  return family.ratedWires.flatMap(([areaMm2, share]) =>
    steps.map((loadedWays) => ({
      currentA:
        Math.round(family.currentA * share * (loadedWays === 1 ? 1 : loadedWays <= 6 ? 0.8 : 0.6) * 100) /
        100,
      loadedWays,
      areaMm2,
      ambientC: 30,
    })),
  );
}

const KEY_COLOURS: Readonly<Record<string, string>> = { A: 'natural', B: 'black', C: 'blue', D: 'brown' };

export const keyText = (key: string): string => `key ${key}, ${KEY_COLOURS[key] ?? 'grey'}`;
