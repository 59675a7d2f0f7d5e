import { type Result, ok, problem } from '@latchwork/core/base/result';
import { calcProblemText } from '@latchwork/core/calc/calc-problem';
import { calcReport, reportText } from '@latchwork/core/calc/calc-report';
import { type AnyCalculation } from '@latchwork/core/calc/calculation';
import { CALCULATIONS, calculationById } from '@latchwork/core/calc/index';
import { readInputs } from '@latchwork/core/calc/read-inputs';
import { AID_NOT_AUTHORITY } from '@latchwork/core/exports/cautions';
import { type CliCommand } from '../command';
import { CLEAN, COULD_NOT_RUN } from '../io';
import { calcListJson, calcListText, calcQuestionText, calcReportJson } from './shared/calc-text';

/** One question without a project. Without a name it lists the calculations, without values their inputs. */
export const calc: CliCommand = {
  name: 'calc',
  summary: 'Compute one value with its working; list the calculations, or the inputs of one.',
  describe: (command) =>
    void command
      .argument('[name]', 'calculation')
      .argument('[values...]', 'inputs as key=value, with a unit where one is meant ("22 AWG", "12 in")')
      .option('--json', 'the same as JSON of a stable shape'),
  async run([name, values], options, io) {
    const stop = (reason: string): typeof COULD_NOT_RUN => {
      io.err(`${reason}\n`);
      return COULD_NOT_RUN;
    };
    if (name === undefined) {
      io.out(options['json'] ? calcListJson(CALCULATIONS) : calcListText());
      return CLEAN;
    }
    const entry = calculationById(name as string);
    if (!entry) return stop(`There is no calculation "${String(name)}". "latchwork calc" lists them.`);
    if ((values as string[]).length === 0) {
      io.out(options['json'] ? calcListJson([entry]) : calcQuestionText(entry));
      return CLEAN;
    }
    const texts = textsOf(values as string[]);
    if (!texts.ok) return stop(texts.problem);
    const input = readInputs(entry, texts.value);
    const report = input.ok ? calcReport(entry, input.value) : input;
    if (!report.ok) return stop(`${calcProblemText(report.problem)}\n${hintOf(entry)}`);
    io.out(options['json'] ? calcReportJson(report.value) : reportText(entry, report.value));
    io.err(`${AID_NOT_AUTHORITY}\n`);
    return CLEAN;
  },
};

const hintOf = (entry: AnyCalculation): string => `"latchwork calc ${entry.id}" lists its inputs.`;

/** "key=value" each, every key once. */
function textsOf(values: readonly string[]): Result<Record<string, string>, string> {
  const texts = new Map<string, string>();
  for (const value of values) {
    const at = value.indexOf('=');
    if (at < 1) return problem(`"${value}" is no input; write key=value.`);
    const key = value.slice(0, at).trim();
    if (texts.has(key)) return problem(`${key} is given twice.`);
    texts.set(key, value.slice(at + 1));
  }
  return ok(Object.fromEntries(texts));
}
