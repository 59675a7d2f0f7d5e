import type { MatingHalf } from '../model/parts/part';

/** What keeps two halves apart. Rows count under `ways`, row pitch under `pitch`. */
export type ObstacleCode = 'interface' | 'ways' | 'pitch' | 'body-form' | 'contact-kind' | 'keying';

export type MatingField =
  'interface' | 'ways' | 'rows' | 'pitchMm' | 'rowPitchMm' | 'bodyForm' | 'contactKind' | 'keying';

export interface Obstacle {
  readonly code: ObstacleCode;
  readonly text: string;
}

/** A field whose absence leaves the question open, and the record that lacks it. */
export interface UnknownField {
  readonly field: MatingField;
  readonly part: MatingHalf;
}

/** Reasons against a mate. Two halves are known to mate only when both lists are empty. */
export interface MatingObstacles {
  readonly obstacles: readonly Obstacle[];
  readonly unknown: readonly UnknownField[];
}

/** Pitches are data, not measurements: 2.50 and 2.54 differ. The margin only absorbs binary fractions. */
const SAME_MM = 1e-6;

/** Fields by obstacle, in the order in which they are reported. */
export const FIELDS_OF: Readonly<Record<ObstacleCode, readonly MatingField[]>> = {
  interface: ['interface'],
  ways: ['ways', 'rows'],
  pitch: ['pitchMm', 'rowPitchMm'],
  'body-form': ['bodyForm'],
  'contact-kind': ['contactKind'],
  keying: ['keying'],
};

/**
 * Why two halves cannot be plugged together: interface, ways, rows and pitch must agree, body form and contact kind
 * must be opposite, keying codes must be equal (common practice; "none" meets "none"). An absent field is listed as unknown.
 * Pitch does not matter between halves of one way; row pitch is compared where both halves have rows and state it.
 */
export function matingObstacles(a: MatingHalf, b: MatingHalf): MatingObstacles {
  const obstacles: Obstacle[] = [];
  const unknown: UnknownField[] = [];
  for (const code of Object.keys(FIELDS_OF) as ObstacleCode[]) {
    for (const field of FIELDS_OF[code]) {
      if (!matters(field, a, b)) continue;
      const va = matingValue(a, field);
      const vb = matingValue(b, field);
      if (va === undefined) unknown.push({ field, part: a });
      if (vb === undefined) unknown.push({ field, part: b });
      if (va === undefined || vb === undefined || suits(field, va, vb)) continue;
      obstacles.push({
        code,
        text: OPPOSITE.has(field)
          ? `${a.partNumber} and ${b.partNumber} both have ${NAMES[field]} ${valueText(field, va)}`
          : `${NAMES[field]} is ${valueText(field, va)} on ${a.partNumber}, ${valueText(field, vb)} on ${b.partNumber}`,
      });
    }
  }
  return { obstacles, unknown };
}

/** The value that mating goes by; a half of one way has one row whether or not its record says so. */
export function matingValue(half: MatingHalf, field: MatingField): string | number | undefined {
  if (field === 'rows' && half.rows === undefined && half.ways === 1) return 1;
  return half[field];
}

/** "pitch", "body form": a field in words. */
export const matingFieldName = (field: MatingField): string => NAMES[field];

const NAMES: Readonly<Record<MatingField, string>> = {
  interface: 'interface',
  ways: 'number of ways',
  rows: 'number of rows',
  pitchMm: 'pitch',
  rowPitchMm: 'row pitch',
  bodyForm: 'body form',
  contactKind: 'contact kind',
  keying: 'keying code',
};

const OPPOSITE: ReadonlySet<MatingField> = new Set(['bodyForm', 'contactKind']);

function matters(field: MatingField, a: MatingHalf, b: MatingHalf): boolean {
  if (field === 'pitchMm') return a.ways > 1 || b.ways > 1;
  if (field === 'rowPitchMm') return a.rowPitchMm !== undefined && b.rowPitchMm !== undefined;
  return true;
}

function suits(field: MatingField, a: string | number, b: string | number): boolean {
  if (OPPOSITE.has(field)) return a !== b;
  return typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) < SAME_MM : a === b;
}

const valueText = (field: MatingField, value: string | number): string =>
  field.endsWith('Mm') ? `${value} mm` : String(value);
