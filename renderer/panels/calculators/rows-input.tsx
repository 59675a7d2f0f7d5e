import { Plus, X } from 'lucide-react';
import type { z } from 'zod';
import { fieldMeta } from '@latchwork/core/calc/calculation';
import { listColumns } from '@latchwork/core/calc/list-columns';
import type { RowTexts } from '@latchwork/core/calc/read-inputs';
import { Button } from '../../ui/button';
import { unitText } from '../../ui/unit-text';
import { ValueControl } from './calc-input';

export interface RowsInputProps {
  readonly name: string;
  readonly schema: z.ZodType;
  readonly rows: readonly RowTexts[];
  /** By "key", "key.row.column". */
  readonly problems: ReadonlyMap<string, string>;
  readonly type: (rows: readonly RowTexts[]) => void;
}

/** An input that is a list of things: a table with a line for each; an empty line does not count. */
export function RowsInput({ name, schema, rows, problems, type }: RowsInputProps) {
  const { label } = fieldMeta(schema);
  const columns = listColumns(schema);
  const shown = rows.length > 0 ? rows : [{}];
  const set = (at: number, column: string, text: string): void =>
    type(shown.map((row, i) => (i === at ? { ...row, [column]: text } : row)));
  const wrong = [...problems].filter(([path]) => path === name || path.startsWith(`${name}.`));
  return (
    <fieldset className="calc-rows" data-field={name}>
      <legend>{label}</legend>
      <div className="calc-rows-scroll">
        <table className="mini-table">
          <thead>
            <tr>
              {columns.map((c) => (
                <th key={c.path.join('.')} scope="col">
                  {c.label}
                  {c.unit ? ` ${unitText(c.unit)}` : ''}
                </th>
              ))}
              <td />
            </tr>
          </thead>
          <tbody>
            {shown.map((row, i) => (
              <tr key={i}>
                {columns.map((c) => {
                  const column = c.path.join('.');
                  return (
                    <td key={column}>
                      <ValueControl
                        schema={c.schema}
                        text={row[column] ?? ''}
                        label={`${c.label} ${i + 1}`}
                        needed={c.needed}
                        invalid={problems.has(`${name}.${i}.${column}`)}
                        type={(text) => set(i, column, text)}
                      />
                    </td>
                  );
                })}
                <td>
                  <Button
                    look="icon"
                    aria-label={`Take line ${i + 1} out`}
                    disabled={rows.length === 0}
                    onClick={() => type(shown.filter((_, k) => k !== i))}
                  >
                    <X size={13} aria-hidden />
                  </Button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {wrong.map(([path, reason]) => (
        <p key={path} className="field-problem" role="alert">
          {placeText(path, columns)}
          {reason}
        </p>
      ))}
      <Button look="link" onClick={() => type([...shown, {}])}>
        <Plus size={13} aria-hidden /> Add a line
      </Button>
    </fieldset>
  );
}

/** "Line 2, current: " before what is wrong there. */
function placeText(path: string, columns: ReturnType<typeof listColumns>): string {
  const [, row, ...column] = path.split('.');
  if (row === undefined) return '';
  const label = columns.find((c) => c.path.join('.') === column.join('.'))?.label;
  return `Line ${Number(row) + 1}${label ? `, ${label.toLowerCase()}` : ''}: `;
}
