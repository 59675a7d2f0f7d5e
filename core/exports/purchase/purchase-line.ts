import { orderNeed, tidy, type OrderNeed } from '../../calc/purchase/order-need';
import type { Harness } from '../../derive/harness';
import { colourText } from '../../model/colour';
import { roundTo } from '../../model/length-text';
import { purchasingValue, scrapOf, type PurchasingValue } from '../../model/purchasing';
import { lineQuantity } from '../parts/harness-lines';
import type { PartLine } from '../parts/part-lines';
import { chooseOffer, type ChosenOffer, type WeighedOffer } from './choose-offer';
import { formWish, type FormWish } from './contact-form';
import { setUpsOf, type SetUp } from './set-ups';

/** One line of an order: a part, by colour where it comes in colours, with how its quantity came about. */
export interface PurchaseLine {
  readonly line: PartLine;
  readonly harnesses: number;
  /** Of one harness; null where it is not known. */
  readonly perHarness: number | null;
  readonly scrap: PurchasingValue;
  /** Wires that the part is crimped to: for each the tool is set. */
  readonly setUps: readonly SetUp[];
  /** How often each of them comes: once, or once for so many harnesses as are made on one setting. */
  readonly rounds: number;
  readonly setUp: number;
  readonly samples: number;
  /** Undefined where the need of one harness is not known. */
  readonly need: OrderNeed | undefined;
  readonly wish: FormWish | null;
  readonly offers: readonly WeighedOffer[];
  /** Undefined where nothing can be ordered or nothing has to be. */
  readonly chosen: ChosenOffer | undefined;
  /** Pieces or metres to order; null where not known. */
  readonly orderQuantity: number | null;
  readonly cost: number | null;
  readonly leftOver: number | null;
  readonly leftOverCost: number | null;
  /** What the order uses up, without what is left over; null where a price is missing. */
  readonly usedCost: number | null;
}

/** Amounts of money are rounded to hundredths line by line, as an invoice does. */
export const money = (amount: number): number => roundTo(amount, 2);

export function purchaseLine(harness: Harness, line: PartLine, harnesses: number): PurchaseLine {
  const { project } = harness;
  const perHarness = isIncomplete(line) ? null : lineQuantity(line);
  const scrap = scrapOf(project, line.kind);
  const setUps = (line.part && setUpsOf(harness).get(line.part.id)) ?? [];
  const rounds = Math.ceil(harnesses / (project.purchasing?.harnessesPerSetUp ?? harnesses));
  const crimped = setUps.length * rounds;
  const setUp =
    line.unit === 'm'
      ? tidy((rounds * purchasingValue(project, 'runWasteMm').value) / 1000)
      : crimped * purchasingValue(project, 'setUpPieces').value;
  const samples = crimped * purchasingValue(project, 'samplesPerCrimp').value;
  const need =
    perHarness === null
      ? undefined
      : orderNeed({
          perHarness,
          harnesses,
          scrapShare: scrap.value,
          setUp,
          samples,
          onHand: onHand(harness, line),
          step: line.unit === 'm' ? 0.001 : 1,
        });
  const wish = formWish(project, line.part);
  const { offers, chosen } =
    line.part && need
      ? chooseOffer(line.part, need.toBuy, wish, project.purchasing?.currency)
      : { offers: [], chosen: undefined };
  const facts = { line, harnesses, perHarness, scrap, setUps, rounds, setUp, samples, need, wish, offers };
  return { ...facts, chosen, ...outcome(need, chosen) };
}

function outcome(
  need: OrderNeed | undefined,
  chosen: ChosenOffer | undefined,
): Pick<PurchaseLine, 'orderQuantity' | 'cost' | 'leftOver' | 'leftOverCost' | 'usedCost'> {
  if (need?.toBuy === 0)
    return { orderQuantity: 0, cost: 0, leftOver: 0, leftOverCost: 0, usedCost: need.total === 0 ? 0 : null };
  if (!need || !chosen)
    return { orderQuantity: null, cost: null, leftOver: null, leftOverCost: null, usedCost: null };
  const { quantity, price } = chosen.choice;
  const leftOver = tidy(quantity - need.toBuy);
  const cost = money(quantity * price);
  const leftOverCost = money(leftOver * price);
  const fromStock = money(need.fromStock * price);
  return {
    orderQuantity: quantity,
    cost,
    leftOver,
    leftOverCost,
    usedCost: money(cost - leftOverCost + fromStock),
  };
}

/** A sum without one of its lengths would order too little: it is not known. */
const isIncomplete = (line: PartLine): boolean => line.uses.some((u) => u.amount === undefined);

function onHand(harness: Harness, line: PartLine): number {
  const stock = harness.project.purchasing?.stock ?? [];
  return stock
    .filter((s) => s.part === line.part?.id)
    .filter((s) => line.colour === null || (s.colour !== undefined && colourText(s.colour) === line.colour))
    .reduce((sum, s) => sum + s.quantity, 0);
}
