import { following } from '../base/following';
import { resultsBeside } from '../base/results-beside';
import type { ConnectorUse, EndInCavity, Harness } from '../derive/harness';
import { lineageOf } from '../derive/lineage';
import { netOfWire } from '../derive/nets-of';
import { colourText } from '../model/colour';
import { tiny } from '../model/tiny';
import { connectorRef, wireRef } from './refs';
import type { Report, Rule } from './rule';

/**
 * Two wires of one colour that belong together, by their net or by their signal, may be exchanged without harm
 * and are not reported. Nets go beyond one connector, so the rule is asked about the whole; what a connector says of itself is
 * remembered.
 */
export const colourRepeat: Rule<'project'> = {
  meta: {
    id: 'colour-repeat',
    revision: 1,
    severity: 'minor',
    summary: 'Within a connector a colour stands for one net.',
    why: 'Wires of one colour are exchanged at the bench, and nobody sees it before the electrical test: the swap of two is the commonest fault of harnesses in a single colour.',
    source:
      'reports from practice; common practice: one colour or colour pair for each circuit of a connector',
    message: '{{wires}} in {{connector}} are all {{colour}} and lead to different nets',
    unknown:
      'Whether the colours in {{connector}} tell its wires apart cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check(harness, report) {
    for (const colours of colouredConnectors(lineageOf(harness.project), harness.connectors).results) {
      if (!colours) continue;
      const { use } = colours;
      if (colours.without.length + colours.repeated.length === 0) {
        report.pass();
        continue;
      }
      if (colours.without.length > 0) cannotTell(report, use, colours.without);
      const faults = colours.repeated.filter((ends) => leadApart(harness, ends));
      for (const ends of faults) repeated(report, use, ends);
      if (faults.length === 0 && colours.without.length === 0) report.pass();
    }
  },
  examples: () => ({
    good: [
      { name: 'red and black', project: tiny() },
      {
        name: 'one colour with different stripes',
        project: tiny((t) => {
          t.wire('W2').colour = { base: 'RD', stripes: ['BK'] };
        }),
      },
      {
        name: 'one colour for two wires of one signal',
        project: tiny((t) => {
          t.wire('W2').colour = { base: 'RD' };
          t.wire('W2').signal = t.wire('W1').signal;
        }),
      },
    ],
    bad: [
      {
        name: 'two red wires',
        project: tiny((t) => {
          t.wire('W2').colour = { base: 'RD' };
        }),
        expect: ['X1', 'X2'],
      },
    ],
    unknown: [
      {
        name: 'one wire without a colour',
        project: tiny((t) => delete t.wire('W2').colour),
        expect: ['X1', 'X2'],
      },
    ],
  }),
};

/** The colours at a connector with several wires. */
interface Colours {
  readonly use: ConnectorUse;
  readonly without: readonly EndInCavity[];
  /** Wire ends in different cavities that have one colour and are not all named after one signal, per colour. */
  readonly repeated: readonly (readonly EndInCavity[])[];
}

const colouredConnectors = following(
  (uses: readonly ConnectorUse[]) => resultsBeside(uses, undefined, coloursOf),
  (before, _, uses) => resultsBeside(uses, before, coloursOf),
);

function coloursOf(use: ConnectorUse): Colours | undefined {
  const byColour = new Map<string, EndInCavity[]>();
  const without: EndInCavity[] = [];
  let wires = 0;
  for (const end of use.cavities.flatMap((c) => c.ends)) {
    wires++;
    const colour = colourOf(end);
    if (!colour) without.push(end);
    else byColour.set(colour, [...(byColour.get(colour) ?? []), end]);
  }
  if (wires < 2) return undefined;
  const repeated = [...byColour.values()].filter((e) => inSeveralCavities(e) && !isOneSignal(e));
  return { use, without, repeated };
}

const inSeveralCavities = (ends: readonly EndInCavity[]): boolean =>
  new Set(ends.map(({ end }) => (end.end.at === 'cavity' ? end.end.cavity : ''))).size > 1;

const isOneSignal = ([first, ...others]: readonly EndInCavity[]): boolean =>
  first?.wire.signal !== undefined && others.every((e) => e.wire.signal === first.wire.signal);

/** The wire's own colour, else that of its core in the cable. */
function colourOf({ wire }: EndInCavity): string | undefined {
  const core =
    wire.part?.kind === 'cable' ? wire.part.cores.find((c) => c.name === wire.wire.core?.name) : undefined;
  const colour = wire.wire.colour ?? core?.colour;
  return colour && colourText(colour);
}

function leadApart(harness: Harness, ends: readonly EndInCavity[]): boolean {
  // Names decide where all wires have one.
  const signals = ends.map((e) => e.wire.signal);
  if (signals.every((s) => s !== undefined)) return new Set(signals).size > 1;
  return new Set(ends.map((e) => netOfWire(harness.nets, e.wire))).size > 1;
}

function repeated(report: Report, use: ConnectorUse, ends: readonly EndInCavity[]): void {
  const colour = (ends[0] && colourOf(ends[0])) ?? '';
  report.fail({
    at: [connectorRef(use), ...ends.map((e) => wireRef(e.wire))],
    data: {
      connector: use.resolved.connector.designator,
      wires: ends.map((e) => e.wire.wire.designator).join(', '),
      colour,
    },
    evidence: ends.map((e) => ({
      label: `colour of ${e.wire.wire.designator}`,
      value: colour,
      source: 'typed',
    })),
  });
}

function cannotTell(report: Report, use: ConnectorUse, ends: readonly EndInCavity[]): void {
  report.cannotVerify({
    at: [connectorRef(use)],
    data: { connector: use.resolved.connector.designator },
    needs: ends.map((e) => ({
      what: `colour of wire ${e.wire.wire.designator}`,
      at: wireRef(e.wire),
      field: 'colour',
    })),
  });
}
