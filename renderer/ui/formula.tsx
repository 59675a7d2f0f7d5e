import { Fragment } from 'react';
import { type FormulaNode, formulaTree } from './formula-tree';

/** The formula of a calculation, set as mathematics; one line for each of its statements. */
export function Formula({ text }: { text: string }) {
  return formulaTree(text).map((statement, i) => (
    <math key={i} display="block" className="formula">
      <Node node={statement} />
    </math>
  ));
}

function Node({ node }: { node: FormulaNode }) {
  switch (node.is) {
    case 'number':
      return <mn>{node.text}</mn>;
    case 'words':
      // Not mtext, which counts as space and takes the room around a sign away.
      return <mi className="formula-words">{node.text}</mi>;
    case 'operator':
      return /^[(),|∑]$/.test(node.text) ? (
        <mo>{node.text}</mo>
      ) : (
        <mo lspace="0.3em" rspace="0.3em">
          {node.text}
        </mo>
      );
    case 'symbol':
      return node.below === undefined ? (
        <mi>{node.text}</mi>
      ) : (
        <msub>
          <mi>{node.text}</mi>
          <mi className="formula-words">{node.below}</mi>
        </msub>
      );
    case 'fraction':
      return (
        <mfrac>
          <Node node={node.over} />
          <Node node={node.under} />
        </mfrac>
      );
    case 'power':
      return (
        <msup>
          <Node node={node.base} />
          <Node node={node.exponent} />
        </msup>
      );
    case 'root':
      return (
        <msqrt>
          <Node node={node.of} />
        </msqrt>
      );
    case 'row':
      return (
        <mrow>
          {node.items.map((item, i) => (
            <Fragment key={i}>
              {i > 0 && !gapless(node.items[i - 1], item) ? <mspace width="0.2em" /> : null}
              <Node node={item} />
            </Fragment>
          ))}
        </mrow>
      );
  }
}

/** Operators bring their own space; neighbours without one between them need a little. */
const gapless = (before: FormulaNode | undefined, after: FormulaNode): boolean =>
  (before?.is === 'operator' && before.text !== '∑') || after.is === 'operator' || opensBracket(after);

const opensBracket = (node: FormulaNode): boolean =>
  node.is === 'row' && node.items[0]?.is === 'operator' && node.items[0].text === '(';
