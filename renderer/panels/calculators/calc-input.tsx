import type { z } from 'zod';
import { awgAreaMm2 } from '@latchwork/core/calc/awg';
import { valueText } from '@latchwork/core/calc/calc-report';
import { fieldMeta } from '@latchwork/core/calc/calculation';
import { choiceWords } from '@latchwork/core/calc/choice-words';
import { defaultOf, inputKind, isOptional, type InputKind } from '@latchwork/core/calc/input-kind';
import { readQuantity, shownNumber } from '@latchwork/core/calc/quantity-text';
import { parseWireSize } from '@latchwork/core/model/wire-size';
import { FieldShell } from '../../ui/field';
import { unitText } from '../../ui/unit-text';

export interface CalcInputProps {
  readonly name: string;
  readonly schema: z.ZodType;
  readonly text: string;
  readonly problem: string | undefined;
  readonly type: (text: string) => void;
}

/** One input of a calculation, made from its schema. Every key press counts. */
export function CalcInput({ name, schema, text, problem, type }: CalcInputProps) {
  const { label, unit } = fieldMeta(schema);
  const kind = inputKind(schema);
  return (
    <FieldShell label={label} name={name} problem={problem} hint={hintOf(kind, text, unit)}>
      {({ id, describedBy }) => (
        <div className="input-row">
          <ValueControl
            id={id}
            schema={schema}
            text={text}
            type={type}
            describedBy={describedBy}
            invalid={problem !== undefined}
          />
          {unit ? <span className="calc-unit second">{unitText(unit)}</span> : null}
        </div>
      )}
    </FieldShell>
  );
}

export interface ValueControlProps {
  readonly id?: string;
  readonly schema: z.ZodType;
  readonly text: string;
  readonly type: (text: string) => void;
  readonly describedBy?: string | undefined;
  readonly invalid: boolean;
  readonly label?: string;
  /** Of a column: its schema alone does not say it. */
  readonly needed?: boolean;
}

/** The control alone: in the form with a label beside it, in a table under the head of its column. */
export function ValueControl({
  id,
  schema,
  text,
  type,
  describedBy,
  invalid,
  label,
  needed = !isOptional(schema),
}: ValueControlProps) {
  const kind = inputKind(schema);
  const shared = {
    id,
    value: text,
    'aria-label': label,
    'aria-describedby': describedBy,
    'aria-invalid': invalid || undefined,
  };
  const choices = choicesOf(kind);
  if (!choices)
    return (
      <input
        {...shared}
        className="input mono"
        type="text"
        placeholder={placeholderOf(schema, kind, needed)}
        onChange={(e) => type(e.target.value)}
      />
    );
  return (
    <select {...shared} className="input" onChange={(e) => type(e.target.value)}>
      <option value="">{emptyChoice(schema)}</option>
      {choices.map((c) => (
        <option key={c} value={c}>
          {choiceWords(c)}
        </option>
      ))}
    </select>
  );
}

const choicesOf = (kind: InputKind): readonly string[] | null =>
  kind.kind === 'choice' ? kind.choices : kind.kind === 'yes-no' ? ['yes', 'no'] : null;

function emptyChoice(schema: z.ZodType): string {
  if (!isOptional(schema)) return 'choose …';
  const preset = defaultOf(schema);
  return preset === undefined ? 'none' : `${choiceWords(valueText(preset))} (by default)`;
}

const EXAMPLES: Partial<Record<InputKind['kind'], string>> = {
  'wire-size': '22 AWG or 0.35 mm2',
  numbers: '1.5, 0.9 or 7 x 1.5',
};

function placeholderOf(schema: z.ZodType, kind: InputKind, needed: boolean): string {
  const preset = defaultOf(schema);
  if (preset !== undefined) return valueText(preset);
  return EXAMPLES[kind.kind] ?? (needed ? 'needed' : 'not given');
}

/** What a typed unit comes to: a gauge in mm2, an inch in mm. */
function hintOf(kind: InputKind, text: string, unit: string): string | undefined {
  if (kind.kind === 'wire-size') {
    const size = parseWireSize(text);
    if (!size.ok || size.value.system !== 'awg') return undefined;
    return `${shownNumber(awgAreaMm2(size.value.gauge))} mm² where solid`;
  }
  if (kind.kind !== 'number' || !/[a-zµΩ°"']/i.test(text) || text.endsWith(` ${unit}`)) return undefined;
  const read = readQuantity(text, unit);
  return read.ok ? `${shownNumber(read.value)} ${unitText(unit)}` : undefined;
}
