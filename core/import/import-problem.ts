/**
 * Why a file was not taken: the line of the text and the column of the table (both from 1), and the field by its
 * heading. A problem of the whole file stands at line 1, column 1.
 */
export interface ImportProblem {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly field: string;
  readonly message: string;
}

/** "wires.csv, line 3, column 7 (colour): "XX" is not a colour code". */
export const importProblemText = (p: ImportProblem): string =>
  `${p.file}, line ${p.line}, column ${p.column}${p.field ? ` (${p.field})` : ''}: ${p.message}`;
