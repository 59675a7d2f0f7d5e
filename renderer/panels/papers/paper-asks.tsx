import { useMemo, type ReactNode } from 'react';
import { compareNatural } from '@latchwork/core/base/stable-order';
import type { DocumentOptions, Exporter } from '@latchwork/core/exports/exporter';
import { defaultQuantity } from '@latchwork/core/exports/purchase/purchase-order';
import { SheetSize } from '@latchwork/core/exports/paper/sheet';
import { useApp } from '../../app/store';
import { ChoiceField, choicesOf } from '../../ui/choice-field';
import { NumberField } from '../../ui/number-field';
import { LabelCodeAsk, LabelSheetAsk, LabelStartAsk } from './label-asks';
import { askOf } from './papers-view';

interface AskProps {
  readonly id: string;
  readonly options: DocumentOptions;
}

/** What may be asked of a document, as fields above it. A new option does not compile until it has one. */
const ASKS: Readonly<Record<keyof DocumentOptions, (props: AskProps) => ReactNode>> = {
  quantity: QuantityAsk,
  supplier: SupplierAsk,
  sheetSize: SheetSizeAsk,
  labelSheet: LabelSheetAsk,
  labelCode: LabelCodeAsk,
  labelStart: LabelStartAsk,
};

/** The wishes that a document knows; each document keeps its own. */
export function PaperAsks({ document, options }: { document: Exporter; options: DocumentOptions }) {
  const asks = document.asks ?? [];
  return asks.length === 0 ? null : (
    <div className="paper-asks" role="group" aria-label={`Asked of ${document.title.toLowerCase()}`}>
      {asks.map((key) => {
        const Ask = ASKS[key];
        return <Ask key={`${document.id} ${key}`} id={document.id} options={options} />;
      })}
    </div>
  );
}

/** Documents that are made for what is ordered; all others for one harness. */
const ORDERED = new Set(['purchase-list', 'request-for-quotation']);

function QuantityAsk({ id, options }: AskProps) {
  const order = useApp((s) => defaultQuantity(s.history.project));
  return (
    <NumberField
      label="Harnesses"
      value={options.quantity}
      whole
      positive
      placeholder={ORDERED.has(id) ? `${order}, as the project says` : '1'}
      commit={(value) => {
        askOf(id, 'quantity', value ?? undefined);
        return null;
      }}
    />
  );
}

function SupplierAsk({ id, options }: AskProps) {
  const parts = useApp((s) => s.history.project.parts);
  const names = useMemo(
    () => [...new Set(parts.flatMap((p) => p.offers?.map((o) => o.supplier) ?? []))].sort(compareNatural),
    [parts],
  );
  return (
    <ChoiceField
      label="Supplier"
      value={options.supplier ?? ''}
      choices={[{ value: '', text: 'any' }, ...names.map((name) => ({ value: name, text: name }))]}
      choose={(value) => askOf(id, 'supplier', value === '' ? undefined : value)}
    />
  );
}

function SheetSizeAsk({ id, options }: AskProps) {
  return (
    <ChoiceField
      label="Sheets"
      value={options.sheetSize ?? ''}
      choices={[{ value: '', text: 'as usual' }, ...choicesOf(SheetSize.options)]}
      choose={(value) => askOf(id, 'sheetSize', value === '' ? undefined : value)}
    />
  );
}
