import { useMemo, useState } from 'react';
import { AID_NOT_AUTHORITY, cautionsOf } from '@latchwork/core/exports/cautions';
import { RULES } from '@latchwork/core/rules/index';
import { useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { EmptyPlace } from '../../ui/empty-place';
import { MARK_WORDS, SeverityMark } from '../../ui/severity-mark';
import { VirtualList } from '../../ui/virtual-list';
import { markOf } from '../rule-meta';
import { FindingDetail } from './finding-detail';
import {
  ALL_FINDINGS,
  type FindingFilter,
  type FindingRow,
  findingRows,
  GROUPINGS,
  type Grouping,
} from './finding-filter';
import { FindingFilters } from './finding-filters';
import './findings.css';
import { ReleaseLine } from './release-line';
import { ReportMenu } from './report-menu';
import { StandingChip } from './standing-chip';
import { useStandings } from './use-standings';

const isLine = (row: FindingRow): row is Exclude<FindingRow, { heading: string }> => 'finding' in row;

/** What the rules found, and what they could not verify: each with its working, its object and its fix. */
export function FindingsPage() {
  const project = useApp((s) => s.check.harness.project);
  const findings = useApp((s) => s.check.findings);
  const openKey = useApp((s) => s.view.finding);
  const setView = useApp((s) => s.setView);
  const [filter, setFilter] = useState<FindingFilter>(ALL_FINDINGS);
  const [grouping, setGrouping] = useState<Grouping>('severity');
  const standings = useStandings();
  const rows = useMemo(
    () => findingRows({ project, findings, standings }, filter, grouping),
    [project, findings, standings, filter, grouping],
  );
  const shown = findings.find((f) => f.key === openKey) ?? rows.find(isLine)?.finding;
  const count = rows.filter(isLine).length;
  return (
    <div className="findings">
      <section className="column findings-side" aria-label="List of findings">
        <FindingFilters filter={filter} change={setFilter} />
        <div className="findings-count">
          <span role="status">
            {count === findings.length
              ? `${count} ${count === 1 ? 'finding' : 'findings'}`
              : `${count} of ${findings.length} findings`}
          </span>
          <label>
            by{' '}
            <select
              className="input"
              aria-label="Group by"
              value={grouping}
              onChange={(e) => setGrouping(e.target.value as Grouping)}
            >
              {GROUPINGS.map((g) => (
                <option key={g}>{g}</option>
              ))}
            </select>
          </label>
          <ReportMenu />
        </div>
        <ReleaseLine showBlocking={() => setFilter({ ...ALL_FINDINGS, severity: 'critical' })} />
        {findings.length === 0 ? (
          <NothingFound />
        ) : count === 0 ? (
          <div className="findings-none">
            <p className="second">No finding is left by this filter.</p>
            <Button onClick={() => setFilter(ALL_FINDINGS)}>Show all findings</Button>
          </div>
        ) : (
          <VirtualList
            label="Findings"
            items={rows}
            keyOf={(row) => (isLine(row) ? row.finding.key : row.heading)}
            heightOf={heightOf}
            isHeading={(row) => !isLine(row)}
            isSelected={(row) => isLine(row) && row.finding.key === shown?.key}
            onChoose={(row) => isLine(row) && setView({ finding: row.finding.key })}
            titleOf={(row) => (isLine(row) ? row.sentence : undefined)}
            render={(row) => <Line row={row} />}
          />
        )}
        <Cautions />
      </section>
      {shown ? <FindingDetail key={shown.key} finding={shown} /> : null}
    </div>
  );
}

/** Sentences longer than this do not fit on one line of the list. */
const ONE_LINE = 58;

function heightOf(row: FindingRow): number {
  if (!isLine(row)) return 34;
  return row.sentence.length > ONE_LINE ? 64 : 46;
}

function Line({ row }: { row: FindingRow }) {
  if (!isLine(row))
    return (
      <span>
        {row.heading.replace(/^[a-z]/, (c) => c.toUpperCase())} · {row.count}
      </span>
    );
  const mark = markOf(row.finding);
  return (
    <div className="finding-line">
      <SeverityMark kind={mark} size={16} label={MARK_WORDS[mark]} />
      <div>
        <div className="finding-where">
          <span className="mono">{row.where}</span>
          {row.standing.state === 'open' ? null : <StandingChip standing={row.standing} />}
          <span className="second">{row.finding.rule}</span>
        </div>
        <div className="finding-sentence">{row.sentence}</div>
      </div>
    </div>
  );
}

function NothingFound() {
  const tally = useApp((s) => s.check).tally();
  const asked = [...tally.values()].reduce((sum, t) => sum + t.pass, 0);
  const empty = useApp((s) => s.history.project.connectors.length === 0);
  const setView = useApp((s) => s.setView);
  return (
    <EmptyPlace
      title={empty ? 'Nothing to check yet' : 'No finding'}
      action={<Button onClick={() => setView({ page: 'diagram' })}>Go to the diagram</Button>}
    >
      {empty ? (
        <p>
          Findings appear here while you draw: what is wrong, and what cannot be verified for want of data.
        </p>
      ) : (
        <p>
          {RULES.length} rules were asked; they passed {asked} times. {AID_NOT_AUTHORITY}
        </p>
      )}
    </EmptyPlace>
  );
}

/** The cautions of the trade, on screen as on paper. */
function Cautions() {
  const project = useApp((s) => s.history.project);
  const [first, ...more] = cautionsOf(project);
  return (
    <details className="findings-cautions">
      <summary>{first}</summary>
      {more.map((text) => (
        <p key={text}>{text}</p>
      ))}
    </details>
  );
}
