import { tiny, type TinyDraft } from '../model/tiny';
import { partRef } from './refs';
import type { Rule } from './rule';
import { boughtParts } from './shared/bought-parts';
import { fact } from './shared/evidence';

/** Speaks once a series is built: a prototype is bought by hand. An offer without a price is none. */
export const offerMissing: Rule<'project'> = {
  meta: {
    id: 'offer-missing',
    revision: 1,
    severity: 'minor',
    summary: 'For a series every bought part has an offer with a price.',
    why: 'Without an offer nobody knows cost, minimum and lead time; the part that was not asked about arrives last.',
    source: 'common practice: each line of a purchase list has a supplier and a price',
    message: '{{part}} has {{offers}}',
    unknown: 'Whether {{part}} can be bought cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check({ project }, report, { isSeries }) {
    if (!isSeries) return;
    for (const part of boughtParts(project)) {
      const offers = part.offers ?? [];
      if (offers.some((o) => o.priceBreaks.length > 0)) {
        report.pass();
        continue;
      }
      report.fail({
        open: true,
        at: [partRef(part)],
        data: {
          part: part.partNumber,
          offers: offers.length === 0 ? 'no offer' : 'offers without a price',
        },
        evidence: [
          ...fact('offers', offers.length, `record of ${part.partNumber}`),
          ...fact('largest build', Math.max(...project.buildQuantities), 'build quantities of the project'),
        ],
      });
    }
  },
  examples: () => ({
    good: [
      { name: 'no offers, for one harness', project: tiny() },
      { name: 'offers for all', project: tiny((t) => offered(t)) },
      {
        name: 'none for what comes with the board',
        project: tiny((t) => {
          offered(t);
          delete t.part('header', 'HEADER').offers;
        }),
      },
    ],
    bad: [
      {
        name: 'no offer',
        project: tiny((t) => {
          offered(t);
          delete t.part('contact', 'C-PIN').offers;
        }),
        expect: ['C-PIN'],
      },
      {
        name: 'an offer without a price',
        project: tiny((t) => {
          offered(t);
          t.part('wire', 'WIRE-22').offers = [
            { supplier: 'Example Trading (invented)', currency: 'EUR', priceBreaks: [] },
          ];
        }),
        expect: ['WIRE-22'],
      },
    ],
    unknown: [],
  }),
};

/** A series, and an offer for every part. */
function offered(t: TinyDraft): void {
  t.project.buildQuantities = [1, 100];
  for (const p of t.project.parts)
    p.offers = [
      {
        supplier: 'Example Trading (invented)',
        currency: 'EUR',
        priceBreaks: [{ quantity: 1, price: 0.1 }],
      },
    ];
}
