import { X } from 'lucide-react';
import { roundTo } from '@latchwork/core/model/length-text';
import type { Offer } from '@latchwork/core/model/parts/common';
import { Button } from '../../ui/button';
import { NumberField } from '../../ui/number-field';
import { TextField } from '../../ui/text-field';

type Breaks = Offer['priceBreaks'];

/** Prices of one piece or metre, each from a quantity on. */
export function PriceBreaks({
  breaks,
  unit,
  set,
}: {
  breaks: Breaks;
  unit: 'pcs' | 'm';
  set: (breaks: Breaks) => string | null;
}) {
  const sorted = [...breaks].sort((a, b) => a.quantity - b.quantity);
  return (
    <div className="price-breaks">
      {sorted.map((b) => (
        <div key={b.quantity} className="price-break">
          <NumberField
            label={`From ${b.quantity} ${unit}`}
            value={b.price}
            commit={(price) =>
              price === null || price < 0
                ? 'A price is a number from zero on.'
                : set(sorted.map((x) => (x === b ? { ...b, price } : x)))
            }
          />
          <Button
            look="icon"
            aria-label={`Take the price from ${b.quantity} on away`}
            onClick={() => void set(sorted.filter((x) => x !== b))}
          >
            <X size={14} aria-hidden />
          </Button>
        </div>
      ))}
      <TextField
        key={JSON.stringify(sorted)}
        label="New price"
        mono
        value=""
        placeholder="quantity: price, then Enter"
        commit={(text) => (text === '' ? null : added(sorted, text, set))}
      />
    </div>
  );
}

function added(breaks: Breaks, text: string, set: (breaks: Breaks) => string | null): string | null {
  const m = /^(\d+(?:[.,]\d+)?)\s*[:;\s]\s*(\d+(?:[.,]\d+)?)$/.exec(text.trim());
  if (!m) return 'Write the quantity and the price, such as "100: 0.05".';
  const [quantity, price] = [m[1], m[2]].map((n) => roundTo(Number(n?.replace(',', '.')), 6)) as [
    number,
    number,
  ];
  if (quantity <= 0) return 'A price holds from a quantity above zero on.';
  return set([...breaks, { quantity, price }].sort((a, b) => a.quantity - b.quantity));
}
