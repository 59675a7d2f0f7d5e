import { contactHeating } from '../calc/contact-heating';
import { supplyCurrents, type KnownCurrent } from '../derive/supply-currents';
import type { Limit, LimitSet } from '../model/limit-set';
import type { Part } from '../model/parts/part';
import { tiny } from '../model/tiny';
import type { Evidence, Need, ObjectRef } from './finding';
import { cavityName, cavityRef, partSource, wireRef } from './refs';
import type { Rule } from './rule';
import { sup } from './shared/example-signals';
import { contactAllowance, type Bound } from './shared/contact-allowance';
import { limitFact } from './shared/evidence';
import { currentThrough, wiredCavities } from './shared/loaded-cavities';
import { currentFact, exceeds, figures3, limitsOf, signalRef } from './shared/supply-words';

const IDS = [
  'current-asked-from',
  'contact-current-margin',
  'contact-rise-at-rated',
  'ambient-temperature',
] as const;

/** Speaks of contacts on wires that carry more than the limit from which currents are asked about. */
export const contactCurrent: Rule<'supply'> = {
  meta: {
    id: 'contact-current',
    revision: 1,
    severity: 'critical',
    summary:
      'A contact carries no more than its rating for this wire and this many loaded ways, with a margin, and stays cooler than its parts.',
    why: 'A contact that runs hot loses its spring, its resistance climbs, it runs hotter still, and the housing chars around it.',
    source: 'IEC 60512-5-2 (derating curve); EIA-364-70 (rise at rated current); figures from memory',
    message: '{{cavity}}: {{reason}}',
    unknown: 'Whether a contact carries too much ({{current}} A) cannot be verified; not stated: {{needs}}',
  },
  scope: 'supply',
  check(supply, report, context) {
    const first = supply.feeds[0];
    if (supply.wires.length === 0 || !first) return;
    const { limits, needs } = limitsOf(context, IDS);
    if (!limits) {
      const data = { current: 'any' };
      return report.cannotVerify({ at: [signalRef(first)], data, needs });
    }
    const currents = supplyCurrents(supply, context.limitSet);
    const margin = limits['contact-current-margin'];
    // One finding for all contacts that lack the same: what is missing is missing in a record.
    const unknown = new Map<
      string,
      { at: ObjectRef[]; needs: readonly Need[]; current: string; evidence: Evidence[] }
    >();
    for (const wired of wiredCavities(supply)) {
      const { use, cavity } = wired;
      const current = currentThrough(wired, supply, currents);
      if (!current || current.currentA <= limits['current-asked-from'].value) continue;
      const { least, needs: open, parts } = contactAllowance(supply, use, cavity, context.limitSet);
      const at = [cavityRef(cavity), ...cavity.ends.map((e) => wireRef(e.wire))];
      const evidence = [
        currentFact(`current through ${cavityName(cavity)}`, current),
        ...(least?.evidence ?? []),
        ...limitFact('margin', margin, context.limitSet),
      ];
      const allowedA = least && least.currentA * margin.value;
      if (least && allowedA !== undefined && exceeds(current.currentA, allowedA)) {
        const reason = `${figures3(current.currentA)} A through the contact, ${least.part.partNumber} allows ${figures3(allowedA)} A`;
        report.fail({ at, data: { cavity: cavityName(cavity), reason }, evidence });
        continue;
      }
      const hot =
        least &&
        hotSpot(
          current,
          least,
          parts,
          limits['contact-rise-at-rated'],
          limits['ambient-temperature'],
          context.limitSet,
        );
      if (hot) {
        const data = { cavity: cavityName(cavity), reason: hot.reason };
        report.fail({ at, data, evidence: [...evidence, ...hot.evidence] });
      } else if (open.length > 0 || !least) {
        const key = open.map((n) => n.what).join();
        const group = unknown.get(key);
        if (group) group.at.push(...at);
        else unknown.set(key, { at, needs: open, current: figures3(current.currentA), evidence });
      } else report.pass();
    }
    for (const { current, ...rest } of unknown.values()) report.cannotVerify({ ...rest, data: { current } });
  },
  examples: () => ({
    good: [
      { name: '1 A through contacts for 5 A', project: tiny() },
      {
        name: 'exactly the rating with its margin',
        project: tiny((t) => void (sup(t).currentA = 4)),
      },
      {
        name: 'a current too small to ask about, and no rating',
        project: tiny((t) => {
          sup(t).currentA = 0.05;
          for (const p of t.project.parts)
            if (p.kind === 'housing' || p.kind === 'header') delete p.currentRatings;
        }),
      },
    ],
    bad: [
      {
        name: '4.5 A through contacts for 5 A with a margin of 0.8',
        project: tiny((t) => void (sup(t).currentA = 4.5)),
        expect: ['X1:1', 'X1:2', 'X2:1', 'X2:2'],
      },
      {
        name: 'a contact that carries less than its housing',
        project: tiny((t) => void (t.part('contact', 'C-PIN').currentMaxA = 1)),
        expect: ['X2:1', 'X2:2'],
      },
      {
        name: 'the rating falls with two loaded ways',
        project: tiny((t) => {
          t.part('housing', 'H-PIN').currentRatings = [
            { currentA: 5, loadedWays: 1 },
            { currentA: 1.1, loadedWays: 3 },
          ];
        }),
        expect: ['X2:1', 'X2:2'],
      },
      {
        name: 'air that is nearly as hot as the housing stands',
        project: tiny((t) => {
          const limit = t.project.limitSet.limits.find((l) => l.id === 'ambient-temperature');
          if (limit) limit.value = 104;
        }),
        expect: ['X1:1', 'X1:2', 'X2:1', 'X2:2'],
      },
    ],
    unknown: [
      {
        name: 'no rating of the header',
        project: tiny((t) => void delete t.part('header', 'HEADER').currentRatings),
        expect: ['X1:1'],
      },
      {
        name: 'a rating for one loaded way only',
        project: tiny((t) => {
          t.part('housing', 'H-PIN').currentRatings = [{ currentA: 5, loadedWays: 1 }];
        }),
        expect: ['X2:1'],
      },
    ],
  }),
};

/** The part that the estimated temperature is too much for. */
function hotSpot(
  current: KnownCurrent,
  { ratedA }: Bound,
  parts: readonly Part[],
  rise: Limit,
  ambient: Limit,
  set: LimitSet,
): { readonly reason: string; readonly evidence: readonly Evidence[] } | undefined {
  const heated = contactHeating.run({
    currentA: current.currentA,
    ratedA,
    riseAtRatedK: rise.value,
    exponent: 2,
    loadedWaysFactor: 1,
    ambientC: ambient.value,
  });
  if (!heated.ok) return undefined;
  const { temperatureC, working } = heated.value;
  const standsC = Math.min(...parts.flatMap((p) => p.temperatureMaxC ?? []));
  const weakest = parts.find((p) => p.temperatureMaxC === standsC);
  if (!weakest || temperatureC <= standsC) return undefined;
  return {
    reason: `the contact reaches about ${Math.round(temperatureC)} degC (estimate), ${weakest.partNumber} stands ${standsC} degC`,
    evidence: [
      {
        label: 'contact temperature',
        value: Math.round(temperatureC),
        unit: 'degC',
        source: `estimate: ${working.formula}`,
      },
      ...limitFact('rise at rated current', rise, set),
      ...limitFact('air around the contact', ambient, set),
      {
        label: `temperature limit of ${weakest.partNumber}`,
        value: standsC,
        unit: 'degC',
        source: partSource(weakest),
      },
    ],
  };
}
