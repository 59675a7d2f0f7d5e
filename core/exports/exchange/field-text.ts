import { compareText } from '../../base/stable-order';
import { colourText, type Colour } from '../../model/colour';
import { wireSizeText, type WireSize } from '../../model/wire-size';

/** A field with its value as text, for formats that have no element for it. */
export type FieldText = readonly [key: string, text: string];

/** The fields of an object that are set and not in `placed`, by name. */
export function otherFields(object: object, placed: ReadonlySet<string>): readonly FieldText[] {
  return Object.entries(object as Readonly<Record<string, unknown>>)
    .filter(([key, value]) => value !== undefined && !placed.has(key))
    .sort(([a], [b]) => compareText(a, b))
    .map(([key, value]) => [key, fieldText(value)] as const);
}

/** A value of the model as text: sizes and colours as people write them, lists and objects as JSON with sorted keys. */
export function fieldText(value: unknown): string {
  const plain = ordered(value);
  return typeof plain === 'string' ? plain : JSON.stringify(plain);
}

function ordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(ordered);
  if (typeof value !== 'object' || value === null) return value;
  if ('system' in value) return wireSizeText(value as WireSize);
  if ('base' in value) return colourText(value as Colour);
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, v]) => v !== undefined)
      .sort(([a], [b]) => compareText(a, b))
      .map(([k, v]) => [k, ordered(v)]),
  );
}
