import { useDeferredValue, useMemo } from 'react';
import type { AnyCalculation } from '@latchwork/core/calc/calculation';
import { inputFields } from '@latchwork/core/calc/read-inputs';
import { inputKind, isOptional } from '@latchwork/core/calc/input-kind';
import { Button } from '../../ui/button';
import { askCalculation, type Asked, type FormTexts } from './ask-calculation';
import { CalcAnswer } from './calc-answer';
import { CalcInput } from './calc-input';
import { clearForm, typeInto, useCalculators } from './calculators-store';
import { RowsInput } from './rows-input';

const EMPTY: FormTexts = {};

/** The form of one calculation, and beside it the answer to what stands in it. */
export function CalcForm({ entry }: { entry: AnyCalculation }) {
  const texts = useCalculators((s) => s.texts[entry.id]) ?? EMPTY;
  // A large bundle takes a tenth of a second: typing does not wait for it.
  const settled = useDeferredValue(texts);
  const asked = useMemo(() => askCalculation(entry, settled), [entry, settled]);
  return (
    <>
      <form
        className="calc-form"
        aria-label={entry.title}
        autoComplete="off"
        onSubmit={(e) => e.preventDefault()}
      >
        <div className="calc-head">
          <h3>{entry.title}</h3>
          <p className="second">{entry.about}</p>
        </div>
        <Fields entry={entry} texts={texts} asked={asked} />
        <div className="card-actions">
          <Button look="plain" disabled={texts === EMPTY} onClick={() => clearForm(entry.id)}>
            Clear
          </Button>
        </div>
      </form>
      <CalcAnswer entry={entry} asked={asked} />
    </>
  );
}

/** What is needed first, then what may be left out. */
function Fields({ entry, texts, asked }: { entry: AnyCalculation; texts: FormTexts; asked: Asked }) {
  const fields = inputFields(entry);
  const needed = fields.filter(([, schema]) => !isOptional(schema));
  const optional = fields.filter(([, schema]) => isOptional(schema));
  const show = ([key, schema]: (typeof fields)[number]) => {
    const text = texts[key];
    const type = (value: Parameters<typeof typeInto>[2]): void => typeInto(entry.id, key, value);
    return inputKind(schema).kind === 'rows' ? (
      <RowsInput
        key={key}
        name={key}
        schema={schema}
        rows={typeof text === 'object' ? text : []}
        problems={asked.atFields}
        type={type}
      />
    ) : (
      <CalcInput
        key={key}
        name={key}
        schema={schema}
        text={typeof text === 'string' ? text : ''}
        problem={asked.atFields.get(key)}
        type={type}
      />
    );
  };
  return (
    <>
      {needed.map(show)}
      {optional.length > 0 && needed.length > 0 ? <p className="calc-optional">May be left out</p> : null}
      {optional.map(show)}
    </>
  );
}
