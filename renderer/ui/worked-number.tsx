import type { ReactNode } from 'react';
import { Button as AriaButton, Dialog, DialogTrigger, Heading, Popover } from 'react-aria-components';
import './working.css';
import { Quantity } from './quantity';

/** One input of a calculation, and where it was taken from. */
export interface WorkingLine {
  readonly symbol?: ReactNode;
  readonly label: string;
  readonly value: ReactNode;
  readonly source: string;
}

/** How a number came about. */
export interface Working {
  readonly title: string;
  /** MathML. */
  readonly formula?: ReactNode;
  readonly lines: readonly WorkingLine[];
  readonly result?: ReactNode;
  readonly method: string;
  readonly needs?: readonly string[];
}

/** A computed number: dotted underline, and on a press its working. */
export function WorkedNumber({ working, children }: { working: Working; children: ReactNode }) {
  return (
    <DialogTrigger>
      <AriaButton className="worked" aria-label={undefined}>
        {children}
      </AriaButton>
      <Popover className="popover" placement="bottom start">
        <Dialog className="popover-body working">
          <Heading slot="title" level={3}>
            {working.title}
          </Heading>
          <WorkingBody working={working} />
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}

/** Formula, inputs, result and method. */
export function WorkingBody({ working }: { working: Working }) {
  return (
    <>
      {working.formula ? <div className="working-formula">{working.formula}</div> : null}
      <table className="working-lines">
        <tbody>
          {working.lines.map((line) => (
            <tr key={line.label}>
              <th scope="row">
                {line.symbol ? <math>{line.symbol}</math> : null} {line.label}
              </th>
              <td className="working-value">{line.value}</td>
              <td className="second">{line.source}</td>
            </tr>
          ))}
          {working.result === undefined ? null : (
            <tr className="working-result">
              <th scope="row">Result</th>
              <td className="working-value">{working.result}</td>
              <td />
            </tr>
          )}
        </tbody>
      </table>
      {working.needs?.length ? (
        <p className="working-needs">Incomplete: not known is {working.needs.join(', ')}.</p>
      ) : null}
      <p className="second working-method">{working.method}</p>
    </>
  );
}

/** A number in a working. */
export const inMm = (mm: number): ReactNode => (
  <Quantity value={String(Math.round(mm * 1000) / 1000)} unit="mm" />
);
