import { Copy } from 'lucide-react';
import type { ReactNode } from 'react';
import {
  type CalcReport,
  isObjectList,
  type ReportLine,
  reportText,
  valueText,
} from '@latchwork/core/calc/calc-report';
import type { AnyCalculation } from '@latchwork/core/calc/calculation';
import { AID_NOT_AUTHORITY } from '@latchwork/core/exports/cautions';
import { lengthText } from '@latchwork/core/model/length-text';
import { useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { CalcWorkingBody } from '../../ui/calc-working';
import { Quantity } from '../../ui/quantity';
import { SeverityMark } from '../../ui/severity-mark';
import { say } from '../../ui/toasts';
import { unitText } from '../../ui/unit-text';
import type { Asked } from './ask-calculation';
import { BundlePicture } from './bundle-picture';

/** The answer with its working, or what keeps it from being given. */
export function CalcAnswer({ entry, asked }: { entry: AnyCalculation; asked: Asked }) {
  return (
    <section className="calc-answer" aria-label="Result" aria-live="polite">
      {asked.report ? <Answer entry={entry} report={asked.report} /> : <NoAnswer asked={asked} />}
      <p className="second calc-caution">{AID_NOT_AUTHORITY}</p>
    </section>
  );
}

function NoAnswer({ asked }: { asked: Asked }) {
  const wrong = asked.atFields.size;
  return (
    <div className="calc-open">
      <SeverityMark kind="unknown" size={16} />
      <div>
        <p className="cannot-verify">
          {asked.needs.length > 0
            ? `Needs ${asked.needs.join('; ')}.`
            : asked.reason !== null
              ? `Cannot verify: ${asked.reason}.`
              : `${wrong === 1 ? 'One input' : `${wrong} inputs`} cannot be used.`}
        </p>
        {asked.needs.length > 0 ? (
          <p className="second">The result stands here as soon as it can be computed.</p>
        ) : null}
      </div>
    </div>
  );
}

function Answer({ entry, report }: { entry: AnyCalculation; report: CalcReport }) {
  const copy = (): void => {
    navigator.clipboard.writeText(reportText(entry, report)).then(
      () => say('done', 'The result with its working is on the clipboard.'),
      () => say('problem', 'The clipboard cannot be written to here.'),
    );
  };
  return (
    <>
      <header className="calc-answer-head">
        <h3>Result</h3>
        <Button look="outline" onClick={copy}>
          <Copy size={13} aria-hidden /> Copy as text
        </Button>
      </header>
      <Results lines={report.results} />
      {entry.id === 'bundle-diameter' ? <BundlePicture report={report} /> : null}
      <h3>Working</h3>
      <CalcWorkingBody working={report.working} />
    </>
  );
}

/** Single values as a list, lists of things as tables; the circles of a bundle are drawn instead. */
function Results({ lines }: { lines: readonly ReportLine[] }) {
  const single = lines.filter((l) => !isObjectList(l.value));
  const lists = lines.filter((l) => isObjectList(l.value) && l.key !== 'circles');
  return (
    <div>
      <dl className="calc-values">
        {single.map((line) => (
          <div key={line.key}>
            <dt>{line.label}</dt>
            <dd>
              <ResultValue line={line} />
            </dd>
          </div>
        ))}
      </dl>
      {lists.map((line) => (
        <ResultTable key={line.key} line={line} />
      ))}
    </div>
  );
}

function ResultValue({ line }: { line: ReportLine }): ReactNode {
  const inches = useApp((s) => s.view.lengthUnit === 'in');
  const { value, unit } = line;
  if (typeof value === 'string') return <span>{value}</span>;
  return (
    <>
      <Quantity value={valueText(value)} unit={unitText(unit)} />
      {inches && unit === 'mm' && typeof value === 'number' ? (
        <span className="second"> {lengthText(value, 'in', 4)}</span>
      ) : null}
    </>
  );
}

function ResultTable({ line: { label, value } }: { line: ReportLine }) {
  if (!isObjectList(value)) return null;
  const keys = [...new Set(value.flatMap((item) => Object.keys(item)))];
  return (
    <table className="mini-table calc-table">
      <caption>{label}</caption>
      <thead>
        <tr>
          {keys.map((key) => (
            <th key={key} scope="col">
              {headOf(key)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {value.map((item, i) => (
          <tr key={i}>
            {keys.map((key) => (
              <td key={key} className="mono">
                {item[key] === undefined ? '' : valueText(item[key])}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const UNIT_HEADS: readonly (readonly [RegExp, string])[] = [
  [/(?<=[a-z])A$/, ' A'],
  [/(?<=[a-z])V$/, ' V'],
  [/(?<=[a-z])W$/, ' W'],
  [/(?<=[a-z])C$/, ' °C'],
  [/^ohm$/, 'Resistance Ω'],
  [/^id$/, 'Name'],
];

/** "currentA" as "Current A". */
function headOf(key: string): string {
  const unit = UNIT_HEADS.find(([ending]) => ending.test(key));
  const text = unit ? key.replace(unit[0], unit[1]) : key;
  return text.replace(/^./, (c) => c.toUpperCase());
}
