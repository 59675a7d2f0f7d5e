import { Option } from 'commander';
import { AID_NOT_AUTHORITY } from '@latchwork/core/exports/cautions';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { withBaseline } from '@latchwork/core/exports/document-head';
import { type Result, ok, problem } from '@latchwork/core/base/result';
import { type DocumentInput, DocumentOptions, type Exporter } from '@latchwork/core/exports/exporter';
import type { Table } from '@latchwork/core/exports/table';
import { must } from '@latchwork/core/base/assert-never';
import { baselineOf } from '@latchwork/core/model/baseline';
import { DOCUMENT_FORMATS, type DocumentFormat, documentBytes } from '../../services/document-bytes';
import { paperBytes } from '../../services/paper-bytes';
import { bundledPlaces } from '../../services/places';
import { type CliCommand } from '../command';
import { CLEAN, COULD_NOT_RUN } from '../io';
import { dayOf, dayOption } from './shared/day-option';
import { checkProject, openProject } from './shared/open-project';
import { readCatalogues } from './shared/read-catalogues';
import { writeOutput } from './shared/write-output';

/** Writes one document of a project. */
export const exportCommand: CliCommand = {
  name: 'export',
  summary: 'Write a document of a project to a file.',
  describe: (command) =>
    void command
      .argument('<file>', 'project (.latchwork)')
      .addOption(
        new Option('--document <id>', 'which document')
          .choices(EXPORTERS.map((e) => e.id))
          .makeOptionMandatory(),
      )
      .addOption(
        new Option(
          '--format <format>',
          'file format; PDF where it is made as pages, XML where a standard has it',
        )
          .choices([...DOCUMENT_FORMATS, 'pdf', 'xml'])
          .makeOptionMandatory(),
      )
      .requiredOption('--out <path>', 'file to write; a file of that name is replaced')
      .addOption(dayOption())
      .option('--catalogue <files...>', 'catalogues to hold the records of the project against (JSON or CSV)')
      .option('--quantity <n>', 'harnesses of the order; the build quantities of the project unless said'),
  async run([file], options, io) {
    const stop = (reason: string): typeof COULD_NOT_RUN => {
      io.err(`${reason}\n`);
      return COULD_NOT_RUN;
    };
    const exporter = must(
      EXPORTERS.find((e) => e.id === options['document']),
      'document',
    );
    const asked = askedQuantity(exporter, options['quantity'] as string | undefined);
    if (!asked.ok) return stop(asked.problem);
    const project = await openProject(file as string);
    if (!project.ok) return stop(project.problem);
    const catalogueFiles = (options['catalogue'] as string[] | undefined) ?? [];
    const catalogues = await readCatalogues(catalogueFiles);
    if (catalogues.problems.length > 0) return stop(catalogues.problems.join('\n'));
    const result = checkProject(project.value, catalogues.parts);
    const date = dayOf(options, io);
    const input = { harness: result.harness, check: result, date, options: asked.value };
    const table = withBaseline(exporter.table(input), baselineOf(project.value));
    const format = options['format'] as DocumentFormat | 'pdf' | 'xml';
    const bytes = await bytesOf(exporter, input, table, format, bundledPlaces(io.root).fontsFolder);
    if (!bytes.ok) return stop(bytes.problem);
    const out = options['out'] as string;
    const refusal = await writeOutput(out, bytes.value, [file as string, ...catalogueFiles]);
    if (refusal !== null) return stop(refusal);
    io.err(`${exporter.title}, ${table.rows.length} rows, written to ${out}.\n${AID_NOT_AUTHORITY}\n`);
    return CLEAN;
  },
};

async function bytesOf(
  exporter: Exporter,
  input: DocumentInput,
  table: Table,
  format: DocumentFormat | 'pdf' | 'xml',
  fontsFolder: string,
): Promise<Result<Uint8Array, string>> {
  if (format === 'pdf') return pdfOf(exporter, input, fontsFolder);
  if (format !== 'xml') return ok(await documentBytes(table, format));
  if (!exporter.xml) return problem(`${exporter.title} is not made as XML.`);
  const text = exporter.xml.text(input);
  return text.ok ? ok(Buffer.from(text.value, 'utf8')) : problem(`${exporter.title}: ${text.problem}`);
}

/** A whole number of harnesses, where the document asks for one. */
function askedQuantity(exporter: Exporter, text: string | undefined): Result<DocumentOptions, string> {
  if (text === undefined) return ok({});
  if (!exporter.asks?.includes('quantity'))
    return problem(`${exporter.id} is a document of one harness: it has no --quantity.`);
  const quantity = /^\d+$/.test(text) ? Number(text) : Number.NaN;
  const options = DocumentOptions.safeParse({ quantity });
  return options.success
    ? ok(options.data)
    : problem(`--quantity wants a whole number of harnesses from 1 on, not "${text}".`);
}

function pdfOf(
  exporter: Exporter,
  input: DocumentInput,
  fontsFolder: string,
): Promise<Result<Uint8Array, string>> {
  const paper = exporter.paper?.(input);
  return paper
    ? paperBytes(paper, fontsFolder)
    : Promise.resolve(problem(`${exporter.title} is not made as PDF.`));
}
