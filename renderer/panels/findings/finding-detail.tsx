import { Crosshair, Wrench } from 'lucide-react';
import type { Finding, Need } from '@latchwork/core/rules/finding';
import { refText } from '@latchwork/core/rules/refs';
import { panelPx, togglePanel } from '../../app/panel-sizes';
import { showable } from '../../app/selection';
import { appStore, keyOfRef, useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { LimitBar } from '../../ui/limit-bar';
import { Quantity } from '../../ui/quantity';
import { MARK_WORDS, SeverityMark } from '../../ui/severity-mark';
import { say } from '../../ui/toasts';
import { Alternates } from '../inspector/alternates';
import { markOf, metaOf, sentenceOf } from '../rule-meta';
import { openRuleBook } from '../rules/rule-book';
import { bandOf } from './band-of';
import { FindingHistory } from './finding-history';
import { FindingStanding } from './finding-standing';
import { FixPreview } from './fix-preview';
import { WrongPlugPicture } from './wrong-plug-picture';

const FORMBOARD = new Set(['node', 'segment', 'covering', 'tie', 'fixing', 'dimension']);

/** The working of one finding: what, why, the values it was decided on, and what can be done. */
export function FindingDetail({ finding }: { finding: Finding }) {
  const project = useApp((s) => s.history.project);
  const meta = metaOf(finding.rule);
  const mark = markOf(finding);
  const band = bandOf(finding);
  return (
    <article
      className="finding"
      aria-label={`Finding at ${finding.objects.map((o) => refText(project, o)).join(', ')}`}
    >
      <header>
        <div className="finding-kind">
          <SeverityMark kind={mark} size={18} />
          <span>{MARK_WORDS[mark]}</span>
          {finding.result === 'cannot-verify' ? (
            <span className="second">would be {finding.severity}</span>
          ) : null}
        </div>
        <h2>{sentenceOf(finding)}</h2>
        <div className="card-actions">
          <Button look={finding.fix ? 'outline' : 'primary'} onClick={() => showMe(finding)}>
            <Crosshair size={14} aria-hidden />
            Show me
          </Button>
          {finding.fix ? (
            <Button look="primary" onClick={() => mend(finding)}>
              <Wrench size={14} aria-hidden />
              {finding.fix.label}
            </Button>
          ) : null}
        </div>
        {finding.fix ? (
          <p className="second">One step, which can be undone. The rules are asked again at once.</p>
        ) : null}
      </header>
      {finding.rule === 'wrong-plug' ? <WrongPlugPicture finding={finding} /> : null}
      <FindingStanding finding={finding} />
      {finding.fix ? <FixPreview fix={finding.fix} /> : null}
      {finding.rule === 'alternate-checked' ? <AlternatesOf finding={finding} /> : null}
      {finding.needs.length ? <Needs needs={finding.needs} /> : null}
      {meta ? (
        <section>
          <h3>Why it matters</h3>
          <p>{meta.why}</p>
        </section>
      ) : null}
      <section>
        <h3>Values used</h3>
        {band ? <LimitBar {...band} /> : null}
        {finding.evidence.length ? (
          <Evidence finding={finding} />
        ) : (
          <p className="second">The rule goes by what is there and what is not; no value was measured.</p>
        )}
      </section>
      {meta ? (
        <section>
          <h3>The rule</h3>
          <p>{meta.summary}</p>
          <p className="second">
            <span className="mono">{meta.id}</span>, revision {meta.revision} · {meta.source}
          </p>
          <Button look="link" onClick={() => void openRuleBook(meta.id)}>
            Open it in the rule book
          </Button>
        </section>
      ) : null}
      <FindingHistory finding={finding} />
    </article>
  );
}

/** Each alternate of the part with what it would break, and the ways to take it. */
function AlternatesOf({ finding }: { finding: Finding }) {
  const part = useApp((s) => s.harness.parts.get(finding.objects[0]?.id ?? ''));
  return part ? (
    <section>
      <h3>Alternates of {part.partNumber}</h3>
      <Alternates part={part} />
    </section>
  ) : null;
}

function Evidence({ finding }: { finding: Finding }) {
  return (
    <table className="evidence">
      <thead>
        <tr>
          <th scope="col">Value</th>
          <th scope="col" className="evidence-value">
            Amount
          </th>
          <th scope="col">From</th>
        </tr>
      </thead>
      <tbody>
        {finding.evidence.map((e, i) => (
          <tr key={`${e.label} ${i}`}>
            <td>{e.label}</td>
            <td className="evidence-value">
              <Quantity value={e.value} unit={e.unit === 'mm2' ? 'mm²' : e.unit} />
            </td>
            <td className="second">{e.source}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Needs({ needs }: { needs: readonly Need[] }) {
  return (
    <section>
      <h3>What is missing</h3>
      <ul className="needs">
        {needs.map((need) => (
          <li key={need.what}>
            <span>{need.what}</span>
            {need.at ? <Button onClick={() => fillIn(need)}>Go there</Button> : null}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Selects the objects of a finding on the sheet that draws them. */
function showMe(finding: Finding): void {
  const { history, reveal } = appStore.getState();
  const refs = showable(history.project, finding.objects);
  if (refs.length === 0)
    return say('plain', 'This finding is about the project as a whole, not about an object on a sheet.');
  reveal(refs, FORMBOARD.has(refs[0]?.type ?? '') ? 'formboard' : 'diagram');
}

/** Goes to the object that lacks a value, and puts the focus into the field. */
function fillIn(need: Need): void {
  const { history, view, setView, reveal, select, focusField } = appStore.getState();
  const { at } = need;
  if (!at) return;
  if (panelPx(view.panelSizesPx, 'inspector') === 0) togglePanel('inspector');
  // Signals and the title block stand in the inspector while nothing is selected.
  if (at.type === 'signal' || at.type === 'project') {
    select([]);
    setView({ page: 'diagram' });
    return focusField(at.type === 'signal' ? `signal:${at.id}` : projectField(need.field ?? ''));
  }
  if (at.type === 'part')
    say(
      'plain',
      `${refText(history.project, at)}: its record does not say this. Complete it in the catalogue, or choose another part for the objects selected now.`,
    );
  const refs = showable(history.project, [at]);
  reveal(refs, FORMBOARD.has(at.type) ? 'formboard' : 'diagram');
  const first = refs[0];
  if (first) select([keyOfRef(first)]);
  if (need.field) focusField(need.field);
}

/** The field of the project card: limits go by "limit.<id>", the title block by the name alone. */
const projectField = (field: string): string =>
  field.replace(/^limitSet\./, 'limit.').replace(/^titleBlock\./, '');

function mend(finding: Finding): void {
  if (!finding.fix) return;
  const { command, args, label } = finding.fix;
  if (!appStore.getState().dispatchFix({ id: command, args }))
    say('done', `Done: ${label}.`, { text: 'Undo', run: () => appStore.getState().undo() });
}
