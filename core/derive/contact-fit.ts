import { compareNatural, compareText } from '../base/stable-order';
import type { Finish } from '../model/parts/common';
import type { ContactPart } from '../model/parts/contact';
import type { HousingPart } from '../model/parts/housing';
import type { Part } from '../model/parts/part';
import type { Conductor } from '../model/parts/wire';
import type { WireSize } from '../model/wire-size';
import { conductorFit, doubleCrimpFit, insulationFit, solidFit } from './crimp-fit';
import type { Fit, FitFact, FitNeed } from './fit';

export { conductorFit, doubleCrimpFit, insulationFit, metalAreaMm2, solidFit } from './crimp-fit';
export type { Fit, FitAspect, FitFact, FitNeed, FitReason } from './fit';

/** Pin contacts go only into housings for pins, socket contacts only into housings for sockets. */
export function contactKindFit(
  housing: Pick<HousingPart, 'contactKind'>,
  contact: Pick<ContactPart, 'contactKind'>,
): Fit {
  const facts: FitFact[] = [];
  const needs: FitNeed[] = [];
  if (housing.contactKind)
    facts.push({ of: 'housing', label: 'contacts it takes', value: housing.contactKind });
  else needs.push({ of: 'housing', field: 'contactKind', what: 'contact kind' });
  if (contact.contactKind) facts.push({ of: 'contact', label: 'contact kind', value: contact.contactKind });
  else needs.push({ of: 'contact', field: 'contactKind', what: 'contact kind' });
  if (!housing.contactKind || !contact.contactKind) return { verdict: 'unknown', facts, needs };
  if (housing.contactKind === contact.contactKind) return { verdict: 'fits', facts };
  const reason = { measured: contact.contactKind, limit: housing.contactKind };
  return { verdict: 'does-not-fit', facts, reasons: [{ aspect: 'contact-kind', ...reason }] };
}

/** The contact's series is one of those that latch in the housing. */
export function contactSeriesFit(
  housing: Pick<HousingPart, 'acceptedSeries'>,
  contact: Pick<ContactPart, 'series'>,
): Fit {
  const accepted = housing.acceptedSeries;
  const facts: FitFact[] = [];
  const needs: FitNeed[] = [];
  if (accepted) facts.push({ of: 'housing', label: 'accepted series', value: accepted.join(', ') || 'none' });
  else needs.push({ of: 'housing', field: 'acceptedSeries', what: 'accepted series' });
  if (contact.series) facts.push({ of: 'contact', label: 'series', value: contact.series });
  else needs.push({ of: 'contact', field: 'series', what: 'series' });
  if (!accepted || !contact.series) return { verdict: 'unknown', facts, needs };
  if (accepted.includes(contact.series)) return { verdict: 'fits', facts };
  const reason = { measured: contact.series, limit: accepted.join(', ') || 'none' };
  return { verdict: 'does-not-fit', facts, reasons: [{ aspect: 'contact-series', ...reason }] };
}

/** All aspects together: no fit if one says so, else unknown if one lacks an input. */
export function contactFit(
  housing: HousingPart,
  contact: ContactPart,
  conductors: readonly Conductor[],
): Fit {
  const fits = [
    contactKindFit(housing, contact),
    contactSeriesFit(housing, contact),
    ...(conductors.length > 0 ? [conductorFit(contact, conductors)] : []),
    ...conductors.flatMap((c, wire) => [insulationFit(contact, c, wire), solidFit(contact, c, wire)]),
    doubleCrimpFit(contact, conductors),
  ];
  const facts = fits.flatMap((f) => f.facts);
  const reasons = fits.flatMap((f) => (f.verdict === 'does-not-fit' ? f.reasons : []));
  if (reasons.length > 0) return { verdict: 'does-not-fit', facts, reasons };
  const needs = fits.flatMap((f) => (f.verdict === 'unknown' ? f.needs : []));
  return needs.length > 0 ? { verdict: 'unknown', facts, needs } : { verdict: 'fits', facts };
}

/**
 * The contact that fits housing and wires, or null when none of the candidates surely does. Of several: the
 * preferred finish, then the narrowest conductor range, then the part number.
 */
export function chooseContact(
  housing: HousingPart,
  conductors: readonly Conductor[],
  candidates: readonly Part[],
  prefer: { readonly finish?: Finish | undefined } = {},
): ContactPart | null {
  const fitting = candidates.filter(
    (p): p is ContactPart => p.kind === 'contact' && contactFit(housing, p, conductors).verdict === 'fits',
  );
  const wrongFinish = (c: ContactPart): number => (prefer.finish && c.finish !== prefer.finish ? 1 : 0);
  fitting.sort(
    (a, b) =>
      wrongFinish(a) - wrongFinish(b) ||
      compareRanges(a, b) ||
      compareNatural(a.partNumber, b.partNumber) ||
      compareText(a.id, b.id),
  );
  return fitting[0] ?? null;
}

/** Ranges by area come before those by designation, since the two cannot be compared. */
function compareRanges(a: ContactPart, b: ContactPart): number {
  const [systemA, widthA] = rangeWidth(a);
  const [systemB, widthB] = rangeWidth(b);
  return systemA - systemB || widthA - widthB;
}

function rangeWidth(c: ContactPart): readonly [number, number] {
  if (c.areaMinMm2 !== undefined && c.areaMaxMm2 !== undefined) return [0, c.areaMaxMm2 - c.areaMinMm2];
  const span = (min: WireSize | undefined, max: WireSize | undefined): readonly [number, number] => {
    if (min?.system === 'awg' && max?.system === 'awg') return [1, min.gauge - max.gauge];
    if (min?.system === 'mm2' && max?.system === 'mm2') return [2, max.areaMm2 - min.areaMm2];
    return [3, 0];
  };
  return span(c.sizeMin, c.sizeMax);
}
