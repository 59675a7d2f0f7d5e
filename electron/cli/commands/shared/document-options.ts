import { type Command, Option } from 'commander';
import { type Result, ok, problem } from '@latchwork/core/base/result';
import { DocumentOptions, type Exporter } from '@latchwork/core/exports/exporter';
import { LabelCode } from '@latchwork/core/exports/labels/label-code';
import { LabelSheet } from '@latchwork/core/exports/labels/templates';
import { SheetSize } from '@latchwork/core/exports/paper/sheet';

/** What may be asked of a document, as options of a command. */
export const documentOptions = (command: Command): Command =>
  command
    .option('--quantity <n>', 'harnesses of the order; the build quantities of the project unless said')
    .option('--supplier <name>', 'whom a request goes to: only what this supplier has offered')
    .addOption(
      new Option('--sheet-size <size>', 'sheets that a large drawing is cut into').choices(SheetSize.options),
    )
    .addOption(
      new Option(
        '--label-sheet <sheet>',
        'sheets that labels are printed on: a paper, or one of its templates',
      ).choices(LabelSheet.options),
    )
    .addOption(
      new Option('--label-code <code>', 'codes on labels, qr unless said').choices(LabelCode.options),
    )
    .option('--label-start <n>', 'position of the first free label on the first sheet, row by row from 1');

/** How each option is called, and what a document is that has no use for it. */
const ASKED: Readonly<Record<keyof DocumentOptions, { readonly flag: string; readonly without: string }>> = {
  supplier: { flag: '--supplier', without: 'goes to no supplier' },
  sheetSize: { flag: '--sheet-size', without: 'is not cut into sheets' },
  quantity: { flag: '--quantity', without: 'is a document of one harness' },
  labelSheet: { flag: '--label-sheet', without: 'is not printed on label sheets' },
  labelCode: { flag: '--label-code', without: 'carries no labels' },
  labelStart: { flag: '--label-start', without: 'is not printed on label sheets' },
};

/** Whole numbers from 1 on, and what they count. */
const NUMBERS = { quantity: 'harnesses', labelStart: 'positions' } as const;

/** The options as the document reads them; one that it does not ask for is refused, for it would change nothing. */
export function readDocumentOptions(
  exporter: Exporter,
  given: Readonly<Record<string, unknown>>,
): Result<DocumentOptions, string> {
  const read: Record<string, unknown> = {};
  for (const key of Object.keys(ASKED) as (keyof DocumentOptions)[]) {
    const value = given[key];
    if (value === undefined) continue;
    const { flag, without } = ASKED[key];
    if (!exporter.asks?.includes(key)) return problem(`${exporter.id} ${without}: it has no ${flag}.`);
    if (key === 'quantity' || key === 'labelStart') {
      if (typeof value !== 'string' || !/^0*[1-9]\d*$/.test(value) || !Number.isSafeInteger(Number(value)))
        return problem(`${flag} wants a whole number of ${NUMBERS[key]} from 1 on, not "${String(value)}".`);
      read[key] = Number(value);
    } else read[key] = value;
  }
  const options = DocumentOptions.safeParse(read);
  if (options.success) return ok(options.data);
  const key = options.error.issues[0]?.path[0] as keyof DocumentOptions | undefined;
  return problem(
    key ? `${ASKED[key].flag} cannot be "${String(given[key])}".` : 'The options cannot be read.',
  );
}
