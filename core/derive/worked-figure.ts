import type { CalcProblem } from '../calc/calc-problem';
import type { Working } from '../calc/calculation';

/** A computed number of an object with its working; or what keeps it from being computed. */
export interface WorkedFigure {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  readonly value: number | undefined;
  readonly working: Working | undefined;
  /** How far the number is to be trusted where that is not plain: "computed", "estimate", "catalogue". */
  readonly mark: string | undefined;
  /** What is missing, in words. */
  readonly needs: readonly string[];
  /** The limit that the value is held against. */
  readonly most?: number | undefined;
}

export const workedFigure = (
  head: Pick<WorkedFigure, 'key' | 'label' | 'unit'>,
  value: number,
  working: Working,
  mark?: string,
  most?: number,
): WorkedFigure => ({ ...head, value, working, mark, needs: [], most });

export const openFigure = (
  head: Pick<WorkedFigure, 'key' | 'label' | 'unit'>,
  needs: readonly string[],
): WorkedFigure => ({ ...head, value: undefined, working: undefined, mark: undefined, needs });

/** What a calculation said instead of a number, as words that can stand behind "needs". */
export function needsOf(p: CalcProblem): readonly string[] {
  switch (p.code) {
    case 'needs':
      return p.inputs;
    case 'out-of-range':
      return [`a ${p.input} other than ${p.value}: ${p.range}`];
    case 'bad-input':
      return p.issues.map((i) => `${i.path}: ${i.message}`);
    case 'no-solution':
      return [p.reason];
  }
}
