import { alternateFinding } from '../../decisions/alternate-finding';
import { checkAlternate } from '../../decisions/check-alternate';
import type { Part } from '../../model/parts/part';
import { alternateChecked } from '../../rules/alternate-checked';
import type { CheckResult } from '../../rules/check-harness';
import { findingText } from '../../rules/finding-text';
import { recordByNumber } from '../../rules/shared/bought-parts';

/** Each alternate of a part with what asking every rule about it in the part's place came to. */
export function alternateWords(check: CheckResult, part: Part): readonly string[] {
  const { project } = check.harness;
  return [...new Set(part.alternates ?? [])].map((number) => {
    const alternate = recordByNumber(project, number, part.maker);
    if (!alternate) return `${number}: cannot verify, its record is not in the project`;
    const finding = alternateFinding(project, part, checkAlternate(check, part.id, alternate), true);
    if (!finding) return `${number}: re-checked, keeps every check`;
    if (finding.result === 'fail') return `${number}: not as it is, ${String(finding.data['differences'])}`;
    return `${number}: cannot verify, ${findingText(finding, alternateChecked.meta)}`;
  });
}
