import { memoByIdentity } from '../base/memo-by-identity';
import type { Label } from '../model/topology';

/** Labels of wire ends, by wire id and end: "<id> 0". */
export const labelsByEnd = memoByIdentity(
  (labels: readonly Label[]): ReadonlyMap<string, readonly Label[]> => {
    const out = new Map<string, Label[]>();
    for (const label of labels) {
      if (label.on.at !== 'wire-end') continue;
      const key = `${label.on.wire} ${label.on.end}`;
      const here = out.get(key);
      if (here) here.push(label);
      else out.set(key, [label]);
    }
    return out;
  },
);

/** What stands on the labels of an end; undefined where it has none. */
export const labelTextAt = (labels: readonly Label[], wire: string, end: 0 | 1): string | undefined =>
  labelsByEnd(labels)
    .get(`${wire} ${end}`)
    ?.map((l) => l.text)
    .join(' / ');
