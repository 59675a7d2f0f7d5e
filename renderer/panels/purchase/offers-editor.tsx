import { Plus, Trash2 } from 'lucide-react';
import type { PurchaseLine } from '@latchwork/core/exports/purchase/purchase-line';
import type { Offer } from '@latchwork/core/model/parts/common';
import type { Part } from '@latchwork/core/model/parts/part';
import { useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { ChoiceField } from '../../ui/choice-field';
import { NumberField } from '../../ui/number-field';
import { TextField, needed } from '../../ui/text-field';
import { attempt } from '../inspector/fields';
import { PriceBreaks } from './price-breaks';

/** The offers of a part: each field is one step of the history. */
export function OffersEditor({ part, line }: { part: Part; line: PurchaseLine }) {
  const offers = part.offers ?? [];
  const currency = useApp((s) => s.history.project.purchasing?.currency) ?? offers[0]?.currency ?? 'EUR';
  const set = (next: readonly Offer[]): string | null =>
    attempt({ id: 'part.edit-offers', args: { id: part.id, offers: [...next] } });
  return (
    <div className="offers">
      {offers.map((offer, i) => {
        const weighed = line.offers[i];
        const taken = weighed !== undefined && weighed === line.chosen?.weighed;
        return (
          <fieldset key={i} className="offer" data-taken={taken ? '' : undefined}>
            <legend>
              Offer {i + 1}
              {taken ? (
                <span className="chip" data-tone="good">
                  taken
                </span>
              ) : null}
            </legend>
            {weighed?.against ? <p className="second">Not taken: {weighed.against}.</p> : null}
            <OfferFields
              offer={offer}
              hasForm={part.kind === 'contact'}
              unit={line.line.unit}
              set={(changed) => set(offers.map((o, k) => (k === i ? changed : o)))}
            />
            <Button look="plain" onClick={() => void set(offers.filter((_, k) => k !== i))}>
              <Trash2 size={14} aria-hidden />
              Take offer {i + 1} away
            </Button>
          </fieldset>
        );
      })}
      <Button onClick={() => void set([...offers, { supplier: 'New supplier', currency, priceBreaks: [] }])}>
        <Plus size={14} aria-hidden />
        Add an offer
      </Button>
    </div>
  );
}

interface OfferFieldsProps {
  readonly offer: Offer;
  readonly hasForm: boolean;
  readonly unit: 'pcs' | 'm';
  readonly set: (offer: Offer) => string | null;
}

function OfferFields({ offer, hasForm, unit, set }: OfferFieldsProps) {
  const edit = <K extends keyof Offer>(key: K, value: Offer[K] | null): string | null => {
    const { [key]: _old, ...rest } = offer;
    return set((value === null ? rest : { ...rest, [key]: value }) as Offer);
  };
  return (
    <>
      <TextField
        label="Supplier"
        value={offer.supplier}
        commit={needed('The supplier', (text) => edit('supplier', text))}
      />
      <TextField
        label="Order code"
        mono
        placeholder="not known"
        value={offer.orderCode ?? ''}
        commit={(text) => edit('orderCode', text || null)}
      />
      {hasForm ? (
        <ChoiceField
          label="Form"
          value={offer.form ?? ''}
          choices={[
            { value: '', text: 'as its record says' },
            { value: 'strip', text: 'on a strip' },
            { value: 'loose', text: 'loose' },
          ]}
          choose={(form) => void edit('form', form === '' ? null : form)}
        />
      ) : null}
      <TextField
        label="Currency"
        mono
        value={offer.currency}
        commit={(text) => currencyOf(text, (c) => edit('currency', c))}
      />
      <NumberField
        label="Minimum"
        unit={unit}
        positive
        value={offer.minimum}
        commit={(n) => edit('minimum', n)}
      />
      <NumberField
        label="Pack"
        unit={unit}
        positive
        value={offer.multiple}
        commit={(n) => edit('multiple', n)}
      />
      <NumberField
        label="Lead time"
        unit="days"
        value={offer.leadTimeDays}
        commit={(n) => edit('leadTimeDays', n)}
      />
      <TextField
        label="Prices of"
        mono
        placeholder="YYYY-MM-DD"
        value={offer.priceDate ?? ''}
        commit={(text) => dayOf(text, (day) => edit('priceDate', day))}
      />
      <PriceBreaks
        breaks={offer.priceBreaks}
        unit={unit}
        set={(breaks) => edit('priceBreaks', [...breaks])}
      />
    </>
  );
}

function currencyOf(text: string, take: (code: string) => string | null): string | null {
  const code = text.trim().toUpperCase();
  return /^[A-Z]{3}$/.test(code) ? take(code) : 'A currency is three letters after ISO 4217, such as EUR.';
}

function dayOf(text: string, take: (day: string | null) => string | null): string | null {
  if (text === '') return take(null);
  return /^\d{4}-\d{2}-\d{2}$/.test(text) ? take(text) : 'A day is written as 2026-01-31.';
}
