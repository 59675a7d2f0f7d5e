import type { Net, ResolvedWire } from '../derive/harness';
import { colourText, type ColourCode } from '../model/colour';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Evidence } from './finding';
import { wireRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { fact, limitFact } from './shared/evidence';
import { sup } from './shared/example-signals';
import { setLimit } from './shared/example-route';
import { signalNeed } from './shared/supply-words';
import { colourOfWire } from './shared/wire-facts';

/**
 * Speaks of green-yellow wires and of wires of a protective earth; of neutrals and of blue wires, and of orange ones and of
 * high voltage, only where the limit set asks for it.
 */
export const reservedColour: Rule<'net'> = {
  meta: {
    id: 'reserved-colour',
    revision: 2,
    severity: 'critical',
    summary:
      'Green-yellow is protective earth and nothing else; blue, where it is asked for, is a neutral, and orange high voltage.',
    why: 'Whoever opens an enclosure trusts these colours with bare hands. A live wire in green-yellow kills, and so does one in the blue of a neutral; an earth in another colour is taken off or used for something else.',
    source:
      'IEC 60204-1, 13.2 and IEC 60445: green-yellow for the protective conductor only, light blue for the neutral; ISO 6469-3: orange (from memory)',
    message: '{{wire}} is {{colour}} and carries {{signal}}: {{reason}}',
    unknown:
      'Whether the colour of {{wire}} is reserved for something else cannot be verified; not stated: {{needs}}',
  },
  scope: 'net',
  check(net, report, context) {
    for (const wire of net.wires) judge(wire, net, report, context);
  },
  examples: () => ({
    good: [
      { name: 'red and black', project: tiny() },
      { name: 'protective earth in green-yellow', project: tiny((t) => earth(t, 'GNYE')) },
      {
        name: 'a neutral in blue, and blue for nothing else',
        project: tiny((t) => {
          setLimit(t, 'neutral-blue', 2);
          sup(t).class = 'neutral';
          t.wire('W1').colour = { base: 'BU' };
        }),
      },
      {
        name: 'a supply in blue, where only the neutral is asked about',
        project: tiny((t) => void (t.wire('W1').colour = { base: 'BU' })),
      },
      {
        name: 'a neutral in black, where blue is not asked for',
        project: tiny((t) => {
          setLimit(t, 'neutral-blue', 0);
          sup(t).class = 'neutral';
        }),
      },
      {
        name: '400 V in orange, where orange is asked for above 60 V',
        project: tiny((t) => {
          setLimit(t, 'orange-voltage-from', 60);
          sup(t).voltageV = 400;
          t.wire('W1').colour = { base: 'OG' };
        }),
      },
    ],
    bad: [
      {
        name: 'a supply in green-yellow',
        project: tiny((t) => void (t.wire('W1').colour = { base: 'GNYE' })),
        expect: ['W1'],
      },
      {
        name: 'a neutral in red',
        project: tiny((t) => void (sup(t).class = 'neutral')),
        expect: ['W1'],
      },
      {
        name: 'a supply in blue, where blue is for the neutral only',
        project: tiny((t) => {
          setLimit(t, 'neutral-blue', 2);
          t.wire('W1').colour = { base: 'BU' };
        }),
        expect: ['W1'],
      },
      { name: 'protective earth in red', project: tiny((t) => earth(t, 'RD')), expect: ['W1'] },
      {
        name: '400 V in red, and 0 V in orange, where orange is asked for above 60 V',
        project: tiny((t) => {
          setLimit(t, 'orange-voltage-from', 60);
          sup(t).voltageV = 400;
          t.wire('W2').colour = { base: 'OG' };
        }),
        expect: ['W1', 'W2'],
      },
    ],
    unknown: [
      {
        name: 'blue is for the neutral only, and the class of the signal is not stated',
        project: tiny((t) => {
          setLimit(t, 'neutral-blue', 2);
          t.wire('W1').colour = { base: 'BU' };
          delete sup(t).class;
        }),
        expect: ['W1'],
      },
      {
        name: 'green-yellow, and the class of its signal is not stated',
        project: tiny((t) => {
          t.wire('W1').colour = { base: 'GNYE' };
          delete sup(t).class;
        }),
        expect: ['W1'],
      },
      {
        name: 'protective earth without a colour',
        project: tiny((t) => {
          earth(t, 'GNYE');
          delete t.wire('W1').colour;
        }),
        expect: ['W1'],
      },
    ],
  }),
};

function earth(t: TinyDraft, base: ColourCode): void {
  Object.assign(sup(t), { class: 'protective-earth', voltageV: 0 });
  delete sup(t).returnsOn;
  t.wire('W1').colour = { base };
}

function judge(wire: ResolvedWire, net: Net, report: Report, context: RuleContext): void {
  const colour = colourOfWire(wire);
  const earth = net.signals.find((s) => s.class === 'protective-earth');
  const orange = context.limit('orange-voltage-from');
  const high =
    orange && orange.value > 0
      ? net.signals.find((s) => Math.abs(s.voltageV ?? 0) > orange.value)
      : undefined;
  const isEarthColour = colour?.base === 'GNYE';
  const isOrange = colour?.base === 'OG' && orange !== undefined && orange.value > 0;
  const blue = context.limit('neutral-blue');
  const asksBlue = (blue?.value ?? 0) >= 1;
  const neutral = asksBlue ? net.signals.find((s) => s.class === 'neutral') : undefined;
  const isBlue = colour?.base === 'BU' && (blue?.value ?? 0) >= 2;
  if (!earth && !high && !neutral && !isEarthColour && !isOrange && !isBlue) return;
  const at = [wireRef(wire)];
  const data = {
    wire: wire.wire.designator,
    colour: colour ? colourText(colour) : 'of no stated colour',
    signal: net.signals.map((s) => s.name).join(', ') || 'no named signal',
  };
  const evidence: Evidence[] = [
    ...fact(
      `colour of ${wire.wire.designator}`,
      colour && colourText(colour),
      wire.wire.colour ? 'typed' : 'cable record',
    ),
    ...net.signals.flatMap((s) => fact(`class of ${s.name}`, s.class ?? 'not stated', 'signal list')),
    ...net.signals.flatMap((s) => fact(`voltage of ${s.name}`, s.voltageV, 'signal list', 'V')),
    ...(orange && orange.value > 0 ? limitFact('orange above', orange, context.limitSet) : []),
    ...(asksBlue ? limitFact('neutral is blue', blue, context.limitSet) : []),
  ];
  const fail = (reason: string): void => report.fail({ at, data: { ...data, reason }, evidence });
  if (!colour) {
    const needs = [{ what: `colour of ${wire.wire.designator}`, at: wireRef(wire), field: 'colour' }];
    return report.cannotVerify({ at, data, needs, evidence, open: true });
  }
  if (earth) return isEarthColour ? report.pass() : fail('protective earth is green-yellow');
  if (neutral) return colour.base === 'BU' ? report.pass() : fail('a neutral is blue');
  if (isEarthColour || isBlue) {
    const blank = net.signals.filter((s) => s.class === undefined);
    if (net.signals.length > 0 && blank.length === 0)
      return fail(
        isEarthColour ? 'green-yellow is for protective earth only' : 'blue is for the neutral only',
      );
    const needs =
      blank.length > 0
        ? blank.map((s) => signalNeed(s, 'class', 'class'))
        : [{ what: `signal of ${wire.wire.designator}`, at: wireRef(wire), field: 'signal' }];
    return report.cannotVerify({ at, data, needs, evidence, open: true });
  }
  if (high) return isOrange ? report.pass() : fail(`above ${String(orange?.value)} V a wire is orange`);
  const blank = net.signals.filter((s) => s.voltageV === undefined);
  if (blank.length === 0 && net.signals.length > 0) return fail('orange is for high voltage only');
  const needs =
    blank.length > 0
      ? blank.map((s) => signalNeed(s, 'voltageV', 'voltage'))
      : [{ what: `signal of ${wire.wire.designator}`, at: wireRef(wire), field: 'signal' }];
  report.cannotVerify({ at, data, needs, evidence, open: true });
}
