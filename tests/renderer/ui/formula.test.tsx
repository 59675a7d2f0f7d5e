import { describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-react';
import { Formula } from '../../../renderer/ui/formula';
import { type FormulaNode, formulaTree } from '../../../renderer/ui/formula-tree';

/** A tree in a line of text: a fraction as {a // b}, an index behind "_", words in quotes. */
function shown(n: FormulaNode): string {
  switch (n.is) {
    case 'row':
      return n.items.map(shown).join(' ');
    case 'fraction':
      return `{${shown(n.over)} // ${shown(n.under)}}`;
    case 'power':
      return `${shown(n.base)}^${shown(n.exponent)}`;
    case 'root':
      return `root{${shown(n.of)}}`;
    case 'symbol':
      return n.below === undefined ? n.text : `${n.text}_${n.below}`;
    case 'words':
      return `"${n.text}"`;
    default:
      return n.text;
  }
}
const tree = (text: string): string => formulaTree(text).map(shown).join(' ; ');

describe('a formula', () => {
  it.each<[string, string]>([
    ['V = I x R', 'V = I × R'],
    ['R = R20 x (234.5 + T)/254.5 x length', 'R = R_20 × {234.5 + T // 254.5} × "length"'],
    ['T = Ta + (Tr - Ta) x (I/Imax)^2', 'T = T_a + ( T_r − T_a ) × ( {I // I_max} )^2'],
    ['wire = L x sqrt(lay^2 + (pi x Dp)^2)/lay', '"wire" = L × {root{"lay"^2 + ( π × D_p )^2} // "lay"}'],
    ['I2 t <= k2 S2', 'I^2 t ≤ k^2 S^2'],
    ['peak = V/R; I2t = V^2 C/(2 R)', '"peak" = {V // R} ; I^2 t = V^2 {C // 2 R}'],
    ['hole = largest lead + x', '"hole" = "largest lead" + x'],
    ['D = packed x laid factor + 2 x sum of walls', 'D = "packed" × "laid factor" + 2 × ∑ "walls"'],
    ['error = (ways - 1) x |p1 - p2|', '"error" = ( "ways" − 1 ) × | p_1 − p_2 |'],
    ['worst case: sum of tolerances', '"worst case: " "sum of tolerances"'],
    ['row of table 6-1', '"row of table 6-1"'],
    ['a = (b', '"a = (b"'],
    ['', '""'],
  ])('"%s"', (text, expected) => {
    expect(tree(text)).toBe(expected);
  });

  it('is set as MathML', async () => {
    const screen = await render(<Formula text="R = a/b" />);
    expect(screen.container.querySelector('math mfrac')?.textContent).toBe('ab');
  });
});
