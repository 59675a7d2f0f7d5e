import type { CavityUse, ConnectorUse, Harness } from '../derive/harness';
import type { LimitSet } from '../model/limit-set';
import type { Part } from '../model/parts/part';
import type { Project } from '../model/project';
import { must } from '../base/assert-never';
import { byId } from '../base/by-id';
import { resultsBeside, type Beside } from '../base/results-beside';
import type { Finding, ObjectRef } from './finding';
import type { AnyRule, Failure, PartContext, Report, RuleMeta, Scope, Unknown } from './rule';

/** What the rules of one scope said about one item. */
interface ItemResult {
  readonly findings: readonly Finding[];
  /** Ids of rules that passed it, once per time. */
  readonly passed: readonly string[];
}

/** The findings of a project, and how often each rule was asked. */
export interface CheckResult {
  readonly harness: Harness;
  readonly findings: readonly Finding[];
  /** Per rule id: how often it passed, failed, and could not verify. Counted when asked for. */
  tally(): ReadonlyMap<string, Tally>;
}

export interface Tally {
  readonly pass: number;
  readonly fail: number;
  readonly cannotVerify: number;
}

/** The answers of one scope, beside the items in their order. */
interface ScopeState extends Beside<object, ItemResult> {
  /** Places of the items with findings, ascending: few, where items are many. */
  readonly hits: readonly number[];
}

interface Carried {
  readonly states: ReadonlyMap<Scope, ScopeState>;
  readonly memories: ReadonlyMap<Scope, Memory>;
  readonly limitSet: LimitSet;
  readonly isSeries: boolean;
  readonly catalogue: readonly Part[];
  readonly rules: readonly AnyRule[];
}

type Memory = WeakMap<object, ItemResult>;

/** What rules may go by besides the project. */
export interface CheckOptions {
  /** Records of the catalogues that are open; absent: those of the result before. */
  readonly catalogue?: readonly Part[];
}

const NO_PARTS: readonly Part[] = [];

const carried = new WeakMap<CheckResult, Carried>();

const SCOPES: readonly Scope[] = [
  'project',
  'part',
  'connector',
  'cavity',
  'wire',
  'mate',
  'net',
  'segment',
  'supply',
];

/**
 * Asks every rule about every item of its scope. Given the result before, only items that are new objects are asked
 * about again; the findings are the same as without it. Other limits, a build that becomes a series, or another catalogue
 * (for rules of parts) ask anew.
 */
export function checkHarness(
  harness: Harness,
  rules: readonly AnyRule[],
  previous?: CheckResult,
  options: CheckOptions = {},
): CheckResult {
  const limitSet = harness.project.limitSet;
  const isSeries = isSeriesOf(harness.project);
  const before = previous && carried.get(previous);
  const catalogue = options.catalogue ?? before?.catalogue ?? NO_PARTS;
  const sameGround = before?.limitSet === limitSet && before.isSeries === isSeries && before.rules === rules;
  // Only rules of parts are held against the catalogues.
  const keeps = (scope: Scope): boolean => sameGround && (scope !== 'part' || before.catalogue === catalogue);
  const context: PartContext = {
    limitSet,
    limit: (id) => byId(limitSet.limits).get(id),
    table: (id) => limitSet.tables?.find((t) => t.id === id)?.table,
    isSeries,
    catalogueRecord: (part) => byId(catalogue).get(part.id),
  };
  const states = new Map<Scope, ScopeState>();
  const memories = new Map<Scope, Memory>();
  const findings: Finding[] = [];
  for (const scope of SCOPES) {
    const old = keeps(scope) ? before : undefined;
    const memory: Memory = old?.memories.get(scope) ?? new WeakMap<object, ItemResult>();
    const mine = rules.filter((r) => r.scope === scope);
    const recall = (item: object): ItemResult => {
      let result = memory.get(item);
      if (!result) memory.set(item, (result = ask(mine, item, context)));
      return result;
    };
    const answer =
      scope === 'cavity' ? (use: object) => together(occupiedOf(use as ConnectorUse).map(recall)) : recall;
    const state = advance(itemsOf(harness, scope), old?.states.get(scope), answer);
    states.set(scope, state);
    memories.set(scope, memory);
    for (const i of state.hits) findings.push(...(state.results[i]?.findings ?? []));
  }
  const result: CheckResult = {
    harness,
    findings,
    tally: () =>
      tallyOf(
        rules,
        [...states.values()].flatMap((s) => s.results),
      ),
  };
  carried.set(result, { states, memories, limitSet, isSeries, catalogue, rules });
  return result;
}

/** Most items stay and keep their results, and only what is another object now is answered anew. */
function advance(
  items: readonly object[],
  old: ScopeState | undefined,
  answer: (item: object) => ItemResult,
): ScopeState {
  if (old?.list === items) return old;
  const { results, made, span } = resultsBeside(items, old, answer);
  const hits: number[] = [];
  const anew = new Set(made);
  for (const at of old?.hits ?? [])
    if (at < span.start) hits.push(at);
    else if (at >= span.endBefore) hits.push(at + span.endAfter - span.endBefore);
    else if (span.endBefore === span.endAfter && !anew.has(at)) hits.push(at);
  const stay = hits.length;
  for (const at of made) if ((results[at]?.findings.length ?? 0) > 0) hits.push(at);
  if (hits.length > stay && stay > 0) hits.sort((x, y) => x - y);
  return { list: items, results, hits };
}

/** The answers about the cavities of a connector as one. */
const together = (results: readonly ItemResult[]): ItemResult => ({
  findings: results.flatMap((r) => r.findings),
  passed: results.flatMap((r) => r.passed),
});

/** Limits of the project say from how many on a build is a series. */
function isSeriesOf({ limitSet, buildQuantities }: Project): boolean {
  const from = byId(limitSet.limits).get('series-from')?.value ?? 0;
  return from > 0 && buildQuantities.some((n) => n >= from);
}

function itemsOf(harness: Harness, scope: Scope): readonly object[] {
  switch (scope) {
    case 'project':
      return [harness];
    case 'part':
      return harness.project.parts;
    case 'connector':
      return harness.connectors;
    // Cavities are asked about connector by connector: a list of them all would be made anew with every edit.
    case 'cavity':
      return harness.connectors;
    case 'wire':
      return harness.wires;
    case 'mate':
      return harness.mates;
    case 'net':
      return harness.nets;
    case 'segment':
      return harness.segments;
    case 'supply':
      return harness.supplies;
  }
}

const occupiedCache = new WeakMap<ConnectorUse, readonly CavityUse[]>();

function occupiedOf(use: ConnectorUse): readonly CavityUse[] {
  let list = occupiedCache.get(use);
  if (!list) occupiedCache.set(use, (list = use.cavities.filter((c) => c.ends.length > 0 || c.spare)));
  return list;
}

function ask(rules: readonly AnyRule[], item: object, context: PartContext): ItemResult {
  const answers = new Answers();
  for (const rule of rules) {
    answers.rule = rule.meta;
    // The registry pairs each rule with the items of its own scope.
    (rule.check as (item: object, report: Report, context: PartContext) => void)(item, answers, context);
  }
  return answers;
}

/** Takes down what rules say about one item. One for all rules, since most only pass. */
class Answers implements Report, ItemResult {
  rule: RuleMeta | undefined;
  readonly findings: Finding[] = [];
  readonly passed: string[] = [];

  pass(): void {
    this.passed.push(this.asked.id);
  }

  fail(f: Failure): void {
    this.findings.push({
      ...this.common(f),
      severity: f.severity ?? this.asked.severity,
      result: 'fail',
      needs: [],
      ...(f.fix ? { fix: f.fix } : {}),
    });
  }

  cannotVerify(u: Unknown): void {
    this.findings.push({
      ...this.common(u),
      severity: this.asked.severity,
      result: 'cannot-verify',
      needs: [...u.needs],
    });
  }

  private get asked(): RuleMeta {
    return must(this.rule, 'rule that is asked');
  }

  private common(answer: Failure | Unknown) {
    const { id, revision } = this.asked;
    return {
      key: keyOf(id, answer.at),
      rule: id,
      ruleRevision: revision,
      open: answer.open ?? false,
      objects: [...answer.at],
      data: answer.data,
      evidence: [...(answer.evidence ?? [])],
    };
  }
}

function keyOf(rule: string, at: readonly ObjectRef[]): string {
  return [rule, ...at.map((o) => `${o.type} ${o.id}${o.cavity === undefined ? '' : `:${o.cavity}`}`)].join(
    ' | ',
  );
}

function tallyOf(rules: readonly AnyRule[], results: readonly ItemResult[]): ReadonlyMap<string, Tally> {
  const out = new Map(rules.map((r) => [r.meta.id, { pass: 0, fail: 0, cannotVerify: 0 }]));
  for (const r of results) {
    for (const id of r.passed) (out.get(id) as { pass: number }).pass++;
    for (const f of r.findings) {
      const t = out.get(f.rule);
      if (t) t[f.result === 'fail' ? 'fail' : 'cannotVerify']++;
    }
  }
  return out;
}
