import { compareNatural, compareText } from '../base/stable-order';
import { substitution } from '../derive/substitute';
import type { Part } from '../model/parts/part';
import type { Project } from '../model/project';
import { alternateChecked } from '../rules/alternate-checked';
import { SEVERITIES, type Evidence, type Finding, type Need } from '../rules/finding';
import { findingText } from '../rules/finding-text';
import { RULES } from '../rules/index';
import { partRef, refText } from '../rules/refs';
import { fact } from '../rules/shared/evidence';
import type { AlternateCheck } from './check-alternate';

/** Places that are named for one rule; how many more there are is told. */
const PLACES = 6;

/** What is to be said of one alternate, or null where it can stand in for the part as far as can be told. */
export function alternateFinding(
  project: Project,
  part: Part,
  check: AlternateCheck,
  inProject: boolean,
): Finding | null {
  const { alternate } = check;
  const { worse, missing } = substitution(part, alternate);
  const broken = [...check.added, ...check.worse.map((w) => w.after)];
  const source = `${alternate.partNumber} in place of ${part.partNumber}`;
  const evidence = [
    ...evidenceOf(broken, source),
    ...fact('records', worse.join('; ') || undefined, `records of ${part.partNumber} and ${alternate.partNumber}`),
    ...fact('removed by it', namesOf(project, check.removed) || undefined, source),
  ]; // prettier-ignore
  const needs = [
    ...check.cannotVerify.flatMap((f) => f.needs.map((n) => retarget(n, part, alternate, inProject))),
    ...missing.map((field): Need => ({
      what: `${field} of ${alternate.partNumber}`,
      ...(inProject ? { at: partRef(alternate), field } : {}),
    })),
  ];
  const told = { part, alternate, inProject, evidence };
  if (!check.sameKind) return finding(told, 'fail', worse.join('; '), 'major');
  if (broken.length > 0) return finding(told, 'fail', `would break ${namesOf(project, broken)}`, 'major');
  if (needs.length > 0) return finding({ ...told, needs: distinct(needs) }, 'cannot-verify', '', 'major');
  if (worse.length > 0)
    return finding(told, 'fail', `breaks nothing here, but is less: ${worse.join('; ')}`, 'minor');
  return null;
}

/** Alternates of which nobody has a record cannot be tried. */
export function unrecordedFinding(part: Part, missing: readonly string[]): Finding {
  const needs = missing.map((n) => ({ what: `record of ${n}`, at: partRef(part), field: 'alternates' }));
  return {
    ...common(part, missing.join(', ')),
    key: keyOf(part.id),
    severity: alternateChecked.meta.severity,
    result: 'cannot-verify',
    open: true,
    objects: [partRef(part)],
    evidence: [],
    needs,
  };
}

interface Told {
  readonly part: Part;
  readonly alternate: Part;
  readonly inProject: boolean;
  readonly evidence: readonly Evidence[];
  readonly needs?: readonly Need[];
}

function finding(
  { part, alternate, inProject, evidence, needs = [] }: Told,
  result: Finding['result'],
  differences: string,
  severity: Finding['severity'],
): Finding {
  const base = common(part, alternate.partNumber);
  return {
    ...base,
    key: keyOf(part.id, alternate.id),
    severity,
    result,
    open: false,
    objects: [partRef(part), ...(inProject ? [partRef(alternate)] : [])],
    data: differences ? { ...base.data, differences } : base.data,
    evidence: [...evidence],
    needs: [...needs],
  };
}

const common = (part: Part, alternate: string) => ({
  rule: alternateChecked.meta.id,
  ruleRevision: alternateChecked.meta.revision,
  data: { part: part.partNumber, alternate },
});

const keyOf = (...parts: readonly string[]): string =>
  [alternateChecked.meta.id, ...parts.map((id) => `part ${id}`)].join(' | ');

/** "strip-length (major) at X1:1, X2:1; wire-current (critical) at W1". */
function namesOf(project: Project, findings: readonly Finding[]): string {
  return byRule(findings)
    .map(([rule, list]) => `${rule} (${gravest(list)}) at ${placesOf(project, list)}`)
    .join('; ');
}

/** One line a rule: where, and the sentence of the first place. */
function evidenceOf(findings: readonly Finding[], source: string): Evidence[] {
  return byRule(findings).flatMap(([rule, list]) => {
    const [first] = list;
    const meta = RULES.find((r) => r.meta.id === rule)?.meta;
    if (!first || !meta) return [];
    const more = list.length > 1 ? ` (and ${list.length - 1} more)` : '';
    return fact(rule, `${findingText(first, meta)}${more}`, source);
  });
}

function placesOf(project: Project, findings: readonly Finding[]): string {
  const all = findings.flatMap((f) => f.objects.slice(0, 1).map((o) => refText(project, o)));
  const places = [...new Set(all)].sort(compareNatural);
  const more = places.length - PLACES;
  return `${places.slice(0, PLACES).join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
}

function byRule(findings: readonly Finding[]): readonly (readonly [string, readonly Finding[]])[] {
  const out = new Map<string, Finding[]>();
  for (const f of findings) out.set(f.rule, [...(out.get(f.rule) ?? []), f]);
  return [...out].sort(([a], [b]) => compareText(a, b));
}

const gravest = (findings: readonly Finding[]): string =>
  SEVERITIES.find((s) => findings.some((f) => f.severity === s)) ?? 'note';

/** What the record in the place of the part lacks is to be filled in at the alternate. */
function retarget({ what, at, field }: Need, part: Part, alternate: Part, inProject: boolean): Need {
  if (at?.type !== 'part' || at.id !== part.id)
    return { what, ...(at ? { at } : {}), ...(field ? { field } : {}) };
  return inProject ? { what, at: partRef(alternate), ...(field ? { field } : {}) } : { what };
}

/** The same input is asked for once, however it is called. */
function distinct(needs: readonly Need[]): readonly Need[] {
  const seen = new Set<string>();
  return needs.filter(({ what, at, field }) => {
    const key = at && field ? `${at.type} ${at.id} ${at.cavity ?? ''} ${field}` : what;
    return seen.has(key) ? false : (seen.add(key), true);
  });
}
