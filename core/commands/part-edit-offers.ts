import { z } from 'zod';
import { Id } from '../model/ids';
import { Offer } from '../model/parts/common';
import { command } from './command';
import { draftObject, missing, objectIn } from './shared/draft-object';

/** What suppliers ask for a part. The list as a whole: an offer has no name of its own. */
export const partEditOffers = command({
  id: 'part.edit-offers',
  label: 'Edit offers',
  args: z.strictObject({ id: Id, offers: z.array(Offer) }),
  refuse: (project, { id, offers }) =>
    missing(project, 'parts', [id], 'part record') ??
    offers.map((o, i) => breakTwice(i, o)).find((reason) => reason !== null) ??
    null,
  run(draft, { id, offers }, _context, project) {
    const before = objectIn(project, 'parts', id)?.offers ?? [];
    if (JSON.stringify(before) === JSON.stringify(offers)) return;
    const part = draftObject(draft, project, 'parts', id);
    if (offers.length > 0) part.offers = offers;
    else delete part.offers;
  },
});

/** Two prices from the same quantity on: nobody could say which holds. */
function breakTwice(index: number, offer: Offer): string | null {
  const seen = new Set<number>();
  for (const { quantity } of offer.priceBreaks) {
    if (seen.has(quantity))
      return `Offer ${index + 1} (${offer.supplier}) has two prices from ${quantity} on.`;
    seen.add(quantity);
  }
  return null;
}
