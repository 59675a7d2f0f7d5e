import type { Harness } from '../../derive/harness';
import type { LookAlikes, WrongJoin } from '../../derive/look-alikes';
import type { Consequence, JoinedNets } from '../../derive/wrong-plug';
import type { Signal } from '../../model/electrical';
import type { Evidence, Severity } from '../finding';
import { fact } from './evidence';

/** What happens, in words, and how grave it is. */
export const CONSEQUENCE_WORDS: Readonly<Record<Consequence, readonly [Severity, string]>> = {
  'supplies-joined': ['critical', 'two supplies are joined'],
  'supply-shorted': ['critical', 'a supply is shorted'],
  'supply-on-signal': ['critical', 'a supply comes onto a signal'],
  'wrong-voltage': ['critical', 'a load gets a voltage that is not its own'],
  'loads-exchanged': ['major', 'loads are exchanged'],
  'signal-grounded': ['major', 'a signal is tied to a return, a shield or earth'],
  'signals-exchanged': ['major', 'signals are exchanged'],
};

/** "SUP 12 V (fed)": a signal as it stands in a meeting. One whose source nobody states is taken to be fed. */
function signalText(s: Signal, fed: readonly Signal[]): string {
  const state = !fed.includes(s) ? [] : [s.source ? '(fed)' : '(source not stated)'];
  return [s.name, ...(s.voltageV === undefined ? [] : [`${s.voltageV} V`]), ...state].join(' ');
}

export const meetingText = (j: JoinedNets): string =>
  j.signals.map((s) => signalText(s, j.fed)).join(' meets ');

const designator = (harness: Harness, id: string): string =>
  harness.connectorById.get(id)?.resolved.connector.designator ?? '?';

/** Between pairs of plugged halves, and between lines of a meeting; no designator holds it. */
const NEXT = '; ';
const INTO = ' in ';

/** "X1 in X3; X5 in X6": what is plugged into what, free ends first. */
export function pluggedText(harness: Harness, pairs: readonly (readonly [string, string])[]): string {
  return pairs.map((p) => p.map((id) => designator(harness, id)).join(INTO)).join(NEXT);
}

export interface Plugged {
  readonly free: string;
  readonly into: string;
}

/** Reads what `pluggedText` wrote, for the picture. */
export const readPlugged = (text: string | number | undefined): readonly Plugged[] =>
  String(text ?? '')
    .split(NEXT)
    .filter((p) => p !== '')
    .map((p) => {
      const [free = '', into = ''] = p.split(INTO);
      return { free, into };
    });

/** What belongs together, the half of the harness first. */
export function rightPairs(harness: Harness, pair: LookAlikes): readonly (readonly [string, string])[] {
  return pair.right.flatMap(([a, b]) => {
    if (a === undefined || b === undefined) return [];
    const first = harness.connectorById.get(a)?.resolved.connector.supply === 'harness';
    return [first ? ([a, b] as const) : ([b, a] as const)];
  });
}

export const wrongPairs = (pair: LookAlikes): readonly (readonly [string, string])[] =>
  pair.wrong.map((j) => [j.free, j.into] as const);

/** How far a free end comes, or that nobody knows and it is taken for granted. */
export function reachFacts(harness: Harness, { free, into, reach }: WrongJoin): Evidence[] {
  const [a, b] = [designator(harness, free), designator(harness, into)];
  if (!reach)
    return fact(
      `${a} reaches ${b}`,
      'taken for granted',
      'assumption: their places are not both on the formboard',
    );
  const mm = (value: number): number => Math.round(value);
  return [
    ...fact(
      `reach of ${a}`,
      mm(reach.reachMm),
      `formboard from ${reach.from}: branch, service loop, margin`,
      'mm',
    ),
    ...fact(`from ${reach.from} to ${reach.to}`, mm(reach.gapMm), 'formboard, laid out flat', 'mm'),
  ];
}

const MEETING_SOURCE = 'nets with the wrong mates: ';

/** The nets that meet, one row each. */
export const meetingFacts = (joined: readonly JoinedNets[]): Evidence[] =>
  joined.flatMap((j) =>
    fact(
      j.cavities.map((c) => `${c.free}${INTO}${c.into}`).join(', '),
      meetingText(j),
      `${MEETING_SOURCE}${CONSEQUENCE_WORDS[j.consequence][1]}`,
    ),
  );

/** A row that `meetingFacts` made: where nets meet, which, and what comes of it. */
export interface Meeting {
  readonly where: string;
  readonly signals: string;
  readonly consequence: string;
}

export const readMeetings = (evidence: readonly Evidence[]): readonly Meeting[] =>
  evidence
    .filter((e) => e.source.startsWith(MEETING_SOURCE))
    .map((e) => ({
      where: e.label,
      signals: String(e.value),
      consequence: e.source.slice(MEETING_SOURCE.length),
    }));
