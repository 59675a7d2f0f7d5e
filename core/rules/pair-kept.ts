import { must } from '../base/assert-never';
import { cavityLayoutOf } from '../derive/cavity-layout';
import type { Harness, ResolvedEnd, ResolvedWire } from '../derive/harness';
import { wiresOf } from '../derive/nets-of';
import { signalPairs } from '../derive/signal-pairs';
import { isTwisted } from '../derive/twist';
import type { Signal } from '../model/electrical';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Evidence, Need } from './finding';
import { wireRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { fact, limitFact, limitNeed } from './shared/evidence';
import { rtn, sup } from './shared/example-signals';
import { signalRef } from './shared/supply-words';

/** Speaks of signals that are stated to be a pair, once of each two, and of each wire of one between the ends of the other. */
export const pairKept: Rule<'project'> = {
  meta: {
    id: 'pair-kept',
    revision: 1,
    severity: 'major',
    summary:
      'The wires of a pair are twisted together, run the same way, are alike in length and lie beside each other at both ends.',
    why: 'A pair rejects what comes in on both wires alike. Wires that part on the way pick up different things, and the receiver sees the difference as a signal.',
    source: 'reports from practice; common practice: a pair is one object from contact to contact',
    message: '{{a}} and {{b}} are a pair; {{reason}}',
    unknown: 'Whether {{a}} and {{b}} are kept as a pair cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check(harness, report, context) {
    for (const [a, b] of signalPairs.pairedWith(harness.project.signals))
      judge(a, b, harness, report, context);
  },
  examples: () => ({
    good: [
      { name: 'no pair', project: tiny() },
      { name: 'twisted together from end to end', project: tiny((t) => pair(t)) },
    ],
    bad: [
      {
        name: 'two loose wires',
        project: tiny((t) => void (sup(t).pairedWith = rtn(t).id)),
        expect: ['W1'],
      },
      {
        name: 'one is longer',
        project: tiny((t) => {
          pair(t);
          t.wire('W1').lengthMm = 330;
          t.wire('W2').lengthMm = 360;
        }),
        expect: ['W1'],
      },
      {
        name: 'a cavity between them at one end',
        project: tiny((t) => {
          pair(t);
          const end = t.wire('W2').ends[0];
          if (end.at === 'cavity') end.cavity = '3';
          t.connector('X1').cavities = [{ cavity: '2', state: 'empty' }];
        }),
        expect: ['W1'],
      },
    ],
    unknown: [
      {
        name: 'the lay is not stated',
        project: tiny((t) => {
          pair(t);
          delete must(t.project.groups[0], 'group').layMm;
        }),
        expect: ['W1'],
      },
      {
        name: 'not on the formboard, and no length typed',
        project: tiny((t) => {
          pair(t);
          delete t.connector('X2').node;
        }),
        expect: ['W1'],
      },
    ],
  }),
};

function pair(t: TinyDraft): void {
  sup(t).pairedWith = rtn(t).id;
  const wires = [t.wire('W1').id, t.wire('W2').id];
  t.project.groups.push({ id: t.newId(), designator: 'WG1', form: 'twisted', wires, layMm: 25 });
}

function judge(a: Signal, b: Signal, harness: Harness, report: Report, context: RuleContext): void {
  const partners = new Map<string, ResolvedWire[]>();
  for (const w of wiresOf(harness, b.id)) {
    const key = placesKey(w);
    partners.set(key, [...(partners.get(key) ?? []), w]);
  }
  for (const one of wiresOf(harness, a.id)) {
    const other = partners.get(placesKey(one))?.shift();
    if (other) compare(one, other, [a, b], report, context);
    else if (partners.size > 0)
      report.fail({
        at: [wireRef(one), signalRef(a), signalRef(b)],
        data: {
          a: one.wire.designator,
          b: b.name,
          reason: `no wire of ${b.name} runs between the same ends as ${one.wire.designator}`,
        },
        evidence: fact(`${a.name} is paired with`, b.name, 'signal list'),
      });
  }
}

/** Wires between the same two places, whichever way round they were drawn. */
function placesKey(w: ResolvedWire): string {
  return [w.from, w.to]
    .map((e) => e.connector?.connector.id ?? e.splice?.id ?? 'free')
    .sort()
    .join(' ');
}

function compare(
  one: ResolvedWire,
  other: ResolvedWire,
  [a, b]: readonly [Signal, Signal],
  report: Report,
  context: RuleContext,
): void {
  const at = [wireRef(one), wireRef(other), signalRef(a), signalRef(b)];
  const [x, y] = [one.wire.designator, other.wire.designator];
  const reasons: string[] = [];
  const needs: Need[] = [];
  const evidence: Evidence[] = fact(`${a.name} is paired with`, b.name, 'signal list');

  const isOneCable = one.wire.core !== undefined && one.wire.core.cable === other.wire.core?.cable;
  const group = one.group && one.group === other.group && isTwisted(one.group) ? one.group : undefined;
  if (!isOneCable && !group) reasons.push('they are not twisted together');
  if (group) {
    evidence.push(...fact(`lay of ${group.designator}`, group.layMm, 'typed', 'mm'));
    if (group.layMm === undefined)
      needs.push({ what: `lay of ${group.designator}`, at: { type: 'group', id: group.id }, field: 'layMm' });
  }
  if (one.segments.some((s) => !other.segments.includes(s)) || one.segments.length !== other.segments.length)
    reasons.push('they take different ways');
  lengths(one, other, context, { reasons, needs, evidence });
  for (const end of [one.from, one.to]) {
    const beside = [other.from, other.to].find((e) => e.connector && e.connector === end.connector);
    const gap = beside && cavitiesApart(end, beside);
    if (gap === undefined || !end.connector) continue;
    evidence.push(...fact(`positions apart in ${end.connector.connector.designator}`, gap, 'mating face'));
    if (gap > 1) reasons.push(`in ${end.connector.connector.designator} they do not lie beside each other`);
  }
  const data = { a: x, b: y };
  if (reasons.length > 0) report.fail({ at, data: { ...data, reason: reasons.join(', ') }, evidence });
  else if (needs.length > 0) report.cannotVerify({ at, data, needs, evidence, open: true });
  else report.pass();
}

function lengths(
  one: ResolvedWire,
  other: ResolvedWire,
  context: RuleContext,
  out: { readonly reasons: string[]; readonly needs: Need[]; readonly evidence: Evidence[] },
): void {
  const limit = context.limit('pair-length-difference-max');
  if (!limit) out.needs.push(limitNeed('pair-length-difference-max', context.limitSet));
  for (const w of [one, other]) {
    const name = `length of ${w.wire.designator}`;
    out.evidence.push(...fact(name, w.length.cutMm, w.length.kind, 'mm'));
    if (w.length.cutMm === undefined) out.needs.push({ what: name, at: wireRef(w), field: 'lengthMm' });
  }
  out.evidence.push(...limitFact('most difference in length', limit, context.limitSet));
  const [p, q] = [one.length.cutMm, other.length.cutMm];
  if (limit && p !== undefined && q !== undefined && Math.abs(p - q) > limit.value)
    out.reasons.push(`their lengths differ by ${String(Math.abs(p - q))} mm`);
}

/** Steps from one cavity to the other on the face, diagonal ones counting as one; undefined where the face is not known. */
function cavitiesApart(p: ResolvedEnd, q: ResolvedEnd): number | undefined {
  const part = p.connector?.part;
  if (!part || p.end.at !== 'cavity' || q.end.at !== 'cavity') return undefined;
  const { byCavity } = cavityLayoutOf(part);
  const [a, b] = [byCavity.get(p.end.cavity), byCavity.get(q.end.cavity)];
  return a && b ? Math.max(Math.abs(a.column - b.column), Math.abs(a.row - b.row)) : undefined;
}
