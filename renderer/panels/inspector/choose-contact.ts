import { contactFit, type Fit } from '@latchwork/core/derive/contact-fit';
import { partOfKind, type Part } from '@latchwork/core/model/parts/part';
import type { ContactPart } from '@latchwork/core/model/parts/contact';
import type { HousingPart } from '@latchwork/core/model/parts/housing';
import type { Conductor } from '@latchwork/core/model/parts/wire';
import type { ResolvedEnd, ResolvedWire } from '@latchwork/core/derive/harness';
import { appStore } from '../../app/store';
import { type Judgement, askPart } from '../part-picker';

/** What a fit says, for a list: fitting first, then what cannot be verified, then what does not fit and why. */
export function judgementOf(fit: Fit, description: string): Judgement {
  switch (fit.verdict) {
    case 'fits':
      return { group: 'Fits housing and wire', rank: 0, note: description };
    case 'unknown':
      return {
        group: 'Cannot be verified',
        rank: 1,
        note: `needs ${fit.needs.map((n) => n.what).join(', ')}`,
      };
    case 'does-not-fit':
      return {
        group: 'Does not fit: may be chosen, and is then a finding',
        rank: 2,
        note: fit.reasons
          .map((r) => `${r.aspect.replaceAll('-', ' ')}: ${r.measured}, takes ${r.limit}`)
          .join('; '),
      };
  }
}

/** The contact of an end against housing and wire; null where there is nothing to judge. */
export function fitOf(
  housing: HousingPart | undefined,
  contact: ContactPart | undefined,
  conductor: Conductor | undefined,
): Fit | null {
  return housing && contact ? contactFit(housing, contact, conductor ? [conductor] : []) : null;
}

/** Lets the user choose the contact on a wire's end. */
export async function chooseContactFor(
  wire: ResolvedWire,
  index: 0 | 1,
  end: ResolvedEnd,
  parts: readonly Part[],
): Promise<void> {
  const housing = partOfKind(end.connector?.part, 'housing');
  const place =
    end.end.at === 'cavity' ? `${end.connector?.connector.designator ?? '?'}:${end.end.cavity}` : '';
  const answer = await askPart<ContactPart>({
    title: `Contact of ${wire.wire.designator} at ${place}`,
    parts: parts.filter((p) => p.kind === 'contact'),
    current: end.contact?.part,
    none: end.contact ? 'No contact' : undefined,
    judge: (contact) => {
      const fit = fitOf(housing, contact, wire.conductor);
      return fit
        ? judgementOf(fit, contact.description)
        : { group: 'Contacts', rank: 0, note: contact.description };
    },
  });
  if (answer)
    appStore
      .getState()
      .dispatch({ id: 'contact.set', args: { wire: wire.wire.id, end: index, part: answer.part } });
}
