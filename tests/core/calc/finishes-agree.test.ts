import { finishesAgree } from '@latchwork/core/calc/finishes-agree';
import { Finish } from '@latchwork/core/model/parts/common';
import { describe, expect, it } from 'vitest';
import reference from '../../files/reference/plating-mating.json';

/** The names of the reference table, in ours. Gold-flashed palladium-nickel is a palladium-nickel finish to us. */
const NAMES: Readonly<Record<string, Finish>> = {
  gold: 'gold',
  tin: 'tin',
  silver: 'silver',
  'palladium nickel flash gold': 'palladium-nickel',
};

// The matrix is from memory; "tin mated to gold: not recommended" is published by Chudnovsky, CRC Press.
describe('finishes of contacts that meet', () => {
  const rows = Object.entries(reference.matrix.rows);

  it('are all known to us', () => {
    expect(rows).toHaveLength(7);
    for (const [pair] of rows) for (const name of pair.split('-')) expect(NAMES[name], name).toBeDefined();
  });

  it.each(rows)('%s: %s', (pair, verdict) => {
    const [a, b] = pair.split('-').map((name) => NAMES[name] as Finish);
    expect(finishesAgree(a!, b!)).toBe(verdict === 'ok');
    expect(finishesAgree(b!, a!)).toBe(verdict === 'ok');
  });

  it('tin on gold is not recommended', () => {
    const published = reference.rules.find((r) => r.rule === 'tin mated to gold');
    expect(published).toMatchObject({ verdict: 'not recommended', confidence: 'published' });
    expect(finishesAgree('tin', 'gold')).toBe(false);
  });

  it.each(Finish.options)('%s agrees with itself', (finish) => {
    expect(finishesAgree(finish, finish)).toBe(true);
  });
});
