import { describe, expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { buildSequence } from '@latchwork/core/exports/build-sequence';
import { rangesText } from '@latchwork/core/exports/build-sequence/build-steps';
import { Paper } from '@latchwork/core/exports/paper/paper';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { demoFromFile } from '../demos/demo-files';

const inputOf = (change?: (t: TinyDraft) => void) => {
  const harness = deriveHarness(tiny(change));
  return { harness, check: checkHarness(harness, []), date: '2026-03-01' };
};
const rowsOf = (change?: (t: TinyDraft) => void) => buildSequence.table(inputOf(change)).rows;

describe('build sequence', () => {
  it('cuts, crimps, loads, lays, locks, inspects, tests and packs', () => {
    expect(rowsOf().map((r) => [r.step, r.stage, r.quantity])).toEqual([
      [1, 'cut and strip', 2],
      [2, 'crimp', 2],
      [3, 'crimp', 2],
      [4, 'load connectors', 2],
      [5, 'load connectors', 2],
      [6, 'lay on the board', 1],
      [7, 'lock', 2],
      [8, 'inspect', 1],
      [9, 'test', 1],
      [10, 'cap and pack', 1],
    ]);
  });

  it('counts what a step uses up and says why it comes then', () => {
    const crimp = rowsOf().find((r) => r.step === 2);
    expect([crimp?.parts, crimp?.after, crimp?.why]).toEqual([
      '2 x C-PIN',
      '1',
      'the wire must be cut and stripped',
    ]);
  });

  it('states how hard a seated contact may be tugged, or that nobody says', () => {
    const load = rowsOf((t) => {
      for (const c of ['C-SOCKET', 'C-PIN']) delete t.part('contact', c).crimps;
    }).find((r) => r.stage === 'load connectors');
    // 80 % (NASA-STD-8739.4, 13.8) of 40 N (IEC 60352-2, table 1, 22 AWG, from memory).
    expect(load?.remarks).toBe('tug with at most 32 N (80 % of the least pull-out force)');
    const silent = rowsOf((t) => void delete t.wire('W1').part).find((r) => r.stage === 'load connectors');
    expect(silent?.remarks).toBe('tug: limit not stated');
  });

  it('waits only for steps that come before', () => {
    for (const name of ['weather-station', 'workshop-faults']) {
      const harness = deriveHarness(demoFromFile(name));
      const { rows } = buildSequence.table({ harness, check: checkHarness(harness, []), date: '2026-03-01' });
      for (const row of rows)
        for (const n of String(row.after ?? '').match(/\d+/g) ?? [])
          expect([name, row.step, Number(n) < Number(row.step)]).toEqual([name, row.step, true]);
    }
  });

  it('is made as paper with the cautions of the bench', () => {
    const paper = Paper.parse(buildSequence.paper?.(inputOf()));
    expect(JSON.stringify(paper.blocks)).toContain('Presses pinch');
  });

  it('writes runs of numbers as people do', () => {
    expect(rangesText([1, 2, 3, 4, 7, 9, 10])).toBe('1 to 4, 7, 9, 10');
  });
});
