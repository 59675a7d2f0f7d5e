import { useState } from 'react';
import { compareNatural } from '@latchwork/core/base/stable-order';
import type { PurchaseOrder } from '@latchwork/core/exports/purchase/purchase-order';
import { requestForQuotation } from '@latchwork/core/exports/request-for-quotation';
import { ChoiceField } from '../../ui/choice-field';
import { ExportMenu } from '../export-menu';

/** Asks one supplier, or any, for the terms of this order. */
export function AskSuppliers({ order }: { order: PurchaseOrder }) {
  const [supplier, ask] = useState('');
  const names = new Set(order.lines.flatMap((l) => l.offers.map((w) => w.offer.supplier)));
  const choices = [...names].sort(compareNatural).map((name) => ({ value: name, text: name }));
  const chosen = names.has(supplier) ? supplier : '';
  return (
    <>
      <ChoiceField
        label="Ask"
        value={chosen}
        choices={[{ value: '', text: 'any supplier, for every line' }, ...choices]}
        choose={ask}
        hint={
          chosen === ''
            ? 'No prices and no supplier are named in it.'
            : 'Only what this supplier has offered, with his order codes.'
        }
      />
      <ExportMenu
        document={requestForQuotation}
        label="Request for quotation"
        options={{ quantity: order.harnesses, ...(chosen === '' ? {} : { supplier: chosen }) }}
      />
    </>
  );
}
