import { supplyCurrents, type SolvedSupply } from '../derive/supply-currents';
import type { Signal } from '../model/electrical';
import type { Limit } from '../model/limit-set';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Evidence } from './finding';
import type { Report, Rule, RuleContext } from './rule';
import { sup } from './shared/example-signals';
import { limitFact } from './shared/evidence';
import {
  circuitNeeds,
  circuitNotes,
  figures3,
  limitsOf,
  powerFeeds,
  signalFact,
  signalRef,
  wiresOfSignal,
} from './shared/supply-words';

/**
 * Solves the supply out and back with every wire at its own temperature, and looks at the load that gets least. Contacts,
 * splices and fuses whose records state no resistance are counted at an assumed one: within the limit even so, it passes.
 */
export const voltageDrop: Rule<'supply'> = {
  meta: {
    id: 'voltage-drop',
    revision: 1,
    severity: 'major',
    summary: 'Every load of a supply gets its voltage, less no more than the allowed drop.',
    why: 'A load that gets too little resets, stalls, or draws more to make up for it. It does so at the far end, in the heat, with the longest harness of the series.',
    source: 'FAA AC 43.13-1B, paragraph 11-66: the drop out and back at conductor temperature',
    message: '{{signal}} loses {{drop}} V ({{percent}} %) on its way, allowed are {{limit}} %',
    unknown: 'The voltage drop of {{signal}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'supply',
  check(supply, report, context) {
    const feeds = powerFeeds(supply).filter((s) => wiresOfSignal(supply, s).length > 0);
    if (feeds.length === 0) return;
    const { limits, needs } = limitsOf(context, ['voltage-drop-max', 'joint-resistance-assumed']);
    const { solved } = supplyCurrents(supply, context.limitSet);
    for (const s of feeds) {
      const common = { at: [signalRef(s)], data: { signal: s.name } };
      if (!limits) report.cannotVerify({ ...common, needs });
      else if (!solved.ok)
        report.cannotVerify({ ...common, needs: circuitNeeds(supply, s, solved.problem), open: true });
      else
        judge(
          s,
          solved.value,
          limits['voltage-drop-max'],
          limits['joint-resistance-assumed'],
          report,
          context,
        );
    }
  },
  examples: () => ({
    good: [
      { name: '300 mm of 22 AWG at 1 A', project: tiny() },
      {
        name: 'no resistance of the contacts stated, and small even if they are bad',
        project: tiny((t) => noResistances(t)),
      },
    ],
    bad: [
      { name: '8 m of 22 AWG at 1 A', project: tiny((t) => long(t, 8000)), expect: ['SUP'] },
      {
        name: 'the return alone loses too much',
        project: tiny((t) => void (t.wire('W2').lengthMm = 14_000)),
        expect: ['SUP'],
      },
    ],
    unknown: [
      {
        name: 'no current stated',
        project: tiny((t) => void delete sup(t).currentA),
        expect: ['SUP'],
      },
      {
        name: 'no source stated',
        project: tiny((t) => void delete sup(t).source),
        expect: ['SUP'],
      },
      {
        name: 'no length',
        project: tiny((t) => {
          t.project.segments = [];
        }),
        expect: ['SUP'],
      },
      {
        name: 'near the limit, and the contacts state no resistance',
        project: tiny((t) => {
          long(t, 3000);
          noResistances(t);
        }),
        expect: ['SUP'],
      },
    ],
  }),
};

function judge(
  signal: Signal,
  solved: SolvedSupply,
  max: Limit,
  assumed: Limit,
  report: Report,
  context: RuleContext,
): void {
  const { circuit, solution } = solved;
  const source = solution.sources.find((s) => s.id === `source ${signal.id}`);
  const loads = solution.loads.filter((l) => l.id.startsWith(`load ${signal.id} `));
  const voltageV = Math.abs(source?.voltageV ?? 0);
  if (!source || voltageV === 0 || loads.length === 0) return;
  const leastV = Math.min(...loads.map((l) => l.voltageV * Math.sign(source.voltageV)));
  const dropV = voltageV - leastV;
  const totalA = solution.loads.reduce((sum, l) => sum + Math.abs(l.currentA), 0);
  const extraV = (circuit.notCounted.length * totalA * assumed.value) / 1000;
  const percent = (100 * dropV) / voltageV;
  const evidence: Evidence[] = [
    ...signalFact(signal, 'voltage', signal.voltageV, 'V'),
    ...signalFact(signal, 'current', signal.currentA, 'A'),
    {
      label: 'voltage at the load that gets least',
      value: Number(leastV.toPrecision(6)),
      unit: 'V',
      source: 'computed: nodal analysis, out and back; R = R20 x (234.5 + T)/254.5',
    },
    { label: 'drop', value: Number(dropV.toPrecision(4)), unit: 'V', source: 'source less load' },
    ...circuitNotes(solved),
    ...circuit.notCounted.map((text) => ({
      label: 'not stated',
      value: text,
      source: 'counted as zero in the drop',
    })),
    ...limitFact('most drop', max, context.limitSet),
  ];
  const common = { at: [signalRef(signal)], evidence };
  if (percent > max.value) {
    const data = { signal: signal.name, drop: figures3(dropV), percent: figures3(percent), limit: max.value };
    return report.fail({ ...common, data });
  }
  if (percent + (100 * extraV) / voltageV <= max.value) return report.pass();
  report.cannotVerify({
    ...common,
    data: { signal: signal.name },
    needs: circuit.notCounted.map((what) => ({ what, at: signalRef(signal), field: 'resistanceMohm' })),
    evidence: [...evidence, ...limitFact('taken for each that states none', assumed, context.limitSet)],
  });
}

function long(t: TinyDraft, lengthMm: number): void {
  for (const w of ['W1', 'W2']) t.wire(w).lengthMm = lengthMm;
}

function noResistances(t: TinyDraft): void {
  for (const p of t.project.parts) if (p.kind === 'contact' || p.kind === 'header') delete p.resistanceMohm;
}
