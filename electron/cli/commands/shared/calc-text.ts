import { type CalcReport, valueText } from '@latchwork/core/calc/calc-report';
import { type AnyCalculation, fieldMeta } from '@latchwork/core/calc/calculation';
import { CALC_GROUPS, calcGroupOf } from '@latchwork/core/calc/groups';
import { calculationById } from '@latchwork/core/calc/index';
import { type InputKind, defaultOf, inputKind, isOptional } from '@latchwork/core/calc/input-kind';
import { listColumns } from '@latchwork/core/calc/list-columns';
import { inputFields } from '@latchwork/core/calc/read-inputs';

const lines = (rows: readonly (readonly [string, string])[]): string[] => {
  const width = Math.max(...rows.map(([first]) => first.length));
  return rows.map(([first, second]) => `  ${first.padEnd(width)}  ${second}`);
};

/** All calculations by subject. */
export const calcListText = (): string =>
  [
    ...CALC_GROUPS.flatMap((group) => [
      group.title,
      ...lines(
        group.ids.flatMap((id) => {
          const entry = calculationById(id);
          return entry ? [[id, entry.title] as const] : [];
        }),
      ),
      '',
    ]),
    '"latchwork calc NAME" lists the inputs of one.',
    '',
  ].join('\n');

const KIND_WORDS = {
  number: '',
  'wire-size': '"22 AWG" or "0.35 mm2"',
  'yes-no': 'yes or no',
  text: 'text',
  numbers: 'list: "1.5, 0.9" or "7 x 1.5"',
  json: 'JSON',
} as const;

function kindText(kind: InputKind, fields: readonly string[]): string {
  if (kind.kind === 'choice') return `one of ${kind.choices.join(', ')}`;
  if (kind.kind === 'rows') return `JSON list of objects with ${fields.join(', ')}`;
  return KIND_WORDS[kind.kind];
}

/** What one calculation asks for. */
export function calcQuestionText(entry: AnyCalculation): string {
  const inputs = inputFields(entry).map(([key, schema]) => {
    const { label, unit } = fieldMeta(schema);
    const columns = listColumns(schema).map((c) => `${c.path.join('.')}${c.unit ? ` (${c.unit})` : ''}`);
    const kind = kindText(inputKind(schema), columns);
    const preset = defaultOf(schema);
    const said = !isOptional(schema)
      ? 'needed'
      : preset === undefined
        ? 'optional'
        : `by default ${valueText(preset)}`;
    return [key, [`${label}${unit ? `, ${unit}` : ''}`, said, kind].filter(Boolean).join('; ')] as const;
  });
  return [
    `${entry.title} (${entry.id})`,
    entry.about,
    '',
    'Inputs',
    ...lines(inputs),
    '',
    'Answers',
    ...Object.values(entry.outputs).map((o) => `  ${o.label}${o.unit ? `, ${o.unit}` : ''}`),
    '',
    ...entry.sources.map((s) => `Source: ${s.title}${s.verified ? '' : ' (not verified)'}`),
    '',
  ].join('\n');
}

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;

/** `latchwork calc [NAME] --json` without values. New fields may come while `formatVersion` stays. */
export const calcListJson = (entries: readonly AnyCalculation[]): string =>
  json({
    format: 'latchwork-calculations',
    formatVersion: 1,
    calculations: entries.map((entry) => ({
      id: entry.id,
      title: entry.title,
      group: calcGroupOf(entry.id),
      about: entry.about,
      inputs: inputFields(entry).map(([key, schema]) => {
        const kind = inputKind(schema);
        return {
          key,
          ...fieldMeta(schema),
          kind: kind.kind,
          needed: !isOptional(schema),
          default: defaultOf(schema) ?? null,
          ...(kind.kind === 'choice' ? { choices: kind.choices } : {}),
          ...(kind.kind === 'rows'
            ? {
                fields: listColumns(schema).map(({ path, unit, needed }) => ({
                  key: path.join('.'),
                  unit,
                  needed,
                })),
              }
            : {}),
        };
      }),
      outputs: Object.entries(entry.outputs).map(([key, meta]) => ({ key, ...meta })),
      sources: entry.sources,
    })),
  });

/** `latchwork calc NAME key=value... --json`. Numbers are given in full; the text form rounds them for reading. */
export const calcReportJson = (report: CalcReport): string =>
  json({ format: 'latchwork-calc', formatVersion: 1, ...report });
