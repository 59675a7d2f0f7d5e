import { liveHalves, type LiveHalf } from '../derive/energised';
import type { Supply } from '../derive/harness';
import type { Signal } from '../model/electrical';
import { tiny, type TinyDraft } from '../model/tiny';
import { cavityName, connectorRef, partRef } from './refs';
import type { Report, Rule } from './rule';
import { fact, limitFact, partFact, partNeed } from './shared/evidence';
import { sup } from './shared/example-signals';
import { addFuse } from './shared/example-fuse';
import { limitsOf, powerFeeds, signalFact, signalNeed, signalRef } from './shared/supply-words';

/**
 * Speaks of supplies of hazardous voltage, everywhere, and asks for their source: without it nobody knows which half stays live.
 * Speaks also of sources that are stated and do not limit themselves, up to the first fuse.
 */
export const livePinsExposed: Rule<'supply'> = {
  meta: {
    id: 'live-pins-exposed',
    revision: 1,
    severity: 'critical',
    summary: 'Of two halves that part, the one that stays live holds sockets.',
    why: 'Pins stand open when their mate is drawn. Live ones are touched, or bridged by a tool: at a hazardous voltage that is a shock, at a battery an arc and a burn.',
    source: 'common practice; IEC 61984 and IEC 60204-1 (protection against direct contact), title and scope',
    message: '{{place}} stays live with {{signal}} ({{reason}}) when {{mate}} is drawn, and holds pins',
    unknown: 'Whether live pins of {{signal}} stand open cannot be verified; not stated: {{needs}}',
  },
  scope: 'supply',
  check(supply, report, context) {
    const { limits, needs } = limitsOf(context, ['hazardous-voltage']);
    for (const signal of powerFeeds(supply)) {
      if (!limits) {
        report.cannotVerify({ at: [signalRef(signal)], data: { signal: signal.name }, needs });
        continue;
      }
      const limit = limits['hazardous-voltage'];
      const isHazardous = Math.abs(signal.voltageV ?? 0) > limit.value;
      const isUnlimited = signal.sourceLimitA === undefined;
      if (!isHazardous && (!isUnlimited || !signal.source)) continue;
      const evidence = [
        ...signalFact(signal, 'voltage', signal.voltageV, 'V'),
        ...fact(
          `source of ${signal.name}`,
          signal.sourceLimitA ?? 'does not limit its current',
          `signal ${signal.name}, typed`,
          signal.sourceLimitA === undefined ? undefined : 'A',
        ),
        ...limitFact('hazardous above', limit, context.limitSet),
      ];
      judge(supply, signal, isHazardous, evidence, report);
    }
  },
  examples: () => ({
    good: [
      { name: '12 V from a source that limits itself', project: tiny() },
      { name: 'a battery behind sockets', project: tiny((t) => fromX4(t, { sourceLimitA: undefined })) },
      { name: '110 V behind sockets', project: tiny((t) => fromX4(t, { voltageV: 110 })) },
      {
        name: 'a battery, and a fuse before the pins',
        project: tiny((t) => {
          delete sup(t).sourceLimitA;
          t.part('header', 'HEADER').contactKind = 'socket';
          t.part('housing', 'H-SOCKET').contactKind = 'pin';
          addFuse(t, 3);
        }),
      },
    ],
    bad: [
      {
        name: 'a battery on the pins of a header',
        project: tiny((t) => void delete sup(t).sourceLimitA),
        expect: ['X2', 'X3'],
      },
      {
        name: '110 V on the pins of a header',
        project: tiny((t) => void (sup(t).voltageV = 110)),
        expect: ['X2', 'X3'],
      },
    ],
    unknown: [
      {
        name: '110 V, and nobody says where it comes from',
        project: tiny((t) => {
          sup(t).voltageV = 110;
          delete sup(t).source;
        }),
        expect: ['SUP'],
      },
      {
        name: 'a battery on a header of which the contact kind is not stated',
        project: tiny((t) => {
          fromX4(t, { sourceLimitA: undefined });
          delete t.part('housing', 'H-SOCKET').contactKind;
        }),
        expect: ['X1', 'X4'],
      },
    ],
  }),
};

/** Feeds the tiny project from the device, whose half holds sockets. */
function fromX4(t: TinyDraft, change: Partial<Signal>): void {
  for (const s of t.project.signals) if (s.source) s.source.connector = t.connector('X4').id;
  Object.assign(sup(t), change);
  if ('sourceLimitA' in change) delete sup(t).sourceLimitA;
}

function judge(
  supply: Supply,
  signal: Signal,
  isHazardous: boolean,
  evidence: Parameters<Report['fail']>[0]['evidence'] & object,
  report: Report,
): void {
  const data = { signal: signal.name };
  if (!signal.source)
    return report.cannotVerify({
      at: [signalRef(signal)],
      data,
      needs: [signalNeed(signal, 'source', 'the position that feeds')],
      evidence,
      open: true,
    });
  const reason = isHazardous ? `${String(signal.voltageV)} V` : 'from a source that does not limit itself';
  for (const half of oncePerConnector(liveHalves(supply, signal).filter((h) => isHazardous || !h.isFused))) {
    const { part } = half.use.resolved;
    if (!part) continue;
    const at = [connectorRef(half.use), signalRef(signal), partRef(part)];
    const kind = partFact(part, `contacts of ${part.partNumber}`, part.contactKind);
    if (part.contactKind === undefined)
      report.cannotVerify({ at, data, needs: [partNeed(part, 'contactKind', 'contact kind')], evidence });
    else if (part.contactKind === 'socket') report.pass();
    else {
      const other = half.mate.a === half.use ? half.mate.b : half.mate.a;
      const place = cavityName({ connector: half.use.resolved, cavity: half.cavity });
      const mate = other.resolved.connector.designator;
      report.fail({ at, data: { ...data, place, mate, reason }, evidence: [...evidence, ...kind] });
    }
  }
}

/** A supply that crosses a mate in several cavities is told once. */
function oncePerConnector(halves: readonly LiveHalf[]): readonly LiveHalf[] {
  const seen = new Set<string>();
  return halves.filter(({ use }) => {
    const { id } = use.resolved.connector;
    return !seen.has(id) && seen.add(id);
  });
}
