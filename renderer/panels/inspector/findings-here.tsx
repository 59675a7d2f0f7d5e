import { isAccepted, standingOf, type Standing } from '@latchwork/core/decisions/standing';
import { judgedText } from '@latchwork/core/decisions/standing-words';
import type { Finding } from '@latchwork/core/rules/finding';
import { appStore, keyOfRef, useApp } from '../../app/store';
import { useToday } from '../../app/today';
import { MARK_WORDS, SeverityMark } from '../../ui/severity-mark';
import { markOf, sentenceOf } from '../rule-meta';

const MOST = 6;

/**
 * Findings at the object with this key, or at a cavity of it; a click opens the working. Those that a decision in force
 * covers stand below, quiet.
 */
export function FindingsHere({ at }: { at: string }) {
  const findings = useApp((s) => s.check.findings);
  const project = useApp((s) => s.check.harness.project);
  const day = useToday();
  const here = findings
    .filter((f) => f.objects.some((o) => keyOfRef(o) === at || o.id === at))
    .map((finding) => ({ finding, standing: standingOf(project, finding, day) }));
  const open = here.filter((h) => !isAccepted(h.standing));
  const accepted = here.filter((h) => isAccepted(h.standing));
  return (
    <>
      {open.length > 0 ? (
        <ul className="findings-here" aria-label="Findings here">
          {open.slice(0, MOST).map(({ finding }) => (
            <Line key={finding.key} finding={finding} />
          ))}
          {open.length > MOST ? (
            <li className="second">and {open.length - MOST} more on the Findings page</li>
          ) : null}
        </ul>
      ) : null}
      {accepted.length > 0 ? (
        <ul className="findings-here findings-accepted" aria-label="Accepted findings here">
          {accepted.map(({ finding, standing }) => (
            <Line key={finding.key} finding={finding} standing={standing} />
          ))}
        </ul>
      ) : null}
    </>
  );
}

function Line({ finding, standing }: { finding: Finding; standing?: Standing }) {
  const by = standing?.by;
  return (
    <li>
      <button
        type="button"
        title={by ? judgedText(by) : undefined}
        onClick={() => appStore.getState().showFinding(finding.key)}
      >
        <SeverityMark kind={markOf(finding)} label={MARK_WORDS[markOf(finding)]} />
        <span>
          {sentenceOf(finding)}
          {by ? <span className="findings-by"> accepted, {by.decision.number}</span> : null}
        </span>
      </button>
    </li>
  );
}
