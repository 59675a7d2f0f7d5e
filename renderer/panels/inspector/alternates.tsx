import { useDeferredValue, useMemo } from 'react';
import { alternatesOnRecord } from '@latchwork/core/decisions/alternates-on-record';
import { checkAlternate, type AlternateCheck } from '@latchwork/core/decisions/check-alternate';
import type { Part } from '@latchwork/core/model/parts/part';
import { appStore, useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { SeverityMark, type MarkKind } from '../../ui/severity-mark';
import { say } from '../../ui/toasts';
import { FixPreview } from '../findings/fix-preview';
import { markOf, sentenceOf } from '../rule-meta';
import './alternates.css';

const MOST = 5;

/** The alternates that a part names: what each would break in its place, and the ways to take it. */
export function Alternates({ part }: { part: Part }) {
  const check = useDeferredValue(useApp((s) => s.check));
  const catalogue = useApp((s) => s.catalogue);
  const named = useMemo(
    () => alternatesOnRecord(check.harness.project, catalogue).find((a) => a.part.id === part.id),
    [check, catalogue, part.id],
  );
  if (!named) return null;
  return (
    <ul className="alternates" aria-label={`Alternates of ${part.partNumber}`}>
      {named.records.map(({ alternate, inProject }) => (
        <Alternate
          key={alternate.id}
          part={part}
          tried={checkAlternate(check, part.id, alternate)}
          inProject={inProject}
        />
      ))}
      {named.missing.map((number) => (
        <li key={number}>
          <div className="alternate-name">
            <SeverityMark kind="unknown" size={12} />
            <span className="mono">{number}</span>
          </div>
          <p className="second">Cannot verify: neither the project nor an open catalogue has its record.</p>
        </li>
      ))}
    </ul>
  );
}

function Alternate({ part, tried, inProject }: { part: Part; tried: AlternateCheck; inProject: boolean }) {
  const { alternate, sameKind } = tried;
  const broken = [...tried.added, ...tried.worse.map((w) => w.after)];
  const fix = {
    label: `Exchange ${part.partNumber} for ${alternate.partNumber}`,
    command: 'part.exchange',
    args: { part: part.id, by: alternate },
  };
  const told = [...broken, ...tried.cannotVerify];
  return (
    <li>
      <div className="alternate-name">
        <SeverityMark kind={verdictOf(tried)} size={12} />
        <span className="mono">{alternate.partNumber}</span>
        <span className="second">{verdictText(tried)}</span>
      </div>
      {told.length > 0 ? (
        <ul className="changes">
          {told.slice(0, MOST).map((f) => (
            <li key={f.key}>
              <SeverityMark kind={markOf(f)} size={12} /> {sentenceOf(f)}
            </li>
          ))}
          {told.length > MOST ? <li>and {told.length - MOST} more</li> : null}
        </ul>
      ) : null}
      <div className="card-actions">
        {inProject ? null : <Button onClick={() => take(alternate)}>Take its record into the project</Button>}
      </div>
      {sameKind ? (
        <details className="alternate-exchange">
          <summary>Exchange for it …</summary>
          <FixPreview fix={fix} title="What the exchange changes" />
          <Button look="primary" onClick={() => exchange(fix)}>
            {fix.label}
          </Button>
        </details>
      ) : null}
    </li>
  );
}

function verdictOf({ sameKind, added, worse, cannotVerify }: AlternateCheck): MarkKind {
  if (!sameKind || added.length + worse.length > 0) return 'major';
  return cannotVerify.length > 0 ? 'unknown' : 'note';
}

function verdictText({ sameKind, added, worse, cannotVerify, removed }: AlternateCheck): string {
  if (!sameKind) return 'is a part of another kind';
  const broken = added.length + worse.length;
  const gone = removed.length > 0 ? `; ${removed.length} would go` : '';
  if (broken > 0) return `would bring ${broken} ${broken === 1 ? 'failure' : 'failures'}${gone}`;
  if (cannotVerify.length > 0) return `cannot verify ${cannotVerify.length} of the checks with it${gone}`;
  return `breaks no check in this design${gone}`;
}

function take({ partNumber, maker }: Part): void {
  if (!appStore.getState().dispatch({ id: 'part.add', args: { partNumber, maker } }))
    say('done', `The record of ${partNumber} is in the project.`);
}

function exchange(fix: { label: string; command: string; args: unknown }): void {
  if (!appStore.getState().dispatchFix({ id: fix.command, args: fix.args }))
    say('done', `Done: ${fix.label}.`, { text: 'Undo', run: () => appStore.getState().undo() });
}
