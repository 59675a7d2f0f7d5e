import { matingObstacles } from '@latchwork/core/derive/mating';
import { tiny } from '@latchwork/core/model/tiny';
import type { MatingHalf } from '@latchwork/core/model/parts/part';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const parts = tiny().parts;
const socket = parts.find((p) => p.partNumber === 'H-SOCKET') as MatingHalf;
const pin = parts.find((p) => p.partNumber === 'H-PIN') as MatingHalf;

const codes = (a: MatingHalf, b: MatingHalf): string[] => matingObstacles(a, b).obstacles.map((o) => o.code);

describe('two halves of a mating pair', () => {
  it('mate when all agrees', () => {
    expect(matingObstacles(socket, pin)).toEqual({ obstacles: [], unknown: [] });
  });

  it.each<[string, Partial<MatingHalf>, string, string]>([
    ['another interface', { interface: 'F2' }, 'interface', 'interface is F2 on H-SOCKET, E3 on H-PIN'],
    ['more ways', { ways: 4 }, 'ways', 'number of ways is 4 on H-SOCKET, 3 on H-PIN'],
    ['other rows', { rows: 3 }, 'ways', 'number of rows is 3 on H-SOCKET, 1 on H-PIN'],
    [
      'a pitch that only looks the same',
      { pitchMm: 3.05 },
      'pitch',
      'pitch is 3.05 mm on H-SOCKET, 3 mm on H-PIN',
    ],
    ['the same body form', { bodyForm: 'plug' }, 'body-form', 'H-SOCKET and H-PIN both have body form plug'],
    [
      'the same contact kind',
      { contactKind: 'pin' },
      'contact-kind',
      'H-SOCKET and H-PIN both have contact kind pin',
    ],
    ['another key', { keying: 'A' }, 'keying', 'keying code is A on H-SOCKET, none on H-PIN'],
  ])('do not mate with %s', (_, change, code, text) => {
    expect(matingObstacles({ ...socket, ...change } as MatingHalf, pin).obstacles).toEqual([{ code, text }]);
  });

  // Common practice: 2.50 and 2.54 mm parts look alike and do not fit; the end-to-end error of 6 ways is 0.2 mm.
  it('tell 2.50 mm from 2.54 mm', () => {
    const metric = { ...socket, pitchMm: 2.5 };
    expect(codes(metric, { ...pin, pitchMm: 2.54 })).toEqual(['pitch']);
    expect(codes(metric, { ...pin, pitchMm: 2.5 })).toEqual([]);
  });

  it('take a pitch typed in inches for the same pitch', () => {
    expect(codes({ ...socket, pitchMm: 0.1 * 25.4 }, { ...pin, pitchMm: 2.54 })).toEqual([]);
  });

  it.each(['interface', 'rows', 'pitchMm', 'bodyForm', 'contactKind', 'keying'] as const)(
    'leave the question open when %s is not stated',
    (field) => {
      const blank = { ...pin, [field]: undefined } as MatingHalf;
      expect(matingObstacles(socket, blank)).toEqual({ obstacles: [], unknown: [{ field, part: blank }] });
    },
  );

  it('need neither rows nor pitch when they have one way', () => {
    const one = { ways: 1, rows: undefined, pitchMm: undefined };
    expect(matingObstacles({ ...socket, ...one } as MatingHalf, { ...pin, ...one } as MatingHalf)).toEqual({
      obstacles: [],
      unknown: [],
    });
  });

  it('compare row pitch only where both state it', () => {
    const two = { ways: 6, rows: 2 };
    expect(codes({ ...socket, ...two, rowPitchMm: 3 }, { ...pin, ...two, rowPitchMm: 3.2 })).toEqual([
      'pitch',
    ]);
    expect(codes({ ...socket, ...two, rowPitchMm: 3 }, { ...pin, ...two })).toEqual([]);
  });

  it('are judged the same from both sides', () => {
    const half = fc.record({
      interface: fc.constantFrom('E3', 'F2', undefined),
      ways: fc.constantFrom(1, 2, 3),
      rows: fc.constantFrom(1, 2, undefined),
      pitchMm: fc.constantFrom(2.5, 2.54, undefined),
      bodyForm: fc.constantFrom('plug', 'receptacle', undefined),
      contactKind: fc.constantFrom('pin', 'socket', undefined),
      keying: fc.constantFrom('none', 'A', undefined),
    });
    fc.assert(
      fc.property(half, half, (x, y) => {
        const a = { ...socket, ...x } as MatingHalf;
        const b = { ...pin, ...y } as MatingHalf;
        expect(codes(a, b)).toEqual(codes(b, a));
        expect(matingObstacles(a, b).unknown.length).toBe(matingObstacles(b, a).unknown.length);
      }),
    );
  });
});
