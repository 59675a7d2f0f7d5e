/** A place in a file: "wires[3].ends[0].cavity". */
export interface Issue {
  readonly path: string;
  readonly message: string;
}

/** Why a text is not a project (or a catalogue). Each names the place, none changes anything. */
export type OpenProblem =
  | { readonly code: 'not-json'; readonly line: number; readonly column: number; readonly message: string }
  /** JSON that no program of ours writes: a key twice, nesting without end. */
  | { readonly code: 'bad-json'; readonly line: number; readonly column: number; readonly message: string }
  | { readonly code: 'not-ours'; readonly expected: string; readonly found: string }
  | { readonly code: 'too-new'; readonly found: number; readonly known: number }
  | { readonly code: 'bad-shape'; readonly issues: readonly Issue[] }
  | { readonly code: 'broken-reference'; readonly issues: readonly Issue[] };

/** One sentence for people: what is wrong, and where. */
export function openProblemText(p: OpenProblem): string {
  switch (p.code) {
    case 'not-json':
      return `This is not readable JSON: line ${p.line}, column ${p.column}: ${p.message}`;
    case 'bad-json':
      return `This cannot be read without guessing: line ${p.line}, column ${p.column}: ${p.message}`;
    case 'not-ours':
      return `This is not a ${p.expected} file (its format field says ${p.found}).`;
    case 'too-new':
      return `This file has format version ${p.found}; this program knows versions up to ${p.known}. Update the program to open it.`;
    case 'bad-shape':
      return `The file does not have the shape of its format: ${listed(p.issues)}`;
    case 'broken-reference':
      return `The file names objects that it does not hold: ${listed(p.issues)}`;
  }
}

function listed(issues: readonly Issue[]): string {
  const first = issues.slice(0, 5).map((i) => `${i.path}: ${i.message}`);
  return first.join('; ') + (issues.length > 5 ? `; and ${issues.length - 5} more` : '');
}
