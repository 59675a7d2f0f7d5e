import { useState } from 'react';
import type { LimitSet } from '@latchwork/core/model/limit-set';
import { LIMIT_SETS } from '@latchwork/core/model/limit-sets/index';
import { choiceWords } from '@latchwork/core/calc/choice-words';
import { VerifiedMark } from '../../../ui/calc-working';
import { Quantity } from '../../../ui/quantity';
import { unitText } from '../../../ui/unit-text';
import { limitLines, saidOf, saysSame, wordsOf, type LimitLine } from './limits-draft';

interface GridProps {
  readonly draft: LimitSet;
  readonly against: LimitSet;
  readonly againstName: string;
  readonly setAgainst: (name: string) => void;
  readonly current: LimitSet;
  readonly chosen: string;
  readonly choose: (id: string) => void;
}

/** Every limit beside what another set says of it; what differs is marked. */
export function LimitsGrid({ draft, against, againstName, setAgainst, current, chosen, choose }: GridProps) {
  const [words, setWords] = useState('');
  const [onlyDifferent, setOnlyDifferent] = useState(false);
  const wanted = words.trim().toLowerCase();
  const lines = limitLines(draft).filter(
    (l) =>
      `${wordsOf(l.id)} ${l.about} ${sourceOf(draft, l)}`.toLowerCase().includes(wanted) &&
      (!onlyDifferent || !saysSame(draft, against, l)),
  );
  return (
    <section className="limits-list" aria-label="Limits">
      <div className="limits-tools">
        <input
          className="input"
          type="search"
          aria-label="Search limits"
          placeholder="Words, a limit, a source"
          value={words}
          onChange={(e) => setWords(e.target.value)}
        />
        <label>
          beside{' '}
          <select
            className="input"
            aria-label="Compare with"
            value={againstName}
            onChange={(e) => setAgainst(e.target.value)}
          >
            <option value="">the project as it is</option>
            {LIMIT_SETS.map((s) => (
              <option key={s.name} value={s.name}>
                {s.name}, as shipped
              </option>
            ))}
          </select>
        </label>
        <label className="check">
          <input
            type="checkbox"
            checked={onlyDifferent}
            onChange={(e) => setOnlyDifferent(e.target.checked)}
          />
          Only what differs
        </label>
      </div>
      <div className="limits-scroll">
        <table className="limits-table">
          <thead>
            <tr>
              <th scope="col">Limit</th>
              <th scope="col" className="limits-value">
                Draft
              </th>
              <th scope="col" className="limits-value">
                {againstName || 'Project'}
              </th>
              <th scope="col">Source</th>
            </tr>
          </thead>
          <tbody>
            {lines.map((line) => (
              <tr
                key={line.id}
                aria-current={line.id === chosen ? 'true' : undefined}
                data-changed={saysSame(draft, current, line) ? undefined : ''}
                onClick={() => choose(line.id)}
              >
                <th scope="row">
                  <button type="button" className="limits-open" onClick={() => choose(line.id)}>
                    {wordsOf(line.id)}
                  </button>
                  {saysSame(draft, current, line) ? null : <span className="chip">changed</span>}
                </th>
                <td className="limits-value">
                  <Said set={draft} line={line} />
                </td>
                <td className="limits-value">
                  {saysSame(draft, against, line) ? (
                    <span className="second">same</span>
                  ) : (
                    <>
                      <span aria-label="differs: ">≠ </span>
                      <Said set={against} line={line} />
                    </>
                  )}
                </td>
                <td className="limits-source">
                  <Verified set={draft} line={line} /> <span>{sourceOf(draft, line)}</span>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
        {lines.length === 0 ? <p className="second limits-none">No limit is left by this search.</p> : null}
      </div>
    </section>
  );
}

function Said({ set, line }: { set: LimitSet; line: LimitLine }) {
  const said = saidOf(set, line);
  if (!said) return <span className="second">not set</span>;
  return line.kind === 'table' ? (
    <span>{choiceWords(said.value)}</span>
  ) : (
    <Quantity value={said.value} unit={unitText(said.unit)} />
  );
}

const limitOf = (set: LimitSet, line: LimitLine) =>
  line.kind === 'limit' ? set.limits.find((l) => l.id === line.id) : undefined;

function Verified({ set, line }: { set: LimitSet; line: LimitLine }) {
  const limit = limitOf(set, line);
  return limit ? <VerifiedMark verified={limit.verified} /> : null;
}

function sourceOf(set: LimitSet, line: LimitLine): string {
  const limit = limitOf(set, line);
  return limit ? `${limit.source}${limit.edition ? `, ${limit.edition}` : ''}` : '';
}
