import { readFileSync } from 'node:fs';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { parseProject } from '@latchwork/core/model/parse';
import type { Project } from '@latchwork/core/model/project';
import { checkHarness, type CheckResult } from '@latchwork/core/rules/check-harness';
import { findingText } from '@latchwork/core/rules/finding-text';
import { RULES } from '@latchwork/core/rules/index';
import { workbenchParts } from '../../generate/catalogue/catalogue';

export const fileText = (path: string): string =>
  readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8');

/** A demo as its users open it: from the file. */
export function demoFromFile(name: string): Project {
  const parsed = parseProject(fileText(`demo-projects/${name}.latchwork`));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problem));
  return parsed.value;
}

/** As the window checks it: with the workbench catalogue open. */
export const checked = (project: Project): CheckResult =>
  checkHarness(deriveHarness(project), RULES, undefined, { catalogue: workbenchParts() });

/** The findings as sentences, so that a failing test says what is wrong. */
export const sentences = (result: CheckResult): string[] =>
  result.findings.map((f) => {
    const rule = RULES.find((r) => r.meta.id === f.rule);
    return `${f.rule}: ${rule ? findingText(f, rule.meta) : ''}`;
  });
