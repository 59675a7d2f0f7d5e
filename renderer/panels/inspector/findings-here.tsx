import { appStore, keyOfRef, useApp } from '../../app/store';
import { MARK_WORDS, SeverityMark } from '../../ui/severity-mark';
import { markOf, sentenceOf } from '../rule-meta';

const MOST = 6;

/** Findings at the object with this key, or at a cavity of it; a click opens the working. */
export function FindingsHere({ at }: { at: string }) {
  const findings = useApp((s) => s.check.findings);
  const here = findings.filter((f) => f.objects.some((o) => keyOfRef(o) === at || o.id === at));
  if (here.length === 0) return null;
  return (
    <ul className="findings-here" aria-label="Findings here">
      {here.slice(0, MOST).map((f) => (
        <li key={f.key}>
          <button type="button" onClick={() => appStore.getState().showFinding(f.key)}>
            <SeverityMark kind={markOf(f)} label={MARK_WORDS[markOf(f)]} />
            <span>{sentenceOf(f)}</span>
          </button>
        </li>
      ))}
      {here.length > MOST ? (
        <li className="second">and {here.length - MOST} more on the Findings page</li>
      ) : null}
    </ul>
  );
}
