import { calculationById, CALCULATIONS } from '@latchwork/core/calc/index';
import { describe, expect, it } from 'vitest';
import { passes } from './check';
import { electricalChecks } from './electrical-checks';
import { geometryChecks as checks } from './geometry-checks';

const groups = [...new Set(checks.map((c) => `${c.calculation}: ${c.group}`))];

describe('every calculation of geometry and process against published numbers', () => {
  it.each(groups)('%s', (group) => {
    const failed = checks.filter((c) => `${c.calculation}: ${c.group}` === group && !passes(c));
    expect(failed.map((c) => `${c.what}: ${c.computed} ${c.unit}, published ${c.published}`)).toEqual([]);
  });

  it('names calculations that exist', () => {
    expect([...new Set(checks.map((c) => c.calculation))].filter((id) => !calculationById(id))).toEqual([]);
  });

  it('leaves no calculation of the program without a check', () => {
    const checked = new Set([...electricalChecks, ...checks].map((c) => c.calculation));
    expect(CALCULATIONS.map((c) => c.id).filter((id) => !checked.has(id))).toEqual([]);
  });

  it('never packs equal circles tighter than the record', () => {
    const records = checks.filter((c) => c.group.startsWith('equal circles'));
    expect(records).toHaveLength(61);
    for (const c of records) expect(c.computed - c.published, c.what).toBeGreaterThan(-1e-9 * c.published);
  });
});
