import { roundTo } from '../model/length-text';
import { compareWireSize, type WireSize } from '../model/wire-size';
import type { FitFact, FitNeed } from './fit';

export type Within = 'inside' | 'outside' | 'open';

/** Values are sums of areas, so ends that are meant to be equal may differ in the last binary places. */
const SLACK = 1e-9;

/**
 * Whether the interval from `low` to `high` lies within `min` to `max`, ends included. One bound that is broken
 * decides; to be inside, all four must be known.
 */
export function band(
  low: number | undefined,
  high: number | undefined,
  min: number | undefined,
  max: number | undefined,
): Within {
  if (min !== undefined && low !== undefined && low < min - SLACK) return 'outside';
  if (max !== undefined && high !== undefined && high > max + SLACK) return 'outside';
  const known = [low, high, min, max].every((v) => v !== undefined);
  return known ? 'inside' : 'open';
}

/** The same for designations; sizes of the other system leave it open. */
export function sizeWithin(size: WireSize, min: WireSize | undefined, max: WireSize | undefined): Within {
  const fromMin = min ? compareWireSize(size, min) : null;
  const fromMax = max ? compareWireSize(size, max) : null;
  if (fromMin !== null && fromMin < 0) return 'outside';
  if (fromMax !== null && fromMax > 0) return 'outside';
  return fromMin !== null && fromMax !== null ? 'inside' : 'open';
}

export function bandText(min: number | undefined, max: number | undefined, unit: string): string {
  if (max === undefined) return `${rounded(min ?? 0)} ${unit} or more`;
  return min === undefined ? `${rounded(max)} ${unit} or less` : `${rounded(min)} to ${rounded(max)} ${unit}`;
}

export function bandFacts(
  label: string,
  min: number | undefined,
  max: number | undefined,
  unit: string,
): FitFact[] {
  const fact = (end: string, value: number | undefined): FitFact[] =>
    value === undefined ? [] : [{ of: 'contact', label: `${end} ${label}`, value: rounded(value), unit }];
  return [...fact('smallest', min), ...fact('largest', max)];
}

/** Fields `<name>Min<suffix>` and `<name>Max<suffix>` of the contact, those that are not stated. */
export function bandNeeds(
  name: string,
  suffix: string,
  min: number | undefined,
  max: number | undefined,
  what: string,
): FitNeed[] {
  const need = (end: string, word: string, value: number | undefined): FitNeed[] =>
    value === undefined ? [{ of: 'contact', field: `${name}${end}${suffix}`, what: `${word} ${what}` }] : [];
  return [...need('Min', 'smallest', min), ...need('Max', 'largest', max)];
}

/** Four decimals are finer than any area or diameter is known. */
export const rounded = (value: number): number => roundTo(value, 4);
