import type { ReactNode } from 'react';
import { Button as AriaButton, Dialog, DialogTrigger, Heading, Popover } from 'react-aria-components';
import type { CalcSource, Working } from '@latchwork/core/calc/calculation';
import { valueText } from '@latchwork/core/calc/calc-report';
import { Formula } from './formula';
import { Quantity } from './quantity';
import { unitText } from './unit-text';
import './working.css';

/** How a calculation came to its number: formula, figures, whose they are, and the conditions that stand beside it. */
export function CalcWorkingBody({ working }: { working: Working }) {
  const { formula, figures, sources, notes } = working;
  return (
    <>
      <div className="working-formula">
        <Formula text={formula} />
      </div>
      <table className="working-lines">
        <tbody>
          {figures.map((f, i) => (
            <tr key={`${i} ${f.name}`}>
              <th scope="row">{f.name}</th>
              <td className="working-value">
                <Quantity value={valueText(f.value)} unit={unitText(f.unit)} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {notes.length > 0 ? (
        <ul className="working-notes">
          {notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      ) : null}
      <SourceList sources={sources} />
    </>
  );
}

/** Sources, each with whether it was seen or only recalled. */
export function SourceList({ sources }: { sources: readonly CalcSource[] }) {
  const titles = [...new Map(sources.map((s) => [s.title, s])).values()];
  return (
    <ul className="working-sources" aria-label="Sources">
      {titles.map((s) => (
        <li key={s.title}>
          <VerifiedMark verified={s.verified} />
          <span>
            {s.title}
            {s.note ? <span className="second"> · {s.note}</span> : null}
          </span>
        </li>
      ))}
    </ul>
  );
}

/** Whether a value was seen in its source, in words and not by colour alone. */
export function VerifiedMark({ verified }: { verified: boolean }) {
  return (
    <span className="chip verified-mark" data-tone={verified ? 'good' : 'unknown'}>
      {verified ? 'source seen' : 'not verified'}
    </span>
  );
}

/** A number that a calculation gave: dotted underline, and on a press its working. */
export function WorkedCalc({
  title,
  working,
  before,
  children,
}: {
  title: string;
  working: Working;
  /** Stands over the formula: the limit as a bar. */
  before?: ReactNode;
  children: ReactNode;
}) {
  return (
    <DialogTrigger>
      <AriaButton className="worked">{children}</AriaButton>
      <Popover className="popover" placement="bottom start">
        <Dialog className="popover-body working">
          <Heading slot="title" level={3}>
            {title}
          </Heading>
          {before}
          <CalcWorkingBody working={working} />
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}
