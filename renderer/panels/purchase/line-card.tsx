import { X } from 'lucide-react';
import { parseColour } from '@latchwork/core/model/colour';
import type { PurchaseLine } from '@latchwork/core/exports/purchase/purchase-line';
import { lineName, purchaseRemarks } from '@latchwork/core/exports/purchase/line-words';
import { useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { NumberField } from '../../ui/number-field';
import { WorkingBody } from '../../ui/worked-number';
import { attempt } from '../inspector/fields';
import { Alternates } from '../inspector/alternates';
import { Section } from '../inspector/section';
import { needWorking, orderWorking } from './line-working';
import { OffersEditor } from './offers-editor';
import { orderView } from './order-view';

/** One line of an order: how its quantity came about, and the offers it is bought on. */
export function LineCard({ line }: { line: PurchaseLine }) {
  const project = useApp((s) => s.history.project);
  const { part } = line.line;
  const remarks = purchaseRemarks(line);
  return (
    <div className="panel-scroll">
      <div className="panel-head">
        <h2 className="mono">{lineName(line)}</h2>
        <Button look="icon" aria-label="Close the line" onClick={() => orderView.setState({ line: null })}>
          <X size={14} aria-hidden />
        </Button>
      </div>
      {remarks.length > 0 ? (
        <ul className="line-remarks">
          {remarks.map((r) => (
            <li key={r}>{r}</li>
          ))}
        </ul>
      ) : null}
      {line.wish ? <p className="line-form second">Form: {line.wish.reason}.</p> : null}
      <Section title="Needed">
        {line.need ? (
          <WorkingBody working={needWorking(project, line)} />
        ) : (
          <p className="second">Not known: the quantity of one harness is not known.</p>
        )}
        {part ? <StockField line={line} /> : null}
      </Section>
      {line.chosen ? (
        <Section title="Order">
          <WorkingBody working={orderWorking(line)} />
        </Section>
      ) : null}
      {part ? (
        <Section title={`Offers (${part.offers?.length ?? 0})`}>
          <OffersEditor part={part} line={line} />
        </Section>
      ) : (
        <p className="line-form second">Choose a part first: an offer belongs to one.</p>
      )}
      {part?.alternates?.length ? (
        <Section title="Alternates">
          <Alternates part={part} />
        </Section>
      ) : null}
    </div>
  );
}

/** What lies in the own store, by part and colour. */
function StockField({ line: { line } }: { line: PurchaseLine }) {
  const stock = useApp((s) => s.history.project.purchasing?.stock) ?? [];
  const colour = line.colour ? parseColour(line.colour) : null;
  const part = line.part?.id ?? '';
  const isMine = (s: (typeof stock)[number]): boolean =>
    s.part === part &&
    (line.colour === null ||
      JSON.stringify(s.colour) === JSON.stringify(colour?.ok ? colour.value : undefined));
  const commit = (quantity: number | null): string | null => {
    const others = stock.filter((s) => !isMine(s));
    const mine = quantity ? [{ part, ...(colour?.ok ? { colour: colour.value } : {}), quantity }] : [];
    const next = [...others, ...mine];
    return attempt({
      id: 'project.edit-purchasing',
      args: { change: { stock: next.length > 0 ? next : null } },
    });
  };
  return (
    <NumberField
      label="In the own store"
      unit={line.unit}
      placeholder="none"
      value={stock.find(isMine)?.quantity}
      commit={commit}
    />
  );
}
