import { checkAlternate, type AlternateCheck } from '@latchwork/core/decisions/check-alternate';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Part } from '@latchwork/core/model/parts/part';
import { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness, type CheckResult } from '@latchwork/core/rules/check-harness';
import type { Finding } from '@latchwork/core/rules/finding';
import { RULES } from '@latchwork/core/rules/index';
import { addPartLike } from '@latchwork/core/rules/shared/example-parts';
import { describe, expect, it } from 'vitest';
import { generateProject } from '../../generate/harness-generator';

const checked = (project: Project): CheckResult => checkHarness(deriveHarness(project), RULES);
const partOf = (project: Project, number: string): Part =>
  project.parts.find((p) => p.partNumber === number) as Part;
const rulesOf = (findings: readonly Finding[]): string[] => [...new Set(findings.map((f) => f.rule))].sort();

/** The same substitution by other means: every mention of the id in the text of the project, and a check from nothing. */
function byText(project: Project, part: Part, alternate: Part) {
  const { parts, ...rest } = project;
  const text = JSON.stringify(rest).replaceAll(part.id, alternate.id);
  const others = parts.filter((p) => p.id !== part.id && p.id !== alternate.id);
  const swapped = Project.parse({ ...(JSON.parse(text) as object), parts: [...others, alternate] });
  const about = (f: Finding): boolean => f.rule !== 'alternate-checked' && f.rule !== 'part-changed';
  const now = new Set(
    checked(project)
      .findings.filter(about)
      .map((f) => f.key),
  );
  const then = checked(swapped).findings.filter(about).map((f) => ({ ...f, key: f.key.replaceAll(alternate.id, part.id) })); // prettier-ignore
  const keys = new Set(then.map((f) => f.key));
  return {
    added: then.filter((f) => !now.has(f.key) && f.result === 'fail').map((f) => f.key).sort(),
    cannotVerify: then.filter((f) => !now.has(f.key) && f.result !== 'fail').map((f) => f.key).sort(),
    removed: [...now].filter((k) => !keys.has(k)).sort(),
  }; // prettier-ignore
}

const keysOf = (check: AlternateCheck) => ({
  added: check.added.map((f) => f.key).sort(),
  cannotVerify: check.cannotVerify.map((f) => f.key).sort(),
  removed: check.removed.map((f) => f.key).sort(),
});

function pinLike(change: object, also: (t: TinyDraft) => void = () => {}) {
  const project = tiny((t) => {
    addPartLike(t, 'contact', 'C-PIN', { partNumber: 'C-PIN-B', ...change });
    also(t);
  });
  return { project, part: partOf(project, 'C-PIN'), alternate: partOf(project, 'C-PIN-B') };
}

describe('an alternate in the place of its part', () => {
  it('breaks nothing where it is the same', () => {
    const { project, part, alternate } = pinLike({});
    const tried = checkAlternate(checked(project), part.id, alternate);
    expect(tried).toMatchObject({ sameKind: true, added: [], cannotVerify: [], worse: [], removed: [] });
  });

  it('breaks the rules that read what is different', () => {
    const { project, part, alternate } = pinLike({ insulationMaxMm: 1.1, stripLengthMm: 4 });
    const tried = checkAlternate(checked(project), part.id, alternate);
    expect(rulesOf(tried.added)).toEqual(['insulation-range', 'strip-length']);
  });

  it('leaves open what its record does not say', () => {
    const { project, part, alternate } = pinLike({ insulationMaxMm: undefined });
    const tried = checkAlternate(checked(project), part.id, alternate);
    expect(tried.added).toEqual([]);
    expect(rulesOf(tried.cannotVerify)).toContain('insulation-range');
  });

  it('does away with what was wrong with the part', () => {
    const { project, part, alternate } = pinLike({}, (t) => void (t.part('contact', 'C-PIN').insulationMaxMm = 1.1)); // prettier-ignore
    const better: Part = { ...alternate, ...{ insulationMaxMm: 1.53 } } as Part;
    const tried = checkAlternate(checked(project), part.id, better);
    expect(tried.added).toEqual([]);
    expect(rulesOf(tried.removed)).toEqual(['insulation-range']);
  });

  it('is told to be worse where an open question becomes a failure', () => {
    const { project, part, alternate } = pinLike({ insulationMaxMm: 1.1 }, (t) => delete t.part('contact', 'C-PIN').insulationMaxMm); // prettier-ignore
    const tried = checkAlternate(checked(project), part.id, alternate);
    expect(rulesOf(tried.worse.map((w) => w.after))).toEqual(['insulation-range']);
  });

  it('is not put in its place where it is another kind of part', () => {
    const project = tiny();
    const tried = checkAlternate(checked(project), partOf(project, 'WIRE-22').id, partOf(project, 'LOCK'));
    expect(tried).toMatchObject({ sameKind: false, added: [], removed: [] });
  });

  it('changes nothing in the project, and is remembered', () => {
    const { project, part, alternate } = pinLike({ insulationMaxMm: 1.1 });
    const text = JSON.stringify(project);
    const check = checked(project);
    const tried = checkAlternate(check, part.id, alternate);
    expect(JSON.stringify(project)).toBe(text);
    expect(checkAlternate(check, part.id, alternate)).toBe(tried);
  });

  it('ends where two parts are alternates of each other', () => {
    const { project, part, alternate } = pinLike({ alternates: ['C-PIN'] }, (t) => {
      t.part('contact', 'C-PIN').alternates = ['C-PIN-B'];
    });
    expect(checkAlternate(checked(project), part.id, alternate).added).toEqual([]);
  });
});

describe('held against a substitution by text and a check from nothing', () => {
  const project = generateProject({ wires: 60 });
  const pairs = project.parts.flatMap((part): (readonly [Part, Part])[] => {
    if (part.kind === 'contact') return [[part, { ...part, id: other(part), areaMaxMm2: 0.1, finish: 'gold' } as Part]]; // prettier-ignore
    if (part.kind === 'wire') return [[part, { ...part, id: other(part), odMm: undefined, voltageMaxV: 1 } as Part]]; // prettier-ignore
    if (part.kind === 'housing') return [[part, { ...part, id: other(part), interface: 'none', ways: 2 } as Part]]; // prettier-ignore
    return [];
  });

  it.each(pairs.map(([part, alternate]) => ({ name: part.partNumber, part, alternate })))(
    'finds the same for $name',
    ({ part, alternate }) => {
      const found = keysOf(checkAlternate(checked(project), part.id, alternate));
      expect(found).toEqual(byText(project, part, alternate));
    },
  );

  it('goes on from the answer before, with the same result', () => {
    const [part, alternate] = pairs[0] as (typeof pairs)[number];
    const check = checked(project);
    const first = checkAlternate(check, part.id, alternate);
    const edited = { ...project, wires: project.wires.slice(3) };
    const next = checkHarness(deriveHarness(edited, check.harness), RULES, check);
    const goneOn = checkAlternate(next, part.id, alternate, first);
    expect(keysOf(goneOn)).toEqual(keysOf(checkAlternate(checked(edited), part.id, alternate)));
  });
});

function other(part: Part): string {
  return `${part.id.slice(0, -4)}fade`;
}
