import { inrush as pulse } from '../calc/inrush';
import type { Supply } from '../derive/harness';
import type { Signal } from '../model/electrical';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Evidence, Need, ObjectRef } from './finding';
import { cavityName, cavityRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { sup } from './shared/example-signals';
import { contactAllowance } from './shared/contact-allowance';
import { limitFact, partNeed } from './shared/evidence';
import { addFuse } from './shared/example-fuse';
import { wiredCavities } from './shared/loaded-cavities';
import {
  exceeds,
  figures3,
  fusePart,
  fuseRef,
  limitsOf,
  signalFact,
  signalNeed,
  signalRef,
  wiresOfSignal,
} from './shared/supply-words';

/** Asked of signals that state a peak. The whole peak is taken through every contact and fuse of the signal. */
export const inrush: Rule<'supply'> = {
  meta: {
    id: 'inrush',
    revision: 1,
    severity: 'major',
    summary: 'Contacts and fuses of a signal stand its peak current for as long as it lasts.',
    why: 'A charging capacitor or a stalled motor draws many times its running current. Contacts pit, and a fuse that is brought near melting each time opens one day without a fault.',
    source:
      'common practice: pulse I2t at most a fifth of the melting I2t; peak at most twice the rated current',
    message: '{{signal}} peaks at {{peak}} A: {{reasons}}',
    unknown:
      'Whether contacts and fuses of {{signal}} stand its peak cannot be verified; not stated: {{needs}}',
  },
  scope: 'supply',
  check(supply, report, context) {
    for (const s of supply.feeds)
      if (s.peakCurrentA !== undefined && s.peakCurrentA > 0 && wiresOfSignal(supply, s).length > 0)
        judge(s, s.peakCurrentA, supply, report, context);
  },
  examples: () => ({
    good: [
      { name: 'no peak stated', project: tiny() },
      { name: '6 A for 10 ms through contacts for 5 A', project: tiny((t) => peak(t, 6, 0.01)) },
      {
        name: '6 A for 10 ms through a fuse that melts at 10 A2s',
        project: tiny((t) => {
          addFuse(t, 2);
          peak(t, 6, 0.01);
        }),
      },
    ],
    bad: [
      { name: '20 A through contacts for 5 A', project: tiny((t) => peak(t, 20, 0.01)), expect: ['SUP'] },
      {
        name: 'a pulse that brings the fuse near melting',
        project: tiny((t) => {
          addFuse(t, 2);
          peak(t, 6, 0.2);
        }),
        expect: ['SUP'],
      },
    ],
    unknown: [
      {
        name: 'a peak whose duration nobody states, through a fuse',
        project: tiny((t) => {
          addFuse(t, 2);
          sup(t).peakCurrentA = 6;
        }),
        expect: ['SUP'],
      },
      {
        name: 'the fuse states no melting I2t',
        project: tiny((t) => {
          delete addFuse(t, 2).part.meltingA2s;
          peak(t, 6, 0.01);
        }),
        expect: ['SUP'],
      },
      {
        name: 'no rating of the header',
        project: tiny((t) => {
          peak(t, 6, 0.01);
          delete t.part('header', 'HEADER').currentRatings;
        }),
        expect: ['SUP'],
      },
    ],
  }),
};

function peak(t: TinyDraft, peakA: number, peakS: number): void {
  Object.assign(sup(t), { peakCurrentA: peakA, peakS });
}

function judge(signal: Signal, peakA: number, supply: Supply, report: Report, context: RuleContext): void {
  const { limits, needs } = limitsOf(context, ['contact-peak-factor', 'inrush-fuse-share']);
  const at: ObjectRef[] = [signalRef(signal)];
  const reasons: string[] = [];
  const open = new Map(needs.map((n): [string, Need] => [n.what, n]));
  const evidence: Evidence[] = [
    ...signalFact(signal, 'peak', peakA, 'A'),
    ...signalFact(signal, 'duration of the peak', signal.peakS, 's'),
    ...limitFact(
      'most peak of a contact, in rated currents',
      limits?.['contact-peak-factor'],
      context.limitSet,
    ),
    ...limitFact('most share of the melting I2t', limits?.['inrush-fuse-share'], context.limitSet),
  ];
  const need = (n: Need): void => void open.set(n.what, n);

  for (const { use, cavity, net } of wiredCavities(supply)) {
    if (!net.signals.includes(signal) || !limits) continue;
    const { bounds, needs: unrated } = contactAllowance(supply, use, cavity, context.limitSet);
    const least = bounds.reduce<(typeof bounds)[number] | undefined>(
      (a, b) => (!a || b.ratedA < a.ratedA ? b : a),
      undefined,
    );
    const standsA = least && least.ratedA * limits['contact-peak-factor'].value;
    if (least && standsA !== undefined && exceeds(peakA, standsA)) {
      at.push(cavityRef(cavity));
      reasons.push(`${cavityName(cavity)} stands ${figures3(standsA)} A`);
      evidence.push(...least.evidence);
    } else unrated.forEach(need);
  }
  const wires = wiresOfSignal(supply, signal);
  for (const fuse of supply.fuses.filter((f) => wires.some((w) => w.wire.id === f.wire))) {
    const part = fusePart(supply, fuse);
    if (signal.peakS === undefined) need(signalNeed(signal, 'peakS', 'duration of the peak'));
    if (!part) need({ what: `part of ${fuse.designator}`, at: fuseRef(fuse), field: 'part' });
    else if (part.meltingA2s === undefined) need(partNeed(part, 'meltingA2s', 'melting I2t'));
    if (!limits || signal.peakS === undefined || part?.meltingA2s === undefined) continue;
    const result = pulse.run({
      peakA,
      durationS: signal.peakS,
      fuseMeltingA2s: part.meltingA2s,
      allowedShare: limits['inrush-fuse-share'].value,
    });
    if (!result.ok) continue;
    const { pulseA2s, fuseShare } = result.value;
    evidence.push(
      {
        label: 'I2t of the peak',
        value: Number(pulseA2s.toPrecision(4)),
        unit: 'A2s',
        source: 'peak^2 x duration',
      },
      {
        label: `melting I2t of ${fuse.designator}`,
        value: part.meltingA2s,
        unit: 'A2s',
        source: `fuse ${part.partNumber}`,
      },
    );
    if (fuseShare === undefined || fuseShare <= 1) continue;
    at.push(fuseRef(fuse));
    const allowed = part.meltingA2s * limits['inrush-fuse-share'].value;
    reasons.push(
      `its ${figures3(pulseA2s)} A2s are more than the ${figures3(allowed)} A2s that ${fuse.designator} stands for ever`,
    );
  }
  const data = { signal: signal.name };
  if (reasons.length > 0)
    report.fail({ at, data: { ...data, peak: peakA, reasons: reasons.join(', ') }, evidence });
  else if (open.size > 0)
    report.cannotVerify({ at: [signalRef(signal)], data, needs: [...open.values()], evidence });
  else report.pass();
}
