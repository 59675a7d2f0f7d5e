import { useState } from 'react';
import { SEVERITIES } from '@latchwork/core/rules/finding';
import { RULES } from '@latchwork/core/rules/index';
import type { AnyRule } from '@latchwork/core/rules/rule';
import { useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { DialogFrame, ask } from '../../ui/dialogs';
import { MARK_WORDS, SeverityMark } from '../../ui/severity-mark';

const SORTED: readonly AnyRule[] = [...RULES].sort(
  (a, b) =>
    SEVERITIES.indexOf(a.meta.severity) - SEVERITIES.indexOf(b.meta.severity) ||
    (a.meta.id < b.meta.id ? -1 : 1),
);

/** Opens the rule book, at a rule where one is named. Made from the rules themselves: there is no other text of them. */
export const openRuleBook = (rule?: string): Promise<null> =>
  ask<null>((done) => <RuleBook at={rule} done={() => done(null)} />, { wide: true });

function RuleBook({ at, done }: { at: string | undefined; done: () => void }) {
  const [wanted, setWanted] = useState('');
  const [id, setId] = useState(at);
  const words = wanted.trim().toLowerCase();
  const listed = SORTED.filter(({ meta }) =>
    `${meta.id} ${meta.summary} ${meta.why} ${meta.source}`.toLowerCase().includes(words),
  );
  const shown = SORTED.find((r) => r.meta.id === id) ?? listed[0];
  return (
    <DialogFrame title={`Rule book: ${RULES.length} rules`} buttons={<Button onClick={done}>Close</Button>}>
      <div className="rule-book">
        <nav aria-label="Rules">
          <input
            className="input"
            type="search"
            aria-label="Search rules"
            placeholder="Words or rule"
            autoFocus
            value={wanted}
            onChange={(e) => {
              setWanted(e.target.value);
              setId(undefined);
            }}
          />
          <ul className="rule-list">
            {listed.map(({ meta }) => (
              <li key={meta.id}>
                <button
                  type="button"
                  aria-current={meta.id === shown?.meta.id ? 'true' : undefined}
                  onClick={() => setId(meta.id)}
                >
                  <SeverityMark kind={meta.severity} size={12} label={MARK_WORDS[meta.severity]} />
                  <span className="mono">{meta.id}</span>
                </button>
              </li>
            ))}
          </ul>
        </nav>
        {shown ? <RulePage key={shown.meta.id} rule={shown} /> : <p>No rule has these words.</p>}
      </div>
    </DialogFrame>
  );
}

function RulePage({ rule }: { rule: AnyRule }) {
  const { meta, scope } = rule;
  const { good, bad, unknown } = rule.examples();
  const tally = useApp((s) => s.check)
    .tally()
    .get(meta.id);
  return (
    <article className="rule-page" aria-label={`Rule ${meta.id}`}>
      <h3>{meta.summary}</h3>
      <p className="second">
        <span className="mono">{meta.id}</span>, revision {meta.revision} · {meta.severity} · asked about each{' '}
        {scope}
      </p>
      <section>
        <h4>Why it matters</h4>
        <p>{meta.why}</p>
      </section>
      <section>
        <h4>Source</h4>
        <p>{meta.source}</p>
      </section>
      <section>
        <h4>In this project</h4>
        <p>
          {tally
            ? `passed ${tally.pass} times, failed ${tally.fail}, could not verify ${tally.cannotVerify}`
            : 'not asked'}
        </p>
      </section>
      <Examples title="Passes" examples={good} />
      <Examples title="Fails" examples={bad} />
      <Examples title="Cannot verify" examples={unknown} />
    </article>
  );
}

function Examples({
  title,
  examples,
}: {
  title: string;
  examples: readonly { readonly name: string; readonly expect?: readonly string[] }[];
}) {
  if (examples.length === 0) return null;
  return (
    <section>
      <h4>{title}</h4>
      <ul>
        {examples.map((e) => (
          <li key={e.name}>
            {e.name}
            {e.expect?.length ? <span className="second"> · finding at {e.expect.join('; ')}</span> : null}
          </li>
        ))}
      </ul>
    </section>
  );
}
