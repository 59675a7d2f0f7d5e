import type { Finding } from '@latchwork/core/rules/finding';
import type { Band } from '../../ui/limit-bar';

const MEASURED = /^(-?\d+(?:\.\d+)?) ?([^\d\s].*)?$/;
const RANGE = /^(-?\d+(?:\.\d+)?) to (-?\d+(?:\.\d+)?) ?(\S+)?$/;
const ONE_SIDED = /^(-?\d+(?:\.\d+)?) ?(\S+)? or (more|less)$/;

/** The measured value and the limit of a finding where both are numbers of one unit; null where they are words. */
export function bandOf(finding: Finding): Band | null {
  const measured = MEASURED.exec(String(finding.data['measured'] ?? ''));
  const limit = String(finding.data['limit'] ?? '');
  if (!measured) return null;
  const value = Number(measured[1]);
  const unit = measured[2] ?? '';
  const range = RANGE.exec(limit);
  if (range)
    return (range[3] ?? '') === unit ? { value, min: Number(range[1]), max: Number(range[2]), unit } : null;
  const one = ONE_SIDED.exec(limit);
  if (!one || (one[2] ?? '') !== unit) return null;
  return one[3] === 'more' ? { value, min: Number(one[1]), unit } : { value, max: Number(one[1]), unit };
}
