import type { Finding } from '@latchwork/core/rules/finding';
import { findingText } from '@latchwork/core/rules/finding-text';
import { RULES } from '@latchwork/core/rules/index';
import type { RuleMeta } from '@latchwork/core/rules/rule';
import type { MarkKind } from '../ui/severity-mark';

const METAS = new Map(RULES.map((r) => [r.meta.id, r.meta]));

/** What the book says of a rule. */
export const metaOf = (rule: string): RuleMeta | undefined => METAS.get(rule);

/** The sentence of a finding. */
export function sentenceOf(finding: Finding): string {
  const meta = metaOf(finding.rule);
  return meta
    ? findingText(finding, meta)
        .replaceAll(/\bmm2\b/g, 'mm²')
        .replaceAll(/\bA2s\b/g, 'A²s')
    : finding.rule;
}

/** The mark that a finding bears: what could not be verified has its own. */
export const markOf = (finding: Finding): MarkKind =>
  finding.result === 'fail' ? finding.severity : 'unknown';
