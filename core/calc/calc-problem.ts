import type { Issue } from '../model/problem';

/** Why there is no answer. Each says what would help; none is ever a NaN in a result. */
export type CalcProblem =
  /** Inputs that are missing: the check that asks cannot verify. */
  | { readonly code: 'needs'; readonly inputs: readonly string[] }
  /** Inputs that are not what they should be. */
  | { readonly code: 'bad-input'; readonly issues: readonly Issue[] }
  /** Outside what the formula or the table holds for. */
  | {
      readonly code: 'out-of-range';
      readonly input: string;
      readonly value: number | string;
      readonly range: string;
    }
  /** No state in which the equations hold. */
  | { readonly code: 'no-solution'; readonly reason: string; readonly objects: readonly string[] };

/** One sentence for people. */
export function calcProblemText(p: CalcProblem): string {
  switch (p.code) {
    case 'needs':
      return `Cannot verify: needs ${p.inputs.join(', ')}.`;
    case 'bad-input':
      return `Cannot compute: ${p.issues.map((i) => (i.path ? `${i.path}: ${i.message}` : i.message)).join('; ')}.`;
    case 'out-of-range':
      return `Cannot verify: ${p.input} is ${p.value}; ${p.range}.`;
    case 'no-solution':
      return `No solution: ${p.reason}${p.objects.length ? ` (${p.objects.join(', ')})` : ''}.`;
  }
}
