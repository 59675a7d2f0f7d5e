import type { Fit } from '../../derive/contact-fit';
import { conductorsOf, crimpsOf, type Crimp } from '../../derive/crimps';
import type { CavityUse } from '../../derive/harness';
import type { ContactPart } from '../../model/parts/contact';
import type { HousingPart } from '../../model/parts/housing';
import type { Conductor } from '../../model/parts/wire';
import type { Fix, ObjectRef } from '../finding';
import { cavityRef, contactRef, wireRef } from '../refs';
import type { Data, Report } from '../rule';
import { crimpNames, crimpRefs } from './crimp-data';
import { fitContact } from './fit-contact';
import { fitEvidence, fitNeeds, wirePartNeeds, type FitBetween } from './fit-words';

/** What a fit is reported with, whatever it says. */
interface Subject {
  readonly at: readonly ObjectRef[];
  readonly data: Data;
  readonly between: FitBetween;
  readonly fix: Fix | undefined;
}

function tell(report: Report, fit: Fit, { at, data, between, fix }: Subject): void {
  const evidence = fitEvidence(fit, between);
  if (fit.verdict === 'fits') report.pass();
  else if (fit.verdict === 'unknown')
    report.cannotVerify({ at, data, evidence, needs: fitNeeds(fit, between) });
  else
    for (const { measured, limit } of fit.reasons)
      report.fail({ at, data: { ...data, measured, limit }, evidence, fix });
}

/** Holds every contact of a cavity against its housing by one aspect of the fit. */
export function judgeContacts(
  cavity: CavityUse,
  report: Report,
  fitOf: (housing: HousingPart, contact: ContactPart) => Fit,
): void {
  const housing = cavity.connector.part;
  if (housing?.kind !== 'housing') return;
  for (const crimp of crimpsOf(cavity)) {
    const { wires: _, ...data } = crimpNames(cavity, crimp);
    const fix = crimp.contact && fitContact(cavity);
    const between = { housing, contact: crimp.part };
    tell(report, fitOf(housing, crimp.part), { at: crimpRefs(cavity, crimp), data, between, fix });
  }
}

/** Holds the wires of every crimp together against its contact; crimps of fewer wires are outside the subject. */
export function judgeCrimps(
  cavity: CavityUse,
  report: Report,
  leastWires: number,
  fitOf: (contact: ContactPart, conductors: readonly Conductor[]) => Fit,
): void {
  for (const crimp of crimpsOf(cavity)) {
    if (crimp.ends.length < leastWires) continue;
    const at = crimpRefs(cavity, crimp);
    const data = crimpNames(cavity, crimp);
    const conductors = conductorsOf(crimp);
    if (!conductors) report.cannotVerify({ at, data, needs: wirePartNeeds(crimp.ends) });
    else
      tell(report, fitOf(crimp.part, conductors), {
        at,
        data,
        between: betweenOf(crimp),
        fix: fitContact(cavity),
      });
  }
}

/** Holds every wire of every crimp on its own against its contact. */
export function judgeWires(
  cavity: CavityUse,
  report: Report,
  fitOf: (contact: ContactPart, conductor: Conductor) => Fit,
): void {
  for (const crimp of crimpsOf(cavity))
    for (const end of crimp.ends) {
      const contact = crimp.contact ? [contactRef(crimp.contact)] : [];
      const at = [cavityRef(cavity), wireRef(end.wire), ...contact];
      const data = { ...crimpNames(cavity, crimp), wire: end.wire.wire.designator };
      const { conductor } = end.wire;
      if (!conductor) report.cannotVerify({ at, data, needs: wirePartNeeds([end]) });
      else {
        const between = { contact: crimp.part, ends: [end] };
        tell(report, fitOf(crimp.part, conductor), { at, data, between, fix: fitContact(cavity) });
      }
    }
}

const betweenOf = (crimp: Crimp): FitBetween => ({ contact: crimp.part, ends: crimp.ends });
