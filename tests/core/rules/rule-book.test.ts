import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { dispatchUnknown } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { COMMANDS } from '@latchwork/core/commands/index';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { countingIds } from '@latchwork/core/model/ids';
import type { Part } from '@latchwork/core/model/parts/part';
import { Project } from '@latchwork/core/model/project';
import { referenceIssues } from '@latchwork/core/model/references';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import type { Finding } from '@latchwork/core/rules/finding';
import { findingText } from '@latchwork/core/rules/finding-text';
import { RULES } from '@latchwork/core/rules/index';
import { refText } from '@latchwork/core/rules/refs';
import type { AnyRule } from '@latchwork/core/rules/rule';
import { describe, expect, it } from 'vitest';

const folder = fileURLToPath(new URL('../../../core/rules/', import.meta.url));
const MACHINERY = ['rule', 'finding', 'refs', 'check-harness', 'finding-text', 'index'];

const findingsOf = (rule: AnyRule, project: Project, catalogue: readonly Part[] = []): readonly Finding[] =>
  checkHarness(deriveHarness(project), [rule], undefined, { catalogue }).findings;

const placesOf = (project: Project, findings: readonly Finding[]): string[] =>
  findings.map((f) => refText(project, f.objects[0]!)).sort();

describe('the list', () => {
  it('has every rule file once, and no rule without a file', () => {
    const files = readdirSync(folder)
      .filter((f) => f.endsWith('.ts'))
      .map((f) => f.slice(0, -3))
      .filter((f) => !MACHINERY.includes(f));
    expect(RULES.map((r) => r.meta.id).sort()).toEqual(files.sort());
  });

  it.each(RULES.map((r) => [r.meta.id]))('%s is exported under its own name in camel case', (id) => {
    const name = id.replace(/-([a-z0-9])/g, (_, c: string) => c.toUpperCase());
    expect(readFileSync(`${folder}${id}.ts`, 'utf8')).toContain(`export const ${name}: Rule<`);
  });
});

it('finds nothing in the tiny project', () => {
  const project = tiny();
  const { findings } = checkHarness(deriveHarness(project), RULES);
  const said = findings.map((f) => {
    const meta = RULES.find((r) => r.meta.id === f.rule)!.meta;
    return `${f.rule}: ${findingText(f, meta)}`;
  });
  expect(said).toEqual([]);
});

describe.each(RULES.map((rule) => ({ id: rule.meta.id, rule })))('$id', ({ rule }) => {
  const { meta } = rule;
  const { good, bad, unknown } = rule.examples();
  const failing = [...bad, ...unknown].map((e) => ({
    ...e,
    findings: findingsOf(rule, e.project, e.catalogue),
  }));

  it('says what it asks for, why, and after whom', () => {
    expect(meta.id).toMatch(/^[a-z]+(-[a-z0-9]+)*$/);
    expect(meta.revision).toBeGreaterThan(0);
    expect(meta.summary).toMatch(/\.$/);
    expect(meta.why.length).toBeGreaterThan(40);
    expect(meta.why).toMatch(/\.$/);
    expect(meta.source).not.toBe('');
    for (const text of Object.values(meta).map(String)) expect(text).not.toMatch(/\bsafe\b|\bcompliant\b/i);
  });

  it('has good and bad examples that could be saved', () => {
    expect(good.length).toBeGreaterThan(0);
    expect(bad.length).toBeGreaterThan(0);
    for (const { name, project } of [...good, ...bad, ...unknown]) {
      expect(Project.safeParse(project).error, name).toBeUndefined();
      // A missing record is the very subject of that rule, and a file with one is refused.
      if (meta.id !== 'part-unknown') expect(referenceIssues(project), name).toEqual([]);
    }
  });

  it.each(good)('keeps silent: $name', ({ project, catalogue }) => {
    expect(findingsOf(rule, project, catalogue)).toEqual([]);
  });

  it.each(bad)('fails: $name', ({ project, catalogue, expect: places }) => {
    const findings = findingsOf(rule, project, catalogue);
    expect(placesOf(project, findings)).toEqual([...places].sort());
    expect([...new Set(findings.map((f) => f.result))]).toEqual(['fail']);
  });

  it.each(unknown)('cannot verify: $name', ({ project, catalogue, expect: places }) => {
    const findings = findingsOf(rule, project, catalogue);
    expect(placesOf(project, findings)).toEqual([...places].sort());
    expect([...new Set(findings.map((f) => f.result))]).toEqual(['cannot-verify']);
  });

  it('fills its sentences', () => {
    for (const { findings } of failing)
      for (const f of findings) {
        const text = findingText(f, meta);
        expect(text).not.toMatch(/\{\{|\}\}|undefined|NaN|\[object/);
        expect(text).not.toMatch(/ {2}|\bwithout $/);
      }
  });

  it('shows its working: values with their source, missing inputs with their place', () => {
    for (const { name, findings } of failing)
      for (const f of findings) {
        if (f.result === 'fail') expect(f.evidence, name).not.toEqual([]);
        else expect(f.needs, name).not.toEqual([]);
        for (const e of f.evidence) expect(e.source, name).not.toBe('');
        for (const n of f.needs) {
          expect(n.at, `${name}: ${n.what}`).toBeDefined();
          expect(n.field, `${name}: ${n.what}`).toBeDefined();
        }
      }
  });

  it('gives every finding a key of its own', () => {
    for (const { findings } of failing)
      expect(new Set(findings.map((f) => f.key)).size).toBe(findings.length);
  });

  const fixable = failing.flatMap(({ name, project, catalogue, findings }) =>
    findings.flatMap((f) => (f.fix ? [{ name, project, catalogue, finding: f, fix: f.fix }] : [])),
  );

  if (fixable.length > 0)
    it('offers fixes that mend what they are offered for', () => {
      for (const { name, project, catalogue, finding, fix } of fixable) {
        const command = COMMANDS.find((c) => c.id === fix.command);
        expect(command, `${name}: ${fix.command}`).toBeDefined();
        expect(command!.args.safeParse(fix.args).error, name).toBeUndefined();
        expect(finding.severity, 'nobody mends a critical finding with one press').not.toBe('critical');
        const context = { newId: countingIds(50_000), catalogue: catalogue ?? [] };
        const done = dispatchUnknown(startHistory(project), { id: fix.command, args: fix.args }, context);
        expect(done.ok ? 'done' : done.problem.reason, name).toBe('done');
        if (!done.ok) continue;
        const left = findingsOf(rule, done.value.project, catalogue);
        expect(
          left.map((f) => f.key),
          name,
        ).not.toContain(finding.key);
        expect(left.length, name).toBeLessThan(findingsOf(rule, project, catalogue).length);
      }
    });
});
