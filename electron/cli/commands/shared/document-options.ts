import { type Command, Option } from 'commander';
import { type Result, ok, problem } from '@latchwork/core/base/result';
import { DocumentOptions, type Exporter } from '@latchwork/core/exports/exporter';
import { SheetSize } from '@latchwork/core/exports/paper/sheet';

/** What may be asked of a document, as options of a command. */
export const documentOptions = (command: Command): Command =>
  command
    .option('--quantity <n>', 'harnesses of the order; the build quantities of the project unless said')
    .option('--supplier <name>', 'whom a request goes to: only what this supplier has offered')
    .addOption(
      new Option('--sheet-size <size>', 'sheets that a large drawing is cut into').choices(SheetSize.options),
    );

/** The options as the document reads them; one that it does not ask for is refused, for it would change nothing. */
export function readDocumentOptions(
  exporter: Exporter,
  given: Readonly<Record<string, unknown>>,
): Result<DocumentOptions, string> {
  const { quantity: quantityText, sheetSize, supplier } = given;
  if (supplier !== undefined && !exporter.asks?.includes('supplier'))
    return problem(`${exporter.id} goes to no supplier: it has no --supplier.`);
  if (sheetSize !== undefined && !exporter.asks?.includes('sheetSize'))
    return problem(`${exporter.id} is not cut into sheets: it has no --sheet-size.`);
  if (quantityText !== undefined && !exporter.asks?.includes('quantity'))
    return problem(`${exporter.id} is a document of one harness: it has no --quantity.`);
  const quantity =
    typeof quantityText === 'string' && /^\d+$/.test(quantityText) ? Number(quantityText) : Number.NaN;
  const options = DocumentOptions.safeParse({
    ...(quantityText === undefined ? {} : { quantity }),
    ...(sheetSize === undefined ? {} : { sheetSize }),
    ...(supplier === undefined ? {} : { supplier }),
  });
  return options.success
    ? ok(options.data)
    : problem(`--quantity wants a whole number of harnesses from 1 on, not "${String(quantityText)}".`);
}
