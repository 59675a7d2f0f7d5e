import type { FindingChanges } from '@latchwork/core/decisions/compare-findings';
import type { Finding } from '@latchwork/core/rules/finding';
import { MARK_WORDS, SeverityMark } from '../../ui/severity-mark';
import { markOf, sentenceOf } from '../rule-meta';

const MOST = 8;

/** Findings that go, come and change, each with its mark. */
export function FindingChangeList({ changes }: { changes: FindingChanges }) {
  const { gone, added, changed } = changes;
  if (gone.length + added.length + changed.length === 0)
    return <p className="second">No finding goes, comes or changes.</p>;
  return (
    <ul className="changes">
      <Part title="Findings that go" findings={gone} />
      <Part title="Findings that come" findings={added} />
      <Part title="Findings that change" findings={changed.map((c) => c.after)} />
    </ul>
  );
}

function Part({ title, findings }: { title: string; findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  return (
    <li>
      {title}: {findings.length}
      <ul>
        {findings.slice(0, MOST).map((f) => (
          <li key={f.key}>
            <SeverityMark kind={markOf(f)} size={12} label={MARK_WORDS[markOf(f)]} /> {sentenceOf(f)}
          </li>
        ))}
        {findings.length > MOST ? <li>and {findings.length - MOST} more</li> : null}
      </ul>
    </li>
  );
}
