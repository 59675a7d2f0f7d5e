import { type ReactNode, createContext, useContext } from 'react';
import { FindingsHere } from './findings-here';

/** A part of a card with its heading. */
export function Section({
  title,
  tools,
  children,
  open = true,
}: {
  title: string;
  tools?: ReactNode;
  children: ReactNode;
  open?: boolean;
}) {
  return (
    <details className="card-section" open={open}>
      <summary>
        <h3>{title}</h3>
        {tools ? <span className="card-tools">{tools}</span> : null}
      </summary>
      <div className="card-body">{children}</div>
    </details>
  );
}

/** Selection key of the object that a card shows; null for a card of several. */
export const CardKey = createContext<string | null>(null);

/** What an object is called, what it is, and what was found at it. */
export function CardHead({ name, kind, children }: { name: string; kind: string; children?: ReactNode }) {
  const key = useContext(CardKey);
  return (
    <>
      <div className="card-head">
        <span className="card-name mono">{name}</span>
        <span className="second">{kind}</span>
        {children}
      </div>
      {key === null ? null : <FindingsHere at={key} />}
    </>
  );
}
