import { calculationById } from '@latchwork/core/calc/index';
import { describe, expect, it } from 'vitest';
import { passes } from './check';
import { electricalChecks as checks } from './electrical-checks';

const groups = [...new Set(checks.map((c) => `${c.calculation}: ${c.group}`))];

describe('every electrical calculation against published numbers', () => {
  it.each(groups)('%s', (group) => {
    const failed = checks.filter((c) => `${c.calculation}: ${c.group}` === group && !passes(c));
    expect(failed.map((c) => `${c.what}: ${c.computed} ${c.unit}, published ${c.published}`)).toEqual([]);
  });

  it('names calculations that exist', () => {
    expect([...new Set(checks.map((c) => c.calculation))].filter((id) => !calculationById(id))).toEqual([]);
  });
});
