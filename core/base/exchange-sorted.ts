import { compareText } from './stable-order';

type Keyed = { readonly key: string };

/** Place of a key in a list that is in the order of its keys, or where it belongs. */
function placeOf(list: readonly Keyed[], key: string): number {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (compareText((list[middle] as Keyed).key, key) < 0) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The element of that key in a list that is in the order of its keys. */
export function findSorted<T extends Keyed>(list: readonly T[], key: string): T | undefined {
  const found = list[placeOf(list, key)];
  return found?.key === key ? found : undefined;
}

/**
 * The list without the elements of some keys and with others, in the order of the keys; the very list when that changes
 * nothing.
 */
export function exchangeSorted<T extends Keyed>(
  list: readonly T[],
  gone: Iterable<string>,
  fresh: readonly T[],
): readonly T[] {
  const out = list.slice();
  const came = new Set<string>();
  const steps: Step<T>[] = [];
  let isSame = true;
  for (const item of fresh) {
    came.add(item.key);
    const at = placeOf(list, item.key);
    if (list[at]?.key !== item.key) steps.push({ at, item });
    else if (list[at] !== item) {
      out[at] = item;
      isSame = false;
    }
  }
  for (const key of gone) {
    const at = placeOf(list, key);
    if (!came.has(key) && list[at]?.key === key) steps.push({ at });
  }
  if (steps.length === 0) return isSame ? list : out;
  return stepped(out, steps);
}

/** An element that comes before a place, or the one there that goes. */
interface Step<T> {
  readonly at: number;
  readonly item?: T;
}

function stepped<T extends Keyed>(list: readonly T[], steps: Step<T>[]): readonly T[] {
  steps.sort((a, b) => a.at - b.at || compareText(a.item?.key ?? '', b.item?.key ?? ''));
  const out: T[] = [];
  let from = 0;
  for (const { at, item } of steps) {
    for (; from < at; from++) out.push(list[from] as T);
    if (item) out.push(item);
    else from = at + 1;
  }
  for (; from < list.length; from++) out.push(list[from] as T);
  return out;
}
