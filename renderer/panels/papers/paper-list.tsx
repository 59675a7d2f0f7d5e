import { useMemo } from 'react';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { groupDocuments, type DocumentGroup } from './document-groups';
import { papersView, pickDocuments, usePapersView } from './papers-view';
import { formatWords, stateWords } from './state-words';
import type { Survey } from './use-survey';

/** The documents by who needs them: which one is shown, and which are picked to be printed or exported together. */
export function PaperList({ survey }: { survey: Survey }) {
  const picked = usePapersView((v) => v.picked);
  const groups = useMemo(() => groupDocuments(), []);
  return (
    <nav className="papers-nav" aria-label="Documents">
      <div className="papers-all">
        <h2>Documents</h2>
        <Pick ids={EXPORTERS.map((e) => e.id)} label="Pick all" picked={picked} text="all" />
      </div>
      {groups.map((group) => (
        <Group key={group.id} group={group} survey={survey} picked={picked} />
      ))}
    </nav>
  );
}

function Group({
  group,
  survey,
  picked,
}: {
  group: DocumentGroup;
  survey: Survey;
  picked: ReadonlySet<string>;
}) {
  const chosen = usePapersView((v) => v.chosen);
  return (
    <section aria-label={group.title}>
      <div className="papers-group">
        <Pick ids={group.documents.map((d) => d.id)} label={`Pick all ${group.title.toLowerCase()}`} picked={picked} />
        <h3>{group.title}</h3>
      </div>
      <ul>
        {group.documents.map((document) => (
          <li key={document.id} className="papers-row" data-shown={document.id === chosen ? '' : undefined}>
            <Pick ids={[document.id]} label={`Pick ${document.title.toLowerCase()}`} picked={picked} />
            <button
              type="button"
              aria-current={document.id === chosen ? 'true' : undefined}
              title={document.summary}
              onClick={() => papersView.setState({ chosen: document.id })}
            >
              <span className="papers-title">{document.title}</span>
              <span className="papers-state">
                <span>{stateWords(document, survey[document.id])}</span>
                <span className="papers-formats">{formatWords(document)}</span>
              </span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
} // prettier-ignore

/** Ticked where all are picked, half where some are. */
function Pick({
  ids,
  label,
  picked,
  text,
}: {
  ids: readonly string[];
  label: string;
  picked: ReadonlySet<string>;
  text?: string;
}) {
  const count = ids.filter((id) => picked.has(id)).length;
  return (
    <label className="check papers-pick">
      <input
        type="checkbox"
        aria-label={label}
        checked={count === ids.length}
        ref={(box) => {
          if (box) box.indeterminate = count > 0 && count < ids.length;
        }}
        onChange={(e) => pickDocuments(ids, e.target.checked)}
      />
      {text}
    </label>
  );
}
