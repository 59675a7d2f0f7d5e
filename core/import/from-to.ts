import { ok, problem, type Result } from '../base/result';
import { asColour, asLength, asNotNegative, asNumber, asPositive, asSize, asText } from './fields';
import type { ImportProblem } from './import-problem';
import { readRows, type FieldSpecs, type Row } from './read-rows';

/** Columns of a from-to CSV: one wire a row. */
export const FROM_TO_COLUMNS = {
  wire: { read: asText },
  signal: { read: asText },
  from: { read: asText, required: true },
  from_cavity: { read: asText },
  to: { read: asText, required: true },
  to_cavity: { read: asText },
  wire_part: { read: asText },
  size: { read: asSize },
  colour: { read: asColour },
  length_mm: { read: asPositive },
  length: { read: asLength },
  current_a: { read: asNotNegative },
  voltage_v: { read: asNumber },
  group: { read: asText },
  note: { read: asText },
} as const satisfies FieldSpecs;

export type FromToRow = Row<typeof FROM_TO_COLUMNS>;

/** Reads the rows and checks what a row can tell by itself and against its neighbours. */
export function readFromTo(
  file: string,
  text: string,
): Result<readonly FromToRow[], readonly ImportProblem[]> {
  const rows = readRows(file, text, FROM_TO_COLUMNS);
  if (!rows.ok) return rows;
  const problems: ImportProblem[] = [];
  const wires = new Map<string, number>();
  const voltages = new Map<string, { voltageV: number; line: number }>();
  for (const row of rows.value) {
    const v = row.values;
    const refuse = (field: keyof typeof FROM_TO_COLUMNS, message: string): void =>
      void problems.push(row.problem(field, message));
    if (v.wire !== undefined) {
      const before = wires.get(v.wire);
      if (before !== undefined) refuse('wire', `wire ${v.wire} stands in line ${before} already`);
      wires.set(v.wire, row.line);
    }
    if (v.length !== undefined && v.length_mm !== undefined)
      refuse('length', 'the length is given twice, here and as length_mm');
    if (v.from === v.to && v.from_cavity === v.to_cavity) refuse('to', 'a wire needs two different ends');
    if (v.signal === undefined) {
      if (v.current_a !== undefined) refuse('current_a', 'a current belongs to a signal, and none is named');
      if (v.voltage_v !== undefined) refuse('voltage_v', 'a voltage belongs to a signal, and none is named');
    } else if (v.voltage_v !== undefined) {
      const known = voltages.get(v.signal);
      if (known && known.voltageV !== v.voltage_v)
        refuse('voltage_v', `${v.signal} has ${known.voltageV} V in line ${known.line}`);
      voltages.set(v.signal, known ?? { voltageV: v.voltage_v, line: row.line });
    }
  }
  return problems.length ? problem(problems) : ok(rows.value);
}
