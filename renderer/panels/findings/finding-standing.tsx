import { ClipboardPen } from 'lucide-react';
import { quantityLeft } from '@latchwork/core/model/approvals';
import { boundText, judgedText, KIND_WORDS } from '@latchwork/core/decisions/standing-words';
import type { Judged } from '@latchwork/core/decisions/standing';
import type { Finding } from '@latchwork/core/rules/finding';
import { Button } from '../../ui/button';
import { recordClosing, recordDecision, recordUse } from './ask-decision';
import { StandingChip } from './standing-chip';
import { useStanding } from './use-standings';

const SAYS = {
  open: 'No decision on record covers it.',
  accepted: 'Covered by a decision on record.',
  expired: 'A decision covered it until its last day.',
  exhausted: 'A decision covered it until its quantity was used up.',
  reopened: 'A decision was made on it; what it was made on has changed since.',
} as const;

/** Where a finding stands, every decision on it, and the way to a new one. */
export function FindingStanding({ finding }: { finding: Finding }) {
  const standing = useStanding(finding);
  return (
    <section className="standing-box" aria-label="Standing">
      <p>
        <StandingChip standing={standing} />
        <span>{SAYS[standing.state]}</span>
        <Button onClick={() => void recordDecision(finding)}>
          <ClipboardPen size={14} aria-hidden />
          Record a decision
        </Button>
      </p>
      {standing.judged.length > 0 ? (
        <div className="records">
          {standing.judged.map((j) => (
            <Record key={j.decision.id} judged={j} />
          ))}
        </div>
      ) : null}
    </section>
  );
}

function Record({ judged }: { judged: Judged }) {
  const { decision: d, holding } = judged;
  const rows: (readonly [string, string | undefined])[] = [
    ['Requirement', d.requirement],
    ['Actual', d.measured],
    ['Limit', d.limit],
    ['Items', d.items],
    ['Reason', d.reason],
    ['Risk', d.risk],
    ['Mitigation', d.mitigation],
    ['Conditions', d.conditions],
    ['Requested by', d.requester],
    ['Approved by', d.approvals.map((a) => `${a.name}, ${a.role}, ${a.date}`).join('; ')],
    ['Holds', boundText(d)],
    [
      'Used',
      d.uses
        ?.map((u) => `${u.quantity} on ${u.date}${u.items ? ` (${u.items})` : ''}, ${u.recordedBy}`)
        .join('; '),
    ],
    ['Closed', d.closed && `${d.closed.date} by ${d.closed.by}: ${d.closed.reason}`],
  ];
  const left = quantityLeft(d);
  return (
    <article className="record" aria-label={`Decision ${d.number}`}>
      <strong>
        <span className="mono">{d.number}</span> {KIND_WORDS[d.kind]} of {d.decidedOn}
      </strong>
      {holding.state === 'holds' ? null : <p className="second">{judgedText(judged)}</p>}
      <dl>
        {rows.map(([label, value]) =>
          value ? (
            <div key={label} style={{ display: 'contents' }}>
              <dt>{label}</dt>
              <dd>{value}</dd>
            </div>
          ) : null,
        )}
      </dl>
      {d.closed ? null : (
        <div className="card-actions">
          {left !== null && left > 0 ? <Button onClick={() => void recordUse(d)}>Record a use</Button> : null}
          <Button onClick={() => void recordClosing(d)}>Close it</Button>
        </div>
      )}
    </article>
  );
}
