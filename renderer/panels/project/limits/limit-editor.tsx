import { choiceWords } from '@latchwork/core/calc/choice-words';
import type { Limit, LimitSet } from '@latchwork/core/model/limit-set';
import { LIMIT_SETS } from '@latchwork/core/model/limit-sets/index';
import { Button } from '../../../ui/button';
import { CheckField } from '../../../ui/check-field';
import { ChoiceField } from '../../../ui/choice-field';
import { NumberField } from '../../../ui/number-field';
import { TextField, needed } from '../../../ui/text-field';
import { unitText } from '../../../ui/unit-text';
import { TABLES } from '../limit-tables';
import { saidOf, saysSame, takeLine, withLimit, withTable, wordsOf, type LimitLine } from './limits-draft';

interface EditorProps {
  readonly line: LimitLine;
  readonly draft: LimitSet;
  readonly current: LimitSet;
  readonly change: (draft: LimitSet) => void;
}

/** One limit of the draft: value, where it comes from, and what the other sets say. */
export function LimitEditor({ line, draft, current, change }: EditorProps) {
  return (
    <section className="limits-edit" aria-label={`Limit: ${wordsOf(line.id)}`}>
      <h3>{wordsOf(line.id)}</h3>
      <p className="second">{line.about}</p>
      {line.kind === 'table' ? (
        <ChoiceField
          label="Table"
          value={draft.tables?.find((t) => t.id === line.id)?.table ?? ''}
          choices={[
            { value: '', text: 'not chosen: cannot verify' },
            ...TABLES[line.id].map((value) => ({ value, text: choiceWords(value) })),
          ]}
          choose={(table) => change(withTable(draft, line.id, table === '' ? null : table))}
        />
      ) : (
        <ValueFields line={line} draft={draft} change={change} />
      )}
      <Others line={line} draft={draft} current={current} change={change} />
    </section>
  );
}

const TYPED = { source: 'typed in this project', verified: false } as const;

function ValueFields({
  line,
  draft,
  change,
}: Omit<EditorProps, 'current' | 'line'> & { line: Extract<LimitLine, { kind: 'limit' }> }) {
  const limit = draft.limits.find((l) => l.id === line.id);
  const set = (next: Limit): null => (change(withLimit(draft, next)), null);
  return (
    <>
      <NumberField
        label="Value"
        unit={unitText(limit?.unit ?? line.unit)}
        value={limit?.value}
        placeholder="not set: cannot verify"
        // A value of another origin than before: the old source no longer speaks for it.
        commit={(value) =>
          value === null
            ? limit
              ? 'A limit needs a value.'
              : null
            : set({ id: line.id, unit: limit?.unit ?? line.unit, value, ...TYPED })
        }
      />
      {limit ? (
        <>
          <TextField
            label="Source"
            stack
            multiline
            value={limit.source}
            commit={needed('A source', (source) => set({ ...limit, source, verified: false }))}
          />
          <TextField
            label="Edition"
            value={limit.edition ?? ''}
            placeholder="none stated"
            commit={(edition) => {
              const { edition: _, ...bare } = limit;
              return set(edition === '' ? bare : { ...bare, edition });
            }}
          />
          <CheckField
            label="I have seen this value in its source"
            checked={limit.verified}
            choose={(verified) => void set({ ...limit, verified })}
          />
        </>
      ) : null}
    </>
  );
}

/** What the project and the shipped sets say, each to be taken with its source. */
function Others({ line, draft, current, change }: EditorProps) {
  const sets = [{ name: 'The project', set: current }, ...LIMIT_SETS.map((set) => ({ name: set.name, set }))];
  return (
    <ul className="limits-others" aria-label="What other sets say">
      {sets.map(({ name, set }) => {
        const said = saidOf(set, line);
        return (
          <li key={name}>
            <span className="second">{name}</span>
            <span className="mono">
              {said
                ? `${line.kind === 'table' ? choiceWords(said.value) : said.value} ${unitText(said.unit)}`
                : 'not set'}
            </span>
            {said && !saysSame(draft, set, line) ? (
              <Button onClick={() => change(takeLine(draft, set, line))}>
                Take<span className="visually-hidden"> what {name} says</span>
              </Button>
            ) : (
              <span className="second">{said ? 'as in the draft' : ''}</span>
            )}
          </li>
        );
      })}
    </ul>
  );
}
