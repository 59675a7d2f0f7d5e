import { must } from '../../base/assert-never';
import type { TinyDraft } from '../../model/tiny';
import { sup } from './example-signals';

/** A second wire W3 for SUP beside W1, over the third ways, which both devices declare SUP. */
export function addParallel(t: TinyDraft): void {
  const signal = sup(t).id;
  for (const d of ['X1', 'X2'])
    t.connector(d).cavities = t.connector(d).cavities.filter((c) => c.cavity !== '3');
  for (const d of ['X3', 'X4']) t.connector(d).cavities.push({ cavity: '3', signal });
  const first = t.wire('W1');
  const contacts = (['C-SOCKET', 'C-PIN'] as const).map((n) => ({
    id: t.newId(),
    part: t.part('contact', n).id,
  }));
  t.project.contacts.push(...contacts);
  const end = (i: 0 | 1) => {
    const like = first.ends[i];
    if (like.at !== 'cavity') throw new Error('W1 ends in cavities');
    return { ...like, cavity: '3', contact: must(contacts[i], 'contact').id };
  };
  t.project.wires.push({ ...first, id: t.newId(), designator: 'W3', ends: [end(0), end(1)] });
}
