import { must } from '../base/assert-never';
import { memoByIdentity } from '../base/memo-by-identity';
import type { Harness } from '../derive/harness';
import type { Signal } from '../model/electrical';
import type { LimitId } from '../model/limit-sets/limit-ids';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Group } from '../model/wire';
import type { ObjectRef } from './finding';
import { wireRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { fact, limitFact, limitNeed } from './shared/evidence';
import { dropLimit } from './shared/example-route';

/**
 * Speaks of twisted and shielded groups that state how long their ends lie open, and of those with a quiet signal, which
 * cannot be left unsaid. A group is told by no smaller item than the whole.
 */
export const untwist: Rule<'project'> = {
  meta: {
    id: 'untwist',
    revision: 1,
    severity: 'major',
    summary: 'The ends of a twisted or shielded group lie open no longer than the limit.',
    why: 'Where a pair is untwisted or out of its shield it picks up and gives off noise like single wires; a long open end undoes what the twist was paid for.',
    source: 'NASA-STD-8739.4, table 11-2: at most 20 mm for sensitive circuits, 100 mm for ordinary ones',
    message: '{{group}} lies open for {{measured}} mm at an end, at most {{limit}} mm are allowed ({{kind}})',
    unknown: 'Whether the ends of {{group}} lie open for too long cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check(harness, report, context) {
    for (const group of harness.project.groups)
      if (group.form !== 'bundled') checkGroup(harness, group, report, context);
  },
  examples: () => ({
    good: [
      { name: 'no group', project: tiny() },
      { name: 'an ordinary pair, nothing stated', project: tiny((t) => pair(t)) },
      { name: 'an ordinary pair, exactly 100 mm', project: tiny((t) => pair(t, 100)) },
      { name: 'a quiet pair, exactly 20 mm', project: tiny((t) => quiet(t, 20)) },
    ],
    bad: [
      { name: 'an ordinary pair, open for 120 mm', project: tiny((t) => pair(t, 120)), expect: ['WG1'] },
      { name: 'a quiet pair, open for 50 mm', project: tiny((t) => quiet(t, 50)), expect: ['WG1'] },
    ],
    unknown: [
      { name: 'a quiet pair, nothing stated', project: tiny((t) => quiet(t)), expect: ['WG1'] },
      {
        name: 'stated, and no limit in the limit set',
        project: tiny((t) => {
          pair(t, 50);
          dropLimit(t, 'untwist-max');
        }),
        expect: ['WG1'],
      },
    ],
  }),
};

const hasQuiet = memoByIdentity((signals: readonly Signal[]): boolean =>
  signals.some((s) => s.noiseClass === 'quiet'),
);

function checkGroup(harness: Harness, group: Group, report: Report, context: RuleContext): void {
  if (group.exposedMm === undefined && !hasQuiet(harness.project.signals)) return;
  const wires = group.wires.flatMap((id) => harness.wireById.get(id) ?? []);
  const sensitive = wires.find((w) => w.signal?.noiseClass === 'quiet')?.signal;
  if (group.exposedMm === undefined && !sensitive) return;
  const id: LimitId = sensitive ? 'untwist-max-quiet' : 'untwist-max';
  const limit = context.limit(id);
  const self: ObjectRef = { type: 'group', id: group.id };
  const at = [self, ...wires.map(wireRef)];
  const data = { group: group.designator };
  const evidence = [
    ...fact('open end', group.exposedMm, 'typed', 'mm'),
    ...fact('quiet signal', sensitive?.name, 'signal list'),
    ...limitFact('longest open end', limit, context.limitSet),
  ];
  if (group.exposedMm === undefined || !limit) {
    const needs = [
      ...(group.exposedMm === undefined
        ? [{ what: `longest open end of ${group.designator}`, at: self, field: 'exposedMm' }]
        : []),
      ...(limit ? [] : [limitNeed(id, context.limitSet)]),
    ];
    return report.cannotVerify({ open: true, at, data, evidence, needs });
  }
  if (group.exposedMm <= limit.value) return report.pass();
  const kind = sensitive ? `${sensitive.name} is quiet` : 'ordinary signals';
  report.fail({ at, data: { ...data, measured: group.exposedMm, limit: limit.value, kind }, evidence });
}

function pair(t: TinyDraft, exposedMm?: number): void {
  const wires = [t.wire('W1').id, t.wire('W2').id];
  const group: Group = { id: t.newId(), designator: 'WG1', form: 'twisted', wires, layMm: 25 };
  t.project.groups.push(exposedMm === undefined ? group : { ...group, exposedMm });
}

function quiet(t: TinyDraft, exposedMm?: number): void {
  pair(t, exposedMm);
  must(t.project.signals[0], 'signal').noiseClass = 'quiet';
}
