import type { HTMLAttributes } from 'react';

type MathElement = HTMLAttributes<Element> & { key?: string; display?: 'block' | 'inline' };

/** MathML Core, which the types of React do not list. */
declare module 'react' {
  namespace JSX {
    interface IntrinsicElements {
      math: MathElement;
      mrow: MathElement;
      mi: MathElement;
      mn: MathElement;
      mo: MathElement;
      msub: MathElement;
      mfrac: MathElement;
      mtext: MathElement;
    }
  }
}
