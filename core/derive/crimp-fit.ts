import { memoByPair } from '../base/memo-by-pair';
import { strandAreaMm2 } from '../calc/strand-area';
import type { ContactPart } from '../model/parts/contact';
import type { Conductor } from '../model/parts/wire';
import { wireSizeText, type WireSize } from '../model/wire-size';
import type { Fit, FitFact, FitNeed } from './fit';
import { band, bandFacts, bandNeeds, bandText, rounded, sizeWithin } from './fit-band';

/** Metal area of a conductor, mm2: as its maker states it, else that of its strands. Never from the designation. */
export function metalAreaMm2(conductor: Conductor): number | undefined {
  return conductor.areaMm2 ?? (conductor.stranding && strandAreaMm2(conductor.stranding));
}

const areaLabel = (conductor: Conductor | undefined): string =>
  conductor?.areaMm2 === undefined ? 'metal area, sum of the strands' : 'metal area';

/**
 * The metal in the barrel is within the contact's range, ends included. Areas decide where the contact states a
 * range and every wire its area; else, for a single wire, the designations, if both are of the same system. A gauge
 * is never compared with square millimetres.
 */
export function conductorFit(contact: ContactPart, conductors: readonly Conductor[]): Fit {
  const [first, ...others] = conductors;
  return first && others.length === 0 ? fitOfOne(contact, first) : fitOfAll(contact, conductors);
}

/** Thousands of wires of a harness are of a few parts. */
const fitOfOne = memoByPair((contact: ContactPart, only: Conductor) => fitOfAll(contact, [only]));

function fitOfAll(contact: ContactPart, conductors: readonly Conductor[]): Fit {
  const areas = conductors.map(metalAreaMm2);
  const sum = areas.reduce<number | undefined>(
    (a, b) => (a === undefined || b === undefined ? undefined : a + b),
    0,
  );
  const { areaMinMm2, areaMaxMm2, sizeMin, sizeMax } = contact;
  const areaFacts: FitFact[] = [
    ...areas.flatMap((a, wire) =>
      a === undefined ? [] : [{ ...wireFact(wire, areaLabel(conductors[wire]), rounded(a)), unit: 'mm2' }],
    ),
    ...bandFacts('conductor area', areaMinMm2, areaMaxMm2, 'mm2'),
  ];
  const byArea = sum === undefined ? 'open' : band(sum, sum, areaMinMm2, areaMaxMm2);
  if (byArea === 'inside') return { verdict: 'fits', facts: areaFacts };
  if (byArea === 'outside' && sum !== undefined) {
    const reason = { measured: `${rounded(sum)} mm2`, limit: bandText(areaMinMm2, areaMaxMm2, 'mm2') };
    return { verdict: 'does-not-fit', facts: areaFacts, reasons: [{ aspect: 'conductor', ...reason }] };
  }

  const only = conductors.length === 1 ? conductors[0] : undefined;
  const facts: FitFact[] = [
    ...conductors.map((c, wire) => wireFact(wire, 'size', wireSizeText(c.size))),
    ...(sizeMin ? [{ of: 'contact' as const, label: 'thinnest wire', value: wireSizeText(sizeMin) }] : []),
    ...(sizeMax ? [{ of: 'contact' as const, label: 'thickest wire', value: wireSizeText(sizeMax) }] : []),
  ];
  const bySize = only ? sizeWithin(only.size, sizeMin, sizeMax) : 'open';
  if (bySize === 'inside') return { verdict: 'fits', facts };
  if (bySize === 'outside' && only) {
    const limit = [sizeMin, sizeMax].map((s) => (s ? wireSizeText(s) : 'not stated')).join(' to ');
    const reason = { measured: wireSizeText(only.size), limit };
    return { verdict: 'does-not-fit', facts, reasons: [{ aspect: 'conductor', ...reason }] };
  }
  const needs: FitNeed[] = [
    ...bandNeeds('area', 'Mm2', areaMinMm2, areaMaxMm2, 'conductor area'),
    ...areas.flatMap((a, wire) =>
      a === undefined ? [{ of: 'wire' as const, wire, field: 'areaMm2', what: 'metal area' }] : [],
    ),
  ];
  return { verdict: 'unknown', facts: [...areaFacts, ...facts], needs };
}

/**
 * The insulation diameter, from its smallest to its largest (else the nominal one), is within the band that the
 * insulation support grips, ends included.
 */
export const insulationFit = (contact: ContactPart, conductor: Conductor, wire = 0): Fit =>
  wire === 0 ? gripOfFirst(contact, conductor) : gripOn(contact, conductor, wire);

const gripOfFirst = memoByPair((contact: ContactPart, conductor: Conductor) => gripOn(contact, conductor, 0));

function gripOn(contact: ContactPart, conductor: Conductor, wire: number): Fit {
  const low = conductor.odMinMm ?? conductor.odMm;
  const high = conductor.odMaxMm ?? conductor.odMm;
  const { insulationMinMm: min, insulationMaxMm: max } = contact;
  const facts: FitFact[] = [
    ...(low === undefined ? [] : [{ ...wireFact(wire, 'smallest insulation diameter', low), unit: 'mm' }]),
    ...(high === undefined ? [] : [{ ...wireFact(wire, 'largest insulation diameter', high), unit: 'mm' }]),
    ...bandFacts('insulation diameter', min, max, 'mm'),
  ];
  const answer = band(low, high, min, max);
  if (answer === 'inside') return { verdict: 'fits', facts };
  if (answer === 'outside') {
    const measured = low === high ? `${low ?? ''} mm` : bandText(low, high, 'mm');
    const reason = { measured, limit: bandText(min, max, 'mm') };
    return { verdict: 'does-not-fit', facts, reasons: [{ aspect: 'insulation', ...reason }] };
  }
  const needs: FitNeed[] = bandNeeds('insulation', 'Mm', min, max, 'insulation diameter');
  if (low === undefined || high === undefined)
    needs.push({ of: 'wire', wire, field: 'odMm', what: 'insulation diameter' });
  return { verdict: 'unknown', facts, needs };
}

/** A conductor of one solid strand only where the contact permits it. */
export function solidFit(contact: ContactPart, conductor: Conductor, wire = 0): Fit {
  const strands = conductor.stranding?.strands;
  const facts: FitFact[] = [
    ...(strands === undefined ? [] : [wireFact(wire, 'strands', strands)]),
    ...(contact.strandedOnly === undefined
      ? []
      : [
          { of: 'contact' as const, label: 'stranded wire only', value: contact.strandedOnly ? 'yes' : 'no' },
        ]),
  ];
  if (contact.strandedOnly === false || (strands !== undefined && strands > 1))
    return { verdict: 'fits', facts };
  const needs: FitNeed[] = [];
  if (contact.strandedOnly === undefined)
    needs.push({ of: 'contact', field: 'strandedOnly', what: 'stranded-only mark' });
  if (strands === undefined) needs.push({ of: 'wire', wire, field: 'stranding', what: 'stranding' });
  if (needs.length > 0) return { verdict: 'unknown', facts, needs };
  const reason = { measured: 'solid', limit: 'stranded only' };
  return { verdict: 'does-not-fit', facts, reasons: [{ aspect: 'solid', ...reason }] };
}

/**
 * Two wires share a crimp only as a pair of sizes that the contact's maker approves. One wire always fits; three or
 * more are on no list. Whether their summed area is in range is for `conductorFit`.
 */
export function doubleCrimpFit(contact: ContactPart, conductors: readonly Conductor[]): Fit {
  if (conductors.length < 2) return { verdict: 'fits', facts: [] };
  const sizes = conductors.map((c) => c.size);
  const pairText = (pair: readonly WireSize[]): string => pair.map(wireSizeText).join(' with ');
  const approved = contact.doubleCrimps;
  const limit = approved?.map(pairText).join('; ') || 'none';
  const facts: FitFact[] = [
    ...sizes.map((s, wire) => wireFact(wire, 'size', wireSizeText(s))),
    ...(approved ? [{ of: 'contact' as const, label: 'approved pairs', value: limit }] : []),
  ];
  if (!approved) {
    const what = 'approved pairs';
    return { verdict: 'unknown', facts, needs: [{ of: 'contact', field: 'doubleCrimps', what }] };
  }
  if (approved.some((pair) => samePair(pair, sizes))) return { verdict: 'fits', facts };
  const reason = { measured: pairText(sizes), limit };
  return { verdict: 'does-not-fit', facts, reasons: [{ aspect: 'double-crimp', ...reason }] };
}

function samePair(pair: readonly WireSize[], sizes: readonly WireSize[]): boolean {
  const names = (list: readonly WireSize[]): string => list.map(wireSizeText).sort().join(' ');
  return names(pair) === names(sizes);
}

const wireFact = (wire: number, label: string, value: string | number): FitFact => ({
  of: 'wire',
  wire,
  label,
  value,
});
