import { compareWireSize, parseWireSize, wireSizeText, WireSize } from '@latchwork/core/model/wire-size';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const awg = (gauge: number): WireSize => ({ system: 'awg', gauge });
const mm2 = (areaMm2: number): WireSize => ({ system: 'mm2', areaMm2 });

const anySize = fc.oneof(
  fc.integer({ min: -3, max: 50 }).map(awg),
  fc.integer({ min: 1, max: 100_000 }).map((n) => mm2(n / 1000)),
);

describe('reading a wire size', () => {
  it.each([
    ['22 AWG', awg(22)],
    ['22AWG', awg(22)],
    ['AWG 22', awg(22)],
    ['awg22', awg(22)],
    ['1/0 AWG', awg(0)],
    ['2/0 AWG', awg(-1)],
    ['4/0 AWG', awg(-3)],
    ['0.35 mm2', mm2(0.35)],
    ['0.35 mm²', mm2(0.35)],
    ['0,35 mm2', mm2(0.35)],
    ['2.5mm2', mm2(2.5)],
    [' 1 MM2 ', mm2(1)],
  ])('%s', (text, size) => {
    expect(parseWireSize(text)).toEqual({ ok: true, value: size });
  });

  it.each([
    '',
    '22',
    '0.35',
    '22 mm',
    'AWG',
    '5/0 AWG',
    '51 AWG',
    '22 AWG 7',
    '0 mm2',
    '-1 mm2',
    '0.35 sq',
    '22 AWG / 0.35 mm2',
  ])('refuses "%s"', (text) => {
    expect(parseWireSize(text).ok).toBe(false);
  });

  it('says how to write it', () => {
    const read = parseWireSize('22');
    expect(read.ok ? '' : read.problem).toContain('"22 AWG" or "0.35 mm2"');
  });

  it('reads back every size it writes', () => {
    fc.assert(
      fc.property(anySize, (size) => {
        expect(parseWireSize(wireSizeText(size))).toEqual({ ok: true, value: size });
        expect(WireSize.parse(size)).toEqual(size);
      }),
    );
  });
});

describe('comparing', () => {
  it.each([
    [awg(26), awg(22)],
    [awg(1), awg(0)],
    [awg(0), awg(-3)],
    [mm2(0.35), mm2(0.5)],
  ])('%j is thinner than %j', (thin, thick) => {
    expect(compareWireSize(thin, thick)).toBeLessThan(0);
    expect(compareWireSize(thick, thin)).toBeGreaterThan(0);
    expect(compareWireSize(thin, thin)).toBe(0);
  });

  it('never ranks a gauge against square millimetres', () => {
    fc.assert(
      fc.property(anySize, anySize, (a, b) => {
        if (a.system !== b.system) expect(compareWireSize(a, b)).toBeNull();
        else expect(compareWireSize(a, b)).not.toBeNull();
      }),
    );
  });
});
