import { Option } from 'commander';
import { AID_NOT_AUTHORITY } from '@latchwork/core/exports/cautions';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { withBaseline } from '@latchwork/core/exports/document-head';
import { type Result, ok, problem } from '@latchwork/core/base/result';
import type { DocumentInput, Exporter } from '@latchwork/core/exports/exporter';
import { must } from '@latchwork/core/base/assert-never';
import { baselineOf } from '@latchwork/core/model/baseline';
import { DOCUMENT_FORMATS, type DocumentFormat, documentBytes } from '../../services/document-bytes';
import { paperBytes } from '../../services/paper-bytes';
import { bundledPlaces } from '../../services/places';
import { type CliCommand } from '../command';
import { CLEAN, COULD_NOT_RUN } from '../io';
import { dayOf, dayOption } from './shared/day-option';
import { checkProject, openProject } from './shared/open-project';
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
        new Option('--format <format>', 'file format; PDF where the document is made as pages')
          .choices([...DOCUMENT_FORMATS, 'pdf'])
          .makeOptionMandatory(),
      )
      .requiredOption('--out <path>', 'file to write; a file of that name is replaced')
      .addOption(dayOption())
      .option('--quantity <n>', 'build quantity, for documents of an order'),
  async run([file], options, io) {
    const stop = (reason: string): typeof COULD_NOT_RUN => {
      io.err(`${reason}\n`);
      return COULD_NOT_RUN;
    };
    const exporter = must(
      EXPORTERS.find((e) => e.id === options['document']),
      'document',
    );
    if (options['quantity'] !== undefined)
      return stop(`${exporter.id} is a document of one harness: it has no --quantity.`);
    const project = await openProject(file as string);
    if (!project.ok) return stop(project.problem);
    const result = checkProject(project.value);
    const date = dayOf(options, io);
    const input = { harness: result.harness, check: result, date };
    const table = withBaseline(exporter.table(input), baselineOf(project.value));
    const format = options['format'] as DocumentFormat | 'pdf';
    const bytes =
      format === 'pdf'
        ? await pdfOf(exporter, input, bundledPlaces(io.root).fontsFolder)
        : ok(await documentBytes(table, format));
    if (!bytes.ok) return stop(bytes.problem);
    const out = options['out'] as string;
    const refusal = await writeOutput(out, bytes.value, [file as string]);
    if (refusal !== null) return stop(refusal);
    io.err(`${exporter.title}, ${table.rows.length} rows, written to ${out}.\n${AID_NOT_AUTHORITY}\n`);
    return CLEAN;
  },
};

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
