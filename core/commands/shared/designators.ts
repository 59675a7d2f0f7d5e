import type { Project } from '../../model/project';

/**
 * Class letters: X, W, A, U, F after IEC 81346-2 (X connecting, W guiding, A assembly, U holding, F protecting;
 * from memory); the others are ours.
 */
export const LETTERS = {
  connectors: 'X',
  wires: 'W',
  cables: 'WC',
  splices: 'XS',
  groups: 'WG',
  fuses: 'F',
  nodes: 'N',
  segments: 'S',
  coverings: 'CV',
  fixings: 'FX',
  board: 'A',
  device: 'A',
  panel: 'U',
} as const;

type Named = { readonly designator?: string | undefined };

/** The lowest number above all used ones: X1, X2, … Numbers are not given again after an object was removed from the middle. */
export function nextDesignator(letter: string, ...used: readonly (readonly Named[])[]): string {
  let top = 0;
  for (const list of used)
    for (const { designator } of list) {
      const number = designator === undefined ? NaN : numberBehind(letter, designator);
      if (number > top) top = number;
    }
  return `${letter}${top + 1}`;
}

/** The number that follows the letter and ends the designator; NaN where it is not so. Asked of all wires: makes nothing. */
function numberBehind(letter: string, designator: string): number {
  if (designator.length === letter.length || !designator.startsWith(letter)) return NaN;
  let number = 0;
  for (let i = letter.length; i < designator.length; i++) {
    const digit = designator.charCodeAt(i) - 48;
    if (digit < 0 || digit > 9) return NaN;
    number = 10 * number + digit;
  }
  return number;
}

export const nextConnector = (project: Project): string =>
  nextDesignator(LETTERS.connectors, project.connectors);
export const nextWire = (project: Project): string => nextDesignator(LETTERS.wires, project.wires);
