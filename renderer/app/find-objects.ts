import { memoByIdentity } from '@latchwork/core/base/memo-by-identity';
import { compareNatural } from '@latchwork/core/base/stable-order';
import { colourText } from '@latchwork/core/model/colour';
import type { Harness, ResolvedEnd } from '@latchwork/core/derive/harness';
import type { ObjectRef } from '@latchwork/core/rules/finding';

/** An object as the search finds it. */
export interface FoundObject {
  readonly ref: ObjectRef;
  readonly kind: string;
  readonly name: string;
  readonly about: string;
  readonly page: 'diagram' | 'formboard';
  readonly words: string;
}

const endText = (end: ResolvedEnd): string =>
  end.end.at === 'cavity'
    ? `${end.connector?.connector.designator ?? '?'}:${end.end.cavity}`
    : end.end.at === 'splice'
      ? (end.splice?.designator ?? '?')
      : (end.end.text ?? 'free end');

/** All objects of a harness with the words they are found by: designator, part number, signal. */
const allObjects = memoByIdentity((harness: Harness): readonly FoundObject[] => {
  const found = (
    ref: ObjectRef,
    kind: string,
    name: string,
    about: readonly (string | undefined)[],
    page: FoundObject['page'] = 'diagram',
  ): FoundObject => {
    const text = about.filter(Boolean).join(' · ');
    return { ref, kind, name, about: text, page, words: `${name} ${text} ${kind}`.toLowerCase() };
  };
  const { project, parts } = harness;
  return [
    ...harness.connectors.map(({ resolved: { connector: c, part } }) =>
      found({ type: 'connector', id: c.id }, 'connector', c.designator, [
        part?.partNumber,
        c.description ?? part?.description,
      ]),
    ),
    ...harness.wires.map((w) =>
      found({ type: 'wire', id: w.wire.id }, 'wire', w.wire.designator, [
        w.signal?.name,
        `${endText(w.from)} to ${endText(w.to)}`,
        w.wire.colour && colourText(w.wire.colour),
        w.part?.partNumber,
      ]),
    ),
    ...project.equipment.map((e) =>
      found({ type: 'equipment', id: e.id }, e.kind, e.designator, [e.description]),
    ),
    ...project.splices.map((s) =>
      found({ type: 'splice', id: s.id }, 'splice', s.designator, [parts.get(s.part ?? '')?.partNumber]),
    ),
    ...project.signals.map((s) => found({ type: 'signal', id: s.id }, 'signal', s.name, [s.class])),
    ...project.nodes.map((n) => found({ type: 'node', id: n.id }, 'node', n.designator, [], 'formboard')),
    ...project.segments.map((s) =>
      found({ type: 'segment', id: s.id }, 'segment', s.designator, [], 'formboard'),
    ),
  ];
});

/** Objects that hold every word; a name that starts with the text comes first. */
export function findObjects(harness: Harness, text: string, most = 60): readonly FoundObject[] {
  const wanted = text.trim().toLowerCase();
  const words = wanted.split(/\s+/).filter(Boolean);
  const rank = (o: FoundObject): number => {
    const name = o.name.toLowerCase();
    return name === wanted ? 0 : name.startsWith(wanted) ? 1 : 2;
  };
  return allObjects(harness)
    .filter((o) => words.every((w) => o.words.includes(w)))
    .sort((a, b) => rank(a) - rank(b) || compareNatural(a.name, b.name))
    .slice(0, most);
}
