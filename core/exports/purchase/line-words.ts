import type { Part } from '../../model/parts/part';
import { lineRemarks } from '../parts/harness-lines';
import type { ContactForm } from './contact-form';
import type { PurchaseLine } from './purchase-line';

/** "Brackwater Connectors C-PIN", with the colour; for lists of lines in a sentence. */
export function lineName({ line }: PurchaseLine): string {
  const name = line.part?.partNumber ?? `${line.kind} not chosen`;
  return line.colour ? `${name} ${line.colour}` : name;
}

/** Why a line has no price; null where it has one. */
export function whyUnpriced(l: PurchaseLine): string | null {
  if (l.usedCost !== null) return null;
  const { line, need, offers } = l;
  if (!line.part) return 'no part chosen';
  if (!need) return 'quantity not known';
  if (need.toBuy === 0) return 'all from the own store, not priced';
  if (offers.length === 0) return 'no offer';
  return offers.map((w) => `offer of ${w.offer.supplier} ${w.against ?? 'without a price'}`).join('; ');
}

/** The form that is ordered, or wanted where nothing can be ordered yet. */
export const lineForm = ({ chosen, wish }: PurchaseLine): ContactForm | undefined =>
  chosen?.weighed.form ?? (wish?.forms.length === 1 ? wish.forms[0] : undefined);

/** What a buyer has to be told of a line beside its numbers. */
export function purchaseRemarks(l: PurchaseLine): string[] {
  const { line, chosen, need, leftOver } = l;
  const offer = chosen?.weighed.offer;
  const remarks = lineRemarks(line);
  const missing = whyUnpriced(l);
  if (missing !== null && !remarks.includes(missing)) remarks.push(missing);
  if (need && need.fromStock > 0) remarks.push(`${need.fromStock} ${line.unit} from the own store`);
  if (offer?.priceDate === undefined && offer) remarks.push('date of the price not stated');
  if (offer && offer.leadTimeDays === undefined) remarks.push('lead time not stated');
  if (offer?.stock && chosen && offer.stock.quantity < chosen.choice.quantity)
    remarks.push(`supplier had ${offer.stock.quantity} ${line.unit} in stock on ${offer.stock.date}`);
  for (const w of l.offers)
    if (w.against !== undefined && w !== chosen?.weighed && chosen)
      remarks.push(`${w.offer.supplier} not taken: ${w.against}`);
  if (line.part?.shelfLifeDays !== undefined && leftOver)
    remarks.push(`what is left over keeps ${line.part.shelfLifeDays} days`);
  return remarks;
}

/** "RoHS declared 2026-01-15, REACH unknown". */
export const complianceWords = (part: Part | undefined): string | null =>
  part?.compliance
    ?.map((c) => [c.regime, c.status, c.date, c.expires && `until ${c.expires}`].filter(Boolean).join(' '))
    .join(', ') || null;
