import {
  chooseContact,
  conductorFit,
  contactFit,
  contactKindFit,
  contactSeriesFit,
  doubleCrimpFit,
  insulationFit,
  solidFit,
  type Fit,
} from '@latchwork/core/derive/contact-fit';
import type { ContactPart } from '@latchwork/core/model/parts/contact';
import type { HousingPart } from '@latchwork/core/model/parts/housing';
import { partOfKind } from '@latchwork/core/model/parts/part';
import type { Conductor } from '@latchwork/core/model/parts/wire';
import { tiny } from '@latchwork/core/model/tiny';
import type { WireSize } from '@latchwork/core/model/wire-size';
import { describe, expect, it } from 'vitest';

const parts = tiny().parts;
const named = (number: string) => parts.find((p) => p.partNumber === number);
const housing = partOfKind(named('H-SOCKET'), 'housing') as HousingPart;
const socket = partOfKind(named('C-SOCKET'), 'contact') as ContactPart;
const gold = partOfKind(named('C-SOCKET-AU'), 'contact') as ContactPart;
const pin = partOfKind(named('C-PIN'), 'contact') as ContactPart;
const wire22 = partOfKind(named('WIRE-22'), 'wire') as Conductor;

const awg = (gauge: number): WireSize => ({ system: 'awg', gauge });
const mm2 = (areaMm2: number): WireSize => ({ system: 'mm2', areaMm2 });
/** A conductor known by its designation alone. */
const sized = (size: WireSize): Conductor => ({ size });
const noAreas = { ...socket, areaMinMm2: undefined, areaMaxMm2: undefined };
const fieldsOf = (fit: Fit): string[] =>
  fit.verdict === 'unknown' ? fit.needs.map((n) => `${n.of}.${n.field}`) : [];

describe('kind and series', () => {
  it.each([
    ['socket', 'socket', 'fits'],
    ['pin', 'socket', 'does-not-fit'],
    ['socket', 'pin', 'does-not-fit'],
    [undefined, 'pin', 'unknown'],
    ['pin', undefined, 'unknown'],
  ] as const)('%s contact in a housing for %s: %s', (contactKind, housed, verdict) => {
    expect(contactKindFit({ contactKind: housed }, { contactKind }).verdict).toBe(verdict);
  });

  it.each([
    ['E3', ['E3'], 'fits'],
    ['E3', ['E4', 'E3'], 'fits'],
    ['E3', [], 'does-not-fit'],
    ['E5', ['E3'], 'does-not-fit'],
    [undefined, ['E3'], 'unknown'],
    ['E3', undefined, 'unknown'],
  ] as const)('series %s in a housing that takes %s: %s', (series, accepted, verdict) => {
    const acceptedSeries = accepted ? [...accepted] : undefined;
    expect(contactSeriesFit({ acceptedSeries }, { series }).verdict).toBe(verdict);
  });

  it('names every field that is missing', () => {
    expect(fieldsOf(contactKindFit({}, {}))).toEqual(['housing.contactKind', 'contact.contactKind']);
  });
});

describe('conductor', () => {
  it.each([0.2, 0.355, 0.62])('%d mm2 is within 0.2 to 0.62 mm2, both ends included', (areaMm2) => {
    expect(conductorFit(socket, [{ ...sized(mm2(areaMm2)), areaMm2 }]).verdict).toBe('fits');
  });

  it.each([0.1999, 0.6201])('%d mm2 is outside', (areaMm2) => {
    expect(conductorFit(socket, [{ ...sized(awg(22)), areaMm2 }]).verdict).toBe('does-not-fit');
  });

  it('lets areas decide over designations', () => {
    // A coarse 20 AWG strand with more metal than the barrel takes, although the gauge is listed.
    expect(conductorFit(socket, [{ size: awg(20), areaMm2: 0.63 }])).toMatchObject({
      verdict: 'does-not-fit',
      reasons: [{ aspect: 'conductor', measured: '0.63 mm2', limit: '0.2 to 0.62 mm2' }],
    });
  });

  it('takes the metal of the strands where no area is stated', () => {
    const stranding = { strands: 7, strandDiameterMm: 0.254 };
    expect(conductorFit(socket, [{ size: mm2(0.35), stranding }]).verdict).toBe('fits');
    expect(
      conductorFit(socket, [{ size: mm2(0.35), stranding: { ...stranding, strands: 19 } }]).verdict,
    ).toBe('does-not-fit');
  });

  it.each([
    [24, 'fits'],
    [20, 'fits'],
    [26, 'does-not-fit'],
    [18, 'does-not-fit'],
  ] as const)('by gauge alone, %d AWG in 20 to 24 AWG: %s', (gauge, verdict) => {
    expect(conductorFit(socket, [sized(awg(gauge))]).verdict).toBe(verdict);
    expect(conductorFit(noAreas, [{ ...sized(awg(gauge)), areaMm2: 99 }]).verdict).toBe(verdict);
  });

  it('never equates a gauge with square millimetres', () => {
    const fit = conductorFit(noAreas, [sized(mm2(0.5))]);
    expect(fit.verdict).toBe('unknown');
    expect(fieldsOf(fit)).toEqual(['contact.areaMinMm2', 'contact.areaMaxMm2', 'wire.areaMm2']);
    const metric = { ...noAreas, sizeMin: mm2(0.2), sizeMax: mm2(0.5) };
    expect(conductorFit(metric, [sized(awg(22))]).verdict).toBe('unknown');
    expect(conductorFit(metric, [sized(mm2(0.5))]).verdict).toBe('fits');
  });

  it('adds the areas of wires that share the barrel, and needs each of them', () => {
    const thin = { size: awg(24), areaMm2: 0.3 };
    expect(conductorFit(socket, [thin, thin]).verdict).toBe('fits');
    expect(conductorFit(socket, [wire22, wire22]).verdict).toBe('does-not-fit');
    expect(fieldsOf(conductorFit(socket, [thin, sized(awg(24))]))).toEqual(['wire.areaMm2']);
  });

  it('fails on one bound that is broken, passes only when both are known', () => {
    const half = { ...noAreas, areaMaxMm2: 0.62, sizeMin: undefined, sizeMax: undefined };
    expect(conductorFit(half, [{ size: awg(16), areaMm2: 1.3 }]).verdict).toBe('does-not-fit');
    expect(fieldsOf(conductorFit(half, [{ size: awg(22), areaMm2: 0.35 }]))).toEqual(['contact.areaMinMm2']);
  });
});

describe('insulation', () => {
  it.each([
    [{ odMm: 0.89 }, 'fits'],
    [{ odMm: 1.53 }, 'fits'],
    [{ odMm: 0.88 }, 'does-not-fit'],
    [{ odMm: 1.54 }, 'does-not-fit'],
    [{ odMinMm: 1.1, odMaxMm: 1.5 }, 'fits'],
    // The nominal diameter is inside, the largest one is not.
    [{ odMinMm: 1.3, odMm: 1.5, odMaxMm: 1.7 }, 'does-not-fit'],
    [{ odMinMm: 0.8, odMm: 1.0, odMaxMm: 1.2 }, 'does-not-fit'],
    [{ odMinMm: 1.1 }, 'unknown'],
    [{}, 'unknown'],
  ] as const)('%j in 0.89 to 1.53 mm: %s', (od, verdict) => {
    expect(insulationFit(socket, { size: awg(22), ...od }).verdict).toBe(verdict);
  });

  it('needs the band of the contact', () => {
    const fit = insulationFit({ ...socket, insulationMaxMm: undefined }, wire22);
    expect(fieldsOf(fit)).toEqual(['contact.insulationMaxMm']);
  });
});

describe('solid wire and shared crimps', () => {
  const solid: Conductor = { ...wire22, stranding: { strands: 1, strandDiameterMm: 0.64 } };

  it.each([
    [true, solid, 'does-not-fit'],
    [false, solid, 'fits'],
    [undefined, solid, 'unknown'],
    [true, wire22, 'fits'],
    [undefined, wire22, 'fits'],
    [true, sized(awg(22)), 'unknown'],
    [false, sized(awg(22)), 'fits'],
  ] as const)('stranded only %s: case %#, %s', (strandedOnly, conductor, verdict) => {
    expect(solidFit({ ...socket, strandedOnly }, conductor as Conductor).verdict).toBe(verdict);
  });

  const approves24with26 = { ...socket, doubleCrimps: [[awg(24), awg(26)] as [WireSize, WireSize]] };

  it.each([
    [[24, 26], 'fits'],
    [[26, 24], 'fits'],
    [[24, 24], 'does-not-fit'],
    [[24, 26, 26], 'does-not-fit'],
    [[24], 'fits'],
  ] as const)('%j AWG where 24 with 26 is approved: %s', (gauges, verdict) => {
    expect(
      doubleCrimpFit(
        approves24with26,
        gauges.map((g) => sized(awg(g))),
      ).verdict,
    ).toBe(verdict);
  });

  it('does not take a missing list for permission, nor an empty one for silence', () => {
    const two = [wire22, wire22];
    expect(doubleCrimpFit({ ...socket, doubleCrimps: undefined }, two).verdict).toBe('unknown');
    expect(doubleCrimpFit({ ...socket, doubleCrimps: [] }, two).verdict).toBe('does-not-fit');
  });
});

describe('choosing a contact', () => {
  it('takes only one that surely fits', () => {
    expect(chooseContact(housing, [wire22], parts)?.partNumber).toBe('C-SOCKET');
    expect(chooseContact(housing, [wire22], [pin])).toBeNull();
    expect(chooseContact(housing, [sized(awg(22))], parts)).toBeNull();
    expect(chooseContact(housing, [{ ...wire22, odMm: 1.6 }], parts)).toBeNull();
    expect(contactFit(housing, socket, []).verdict).toBe('fits');
  });

  it('prefers the finish, then the narrowest range, then the part number, whatever the order of the list', () => {
    const narrow = { ...socket, id: 'n', partNumber: 'Z-NARROW', areaMinMm2: 0.3 };
    const all = [gold, narrow, socket, pin];
    for (const list of [all, all.toReversed()]) {
      expect(chooseContact(housing, [wire22], list)?.partNumber).toBe('Z-NARROW');
      expect(chooseContact(housing, [wire22], list, { finish: 'gold' })?.partNumber).toBe('C-SOCKET-AU');
      expect(
        chooseContact(
          housing,
          [wire22],
          list.filter((c) => c !== narrow),
        )?.partNumber,
      ).toBe('C-SOCKET');
    }
  });
});
