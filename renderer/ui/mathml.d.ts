import type { HTMLAttributes } from 'react';

type MathElement = HTMLAttributes<Element> & { key?: string | number; display?: 'block' | 'inline' };

/** MathML Core, which the types of React do not list. */
declare module 'react' {
  namespace JSX {
    interface IntrinsicElements {
      math: MathElement;
      mrow: MathElement;
      mi: MathElement;
      mn: MathElement;
      mo: MathElement & { lspace?: string; rspace?: string };
      msub: MathElement;
      mfrac: MathElement;
      mtext: MathElement;
      msup: MathElement;
      msqrt: MathElement;
      mspace: MathElement & { width?: string };
    }
  }
}
