import type { Finding } from '@latchwork/core/rules/finding';
import type { Band } from '../../ui/limit-bar';

/** Names under which rules put the measured value, and the limit. */
const MEASURED = ['measured', 'thickness', 'protrusion'] as const;
const LIMIT = ['limit', 'range'] as const;

const NUMBER = '(-?\\d+(?:\\.\\d+)?)';
const ONE = new RegExp(`^${NUMBER} ?([a-zA-Z]\\S*)?$`);
const RANGE = new RegExp(`^${NUMBER} to ${NUMBER} ?(\\S+)?$`);
const AROUND = new RegExp(`^${NUMBER} ± ${NUMBER} ?(\\S+)?$`);
const ONE_SIDED = new RegExp(`^${NUMBER} ?(\\S+)? or (more|less)$`);

/** The measured value and the limit of a finding where both are numbers of one unit; null where they are words. */
export function bandOf(finding: Finding): Band | null {
  const bare = bareBand(finding);
  if (bare) return bare;
  const value = valueOf(textOf(finding, MEASURED));
  const limit = limitOf(textOf(finding, LIMIT));
  if (!value || !limit) return null;
  const unit = limit.unit;
  if (value.unit !== unit && value.unit !== '') return null;
  return { ...value, ...limit, unit: unitName(unit) };
}

/** Two bare numbers: the finding fails, so the limit lies on the side that the value is not on. */
function bareBand(finding: Finding): Band | null {
  const value = finding.data['measured'];
  const limit = finding.data['needed'] ?? finding.data['limit'];
  if (typeof value !== 'number' || typeof limit !== 'number' || value === limit) return null;
  const unit = finding.evidence.find((e) => e.value === value || e.value === limit)?.unit ?? '';
  return { value, [value < limit ? 'min' : 'max']: limit, unit: unitName(unit) };
}

const unitName = (unit: string): string => (unit === 'mm2' ? 'mm²' : unit);

const textOf = (finding: Finding, names: readonly string[]): string =>
  String(names.map((name) => finding.data[name]).find((v) => v !== undefined) ?? '');

function valueOf(text: string): Pick<Band, 'value' | 'valueTo' | 'unit'> | null {
  const range = RANGE.exec(text);
  if (range) return { value: Number(range[1]), valueTo: Number(range[2]), unit: range[3] ?? '' };
  const one = ONE.exec(text);
  return one ? { value: Number(one[1]), unit: one[2] ?? '' } : null;
}

function limitOf(text: string): Pick<Band, 'min' | 'max' | 'unit'> | null {
  const range = RANGE.exec(text);
  if (range) return { min: Number(range[1]), max: Number(range[2]), unit: range[3] ?? '' };
  const around = AROUND.exec(text);
  if (around) {
    const [middle, off] = [Number(around[1]), Number(around[2])];
    return { min: rounded(middle - off), max: rounded(middle + off), unit: around[3] ?? '' };
  }
  const one = ONE_SIDED.exec(text);
  if (!one) return null;
  return { [one[3] === 'more' ? 'min' : 'max']: Number(one[1]), unit: one[2] ?? '' };
}

/** Drops what binary fractions add. */
const rounded = (n: number): number => Number(n.toFixed(6));
