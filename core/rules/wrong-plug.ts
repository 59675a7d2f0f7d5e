import type { Harness } from '../derive/harness';
import { lookAlikesOf, type LookAlikes, type WrongJoin } from '../derive/look-alikes';
import { matingFieldName } from '../derive/mating';
import { CONSEQUENCES, wrongPlugNets, type JoinedNets } from '../derive/wrong-plug';
import { must } from '../base/assert-never';
import { tiny, type TinyDraft } from '../model/tiny';
import { connectorRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { limitFact, limitNeed, partNeed } from './shared/evidence';
import { sup } from './shared/example-signals';
import { addPartLike } from './shared/example-parts';
import { addTwin } from './shared/example-twin';
import {
  CONSEQUENCE_WORDS,
  meetingFacts,
  meetingText,
  pluggedText,
  reachFacts,
  rightPairs,
  wrongPairs,
} from './shared/wrong-plug-words';

/**
 * Speaks once of each place that can be confused with one before it in the project, and shows the worst case. A case
 * that joins nothing with something else is passed. Places off the formboard are taken to be within reach, and said to be.
 */
export const wrongPlug: Rule<'project'> = {
  meta: {
    id: 'wrong-plug',
    revision: 1,
    severity: 'critical',
    summary: 'No free end enters a neighbour of its own mate with consequences.',
    why: 'Look-alike neighbours are exchanged sooner or later, most likely in a hurry and in the dark. A supply on a signal destroys equipment at the first switching on; exchanged actuators move the wrong way. Other sizes or keys prevent it, branches too short to reach help, labels fade.',
    source: 'FAA AC 43.13-1B, chapter 11, 11-235b; MIL-STD-1472 (connectors that cannot be cross-plugged)',
    message: '{{a}} also enters {{b}}{{others}}; {{consequence}}: {{worst}}',
    unknown:
      'Whether {{a}} also enters {{b}}{{others}} cannot be verified; not stated: {{needs}}. If it does, {{consequence}}: {{worst}}',
  },
  scope: 'project',
  check(harness, report, context) {
    const margin = context.limit('swap-reach-margin');
    if (!margin) {
      if (lookAlikesOf(harness, 0).length > 0)
        report.cannotVerify({
          at: [{ type: 'project', id: harness.project.id }],
          data: {
            a: 'a free end',
            b: 'a look-alike',
            others: '',
            consequence: 'nets meet',
            worst: 'not worked out',
          },
          needs: [limitNeed('swap-reach-margin', context.limitSet)],
        });
      return;
    }
    for (const pairs of bySecond(lookAlikesOf(harness, margin.value))) judge(pairs, harness, report, context);
  },
  examples: () => ({
    good: [
      { name: 'one harness, which may be plugged together at its ends', project: tiny() },
      { name: 'two harnesses of other keys', project: tiny((t) => keyed(t, 'B')) },
      {
        name: 'two harnesses that do the same, so that it does not matter',
        project: tiny((t) => {
          addTwin(t);
          for (const name of ['X6', 'X8']) t.connector(name).cavities = t.connector('X3').cavities;
        }),
      },
      { name: 'two harnesses, too far from each other', project: tiny((t) => far(t)) },
    ],
    bad: [
      {
        name: 'a supply beside a data line, in the same parts',
        project: tiny((t) => addTwin(t)),
        expect: ['X5', 'X7'],
      },
      {
        name: 'places that are not on the formboard',
        project: tiny((t) => {
          addTwin(t);
          for (const c of t.project.connectors) delete c.node;
        }),
        expect: ['X5', 'X7'],
      },
      {
        name: 'an unused header with the same key',
        project: tiny((t) => {
          addTwin(t);
          t.project.connectors = t.project.connectors.filter(
            (c) => !['X5', 'X7', 'X8'].includes(c.designator),
          );
          const ids = new Set(t.project.connectors.map((c) => c.id));
          t.project.mates = t.project.mates.filter((m) => ids.has(m.a) && ids.has(m.b));
          t.project.wires = t.project.wires.slice(0, 2);
          // The lamp end is open: what the harness feeds comes back on the spare header.
          sup(t).source = { connector: t.connector('X4').id, cavity: '1' };
        }),
        expect: ['X1'],
      },
    ],
    unknown: [
      {
        name: 'look-alikes of which nobody states the key',
        project: tiny((t) => keyed(t, undefined)),
        expect: ['X5', 'X7'],
      },
    ],
  }),
};

/** Gives the second harness parts of its own, with another key or with none stated. */
function keyed(t: TinyDraft, keying: string | undefined): void {
  addTwin(t);
  for (const [name, kind, like] of [
    ['X5', 'housing', 'H-SOCKET'],
    ['X6', 'header', 'HEADER'],
    ['X7', 'housing', 'H-PIN'],
    ['X8', 'housing', 'H-SOCKET'],
  ] as const) {
    const id = addPartLike(t, kind, like, { partNumber: `${like}-${name}` });
    const part = must(
      t.project.parts.find((p) => p.id === id),
      name,
    );
    if (part.kind !== 'housing' && part.kind !== 'header') continue;
    if (keying === undefined) delete part.keying;
    else part.keying = keying;
    t.connector(name).part = id;
  }
}

/** Two harnesses in one formboard, each with short branches at the end of a long trunk. */
function far(t: TinyDraft): void {
  addTwin(t, 3000);
  const node = (designator: string): string =>
    must(
      t.project.nodes.find((n) => n.designator === designator),
      designator,
    ).id;
  const trunk = [t.newId(), t.newId()] as const;
  t.project.nodes.push(
    { id: trunk[0], designator: 'N10', position: { x: 150, y: 0 } },
    { id: trunk[1], designator: 'N11', position: { x: 150, y: 3000 } },
  );
  const run = (from: string, to: string): void => {
    const n = t.project.segments.length + 1;
    t.project.segments.push({ id: t.newId(), designator: `S${n}`, from, to });
  };
  t.project.segments = [];
  for (const n of ['N1', 'N2']) run(trunk[0], node(n));
  for (const n of ['N3', 'N4']) run(trunk[1], node(n));
  run(trunk[0], trunk[1]);
}

/** Look-alikes of one place together, the places before it as they come. */
function bySecond(all: readonly LookAlikes[]): Iterable<readonly LookAlikes[]> {
  const out = new Map<string, LookAlikes[]>();
  for (const pair of all) {
    const key = pair.right[1].join(' ');
    out.set(key, [...(out.get(key) ?? []), pair]);
  }
  return out.values();
}

/** The first few others; the evidence and the picture go by the worst case. */
function othersText(list: readonly string[]): string {
  const rest = list.length - OTHERS_TOLD;
  if (list.length === 0) return '';
  return `, likewise ${list.slice(0, OTHERS_TOLD).join(', ')}${rest > 0 ? ` and ${String(rest)} more` : ''}`;
}

const OTHERS_TOLD = 4;

interface Case {
  readonly pair: LookAlikes;
  readonly joined: readonly JoinedNets[];
  readonly worst: JoinedNets;
}

function judge(pairs: readonly LookAlikes[], harness: Harness, report: Report, context: RuleContext): void {
  const cases = pairs.flatMap((pair): Case[] => {
    const joined = wrongPlugNets(harness, pair);
    const [worst] = joined;
    return worst ? [{ pair, joined, worst }] : [];
  });
  if (cases.length === 0) return report.pass();
  // What is known to fit decides, even while other records leave it open.
  const isKnown = (c: Case): boolean => c.pair.wrong.every((j) => j.unknown.length === 0);
  const rank = (c: Case): number =>
    CONSEQUENCES.indexOf(c.worst.consequence) + (isKnown(c) ? 0 : CONSEQUENCES.length);
  const shown = cases.reduce((a, b) => (rank(b) < rank(a) ? b : a));
  const { pair, joined, worst } = shown;
  const uses = [...new Set(pair.wrong.flatMap((j) => [j.free, j.into]))].flatMap(
    (id) => harness.connectorById.get(id) ?? [],
  );
  const name = (id: string | undefined): string =>
    harness.connectorById.get(id ?? '')?.resolved.connector.designator ?? '?';
  const first = pair.wrong[0];
  const text = (j: WrongJoin): string => `${name(j.free)} into ${name(j.into)}`;
  const more = new Set(cases.flatMap((c) => c.pair.wrong.map(text)));
  if (first) more.delete(text(first));
  const [severity, words] = CONSEQUENCE_WORDS[worst.consequence];
  const common = {
    at: uses.map(connectorRef),
    data: {
      a: name(first?.free),
      b: name(first?.into),
      others: othersText([...more]),
      consequence: words,
      worst: `${meetingText(worst)} at ${worst.cavities.map((c) => `${c.free} in ${c.into}`).join(', ')}`,
      right: pluggedText(harness, rightPairs(harness, pair)),
      wrong: pluggedText(harness, wrongPairs(pair)),
    },
    evidence: [
      ...meetingFacts(joined),
      ...pair.wrong.flatMap((j) => reachFacts(harness, j)),
      ...limitFact('margin of the reach', context.limit('swap-reach-margin'), context.limitSet),
    ],
  };
  if (isKnown(shown)) return report.fail({ ...common, severity });
  const needs = new Map(
    pair.wrong
      .flatMap((j) => j.unknown)
      .map((u) => [`${u.part.id} ${u.field}`, partNeed(u.part, u.field, matingFieldName(u.field))]),
  );
  report.cannotVerify({ ...common, needs: [...needs.values()] });
}
