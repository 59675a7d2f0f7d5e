import { withAlternate } from '../derive/with-alternate';
import { deriveHarness } from '../derive/derive-harness';
import type { Part } from '../model/parts/part';
import { checkHarness, type CheckResult } from '../rules/check-harness';
import { SEVERITIES, type Finding } from '../rules/finding';
import { RULES } from '../rules/index';
import { rawCheckOf } from './raw-check';

/** What the rules say of a design in which an alternate stands for a part, held against what they say now. By key. */
export interface AlternateCheck {
  readonly partId: string;
  readonly alternate: Part;
  /** False where the alternate is a part of another kind: then it was not put in its place, and all lists are empty. */
  readonly sameKind: boolean;
  /** Failures that are not there with the part: what the alternate would break. */
  readonly added: readonly Finding[];
  /** What could be verified with the part and not with the alternate: its record lacks what `needs` names. */
  readonly cannotVerify: readonly Finding[];
  /** Same rule at the same objects, but a failure instead of an open question, or graver. */
  readonly worse: readonly { readonly before: Finding; readonly after: Finding }[];
  /** Findings that the alternate would do away with. */
  readonly removed: readonly Finding[];
}

/** Rules about the record itself and not about what is built with it: the alternate has a record of its own. */
const ABOUT_THE_RECORD: ReadonlySet<string> = new Set(['alternate-checked', 'part-changed']);

const known = new WeakMap<CheckResult, Map<Part, Map<string, AlternateCheck>>>();
const tried = new WeakMap<AlternateCheck, CheckResult>();

/**
 * Puts the alternate in the place of the part and asks every rule again; the project itself stays as it is. Remembered for
 * as long as the check lives. Given the answer for the state before, it costs about as much as an edit does.
 */
export function checkAlternate(
  check: CheckResult,
  partId: string,
  alternate: Part,
  previous?: AlternateCheck,
): AlternateCheck {
  const now = rawCheckOf(check);
  let byAlternate = known.get(now);
  if (!byAlternate) known.set(now, (byAlternate = new Map()));
  let byPart = byAlternate.get(alternate);
  if (!byPart) byAlternate.set(alternate, (byPart = new Map()));
  let answer = byPart.get(partId);
  if (!answer) byPart.set(partId, (answer = tryAlternate(now, partId, alternate, previous)));
  return answer;
}

function tryAlternate(
  now: CheckResult,
  partId: string,
  alternate: Part,
  previous: AlternateCheck | undefined,
): AlternateCheck {
  const part = now.harness.parts.get(partId);
  const nothing = { partId, alternate, added: [], cannotVerify: [], worse: [], removed: [] };
  if (part?.kind !== alternate.kind) return { ...nothing, sameKind: false };
  const before = (previous && tried.get(previous)) ?? now;
  const project = withAlternate(now.harness.project, partId, alternate);
  const result = checkHarness(deriveHarness(project, before.harness), RULES, before);
  const answer: AlternateCheck = {
    ...nothing,
    sameKind: true,
    ...compare(now.findings.filter(counts), result.findings.filter(counts)),
  };
  tried.set(answer, result);
  return answer;
}

const counts = (f: Finding): boolean => !ABOUT_THE_RECORD.has(f.rule);

function compare(
  now: readonly Finding[],
  then: readonly Finding[],
): Pick<AlternateCheck, 'added' | 'cannotVerify' | 'worse' | 'removed'> {
  const old = new Map(now.map((f) => [f.key, f]));
  const fresh = new Map(then.map((f) => [f.key, f]));
  const added = [...fresh.values()].filter((f) => !old.has(f.key));
  return {
    added: added.filter((f) => f.result === 'fail'),
    cannotVerify: added.filter((f) => f.result === 'cannot-verify'),
    worse: [...fresh.values()].flatMap((after) => {
      const before = old.get(after.key);
      return before && isWorse(before, after) ? [{ before, after }] : [];
    }),
    removed: [...old.values()].filter((f) => !fresh.has(f.key)),
  };
}

function isWorse(before: Finding, after: Finding): boolean {
  if (before.result !== after.result) return after.result === 'fail';
  return SEVERITIES.indexOf(after.severity) < SEVERITIES.indexOf(before.severity);
}
