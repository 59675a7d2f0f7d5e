import { compareNatural } from '../../base/stable-order';
import { cheapestChoice, orderChoices, type OrderChoice } from '../../calc/purchase/order-choices';
import type { Offer } from '../../model/parts/common';
import type { Part } from '../../model/parts/part';
import { FORM_NAMES, offerForm, type ContactForm, type FormWish } from './contact-form';

/** An offer that was looked at: what it would cost, or why it is not taken. */
export interface WeighedOffer {
  readonly offer: Offer;
  readonly form: ContactForm | undefined;
  /** Quantities that may be ordered of it, by quantity. */
  readonly choices: readonly OrderChoice[];
  readonly best: OrderChoice | undefined;
  /** Why it cannot be taken, in words. */
  readonly against?: string;
}

export interface ChosenOffer {
  readonly weighed: WeighedOffer;
  readonly choice: OrderChoice;
}

/**
 * Every offer of a part for a quantity, and the cheapest of those that may be taken: in a form that the tools take, with a
 * price, and in one currency (the one asked for, else the first by name): prices of different currencies are not compared.
 */
export function chooseOffer(
  part: Part,
  toBuy: number,
  wish: FormWish | null,
  currency: string | undefined,
): { readonly offers: readonly WeighedOffer[]; readonly chosen: ChosenOffer | undefined } {
  const weighed = (part.offers ?? []).map((offer) => weigh(offer, part, toBuy, wish));
  const open = weighed.filter((w) => w.against === undefined);
  const currencies = [...new Set(open.map((w) => w.offer.currency))].sort(compareNatural);
  const taken = currency !== undefined && currencies.includes(currency) ? currency : currencies[0];
  const offers = weighed.map((w) =>
    w.against === undefined && w.offer.currency !== taken
      ? { ...w, against: `in ${w.offer.currency}, which is not compared with ${taken ?? ''}` }
      : w,
  );
  const chosen = offers
    .flatMap((w) => (w.best && w.against === undefined ? [{ weighed: w, choice: w.best }] : []))
    .sort(better)[0];
  return { offers, chosen };
}

function weigh(offer: Offer, part: Part, toBuy: number, wish: FormWish | null): WeighedOffer {
  const form = offerForm(offer, part);
  const choices = orderChoices(toBuy, {
    minimum: offer.minimum,
    multiple: offer.multiple,
    breaks: offer.priceBreaks,
  });
  const against = reasonAgainst(offer, form, wish);
  return { offer, form, choices, best: cheapestChoice(choices), ...(against ? { against } : {}) };
}

function reasonAgainst(
  offer: Offer,
  form: ContactForm | undefined,
  wish: FormWish | null,
): string | undefined {
  if (offer.priceBreaks.length === 0) return 'without a price';
  if (!wish || wish.forms.length === 0 || (form && wish.forms.includes(form))) return undefined;
  const wanted = wish.forms.map((f) => FORM_NAMES[f]).join(' or ');
  return form
    ? `comes ${FORM_NAMES[form]}, wanted ${wanted}: ${wish.reason}`
    : `form not stated, wanted ${wanted}`;
}

/** Cheaper; of equal ones the sooner, then by name. */
const better = (a: ChosenOffer, b: ChosenOffer): number =>
  a.choice.cost - b.choice.cost ||
  (a.weighed.offer.leadTimeDays ?? Infinity) - (b.weighed.offer.leadTimeDays ?? Infinity) ||
  compareNatural(a.weighed.offer.supplier, b.weighed.offer.supplier) ||
  a.choice.quantity - b.choice.quantity;
