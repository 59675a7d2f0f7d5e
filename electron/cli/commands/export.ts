import { Option } from 'commander';
import { AID_NOT_AUTHORITY } from '@latchwork/core/exports/cautions';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { must } from '@latchwork/core/base/assert-never';
import { FileFormat } from '@latchwork/core/exports/file-format';
import { documentFile } from '../../services/document-file';
import { bundledPlaces } from '../../services/places';
import { checkProject } from '../../services/check-project';
import { type CliCommand } from '../command';
import { CLEAN, COULD_NOT_RUN } from '../io';
import { dayOf, dayOption } from './shared/day-option';
import { documentOptions, readDocumentOptions } from './shared/document-options';
import { openProject } from './shared/open-project';
import { readCatalogues } from './shared/read-catalogues';
import { writeOutput } from './shared/write-output';

/** Writes one document of a project. */
export const exportCommand: CliCommand = {
  name: 'export',
  summary: 'Write a document of a project to a file.',
  describe: (command) =>
    void documentOptions(command)
      .argument('<file>', 'project (.latchwork)')
      .addOption(
        new Option('--document <id>', 'which document')
          .choices(EXPORTERS.map((e) => e.id))
          .makeOptionMandatory(),
      )
      .addOption(
        new Option(
          '--format <format>',
          'file format; PDF where it is made as pages, SVG and DXF where it is a drawing, XML where a standard has it',
        )
          .choices(FileFormat.options)
          .makeOptionMandatory(),
      )
      .requiredOption('--out <path>', 'file to write; a file of that name is replaced')
      .addOption(dayOption())
      .option(
        '--catalogue <files...>',
        'catalogues to hold the records of the project against (JSON or CSV)',
      ),
  async run([file], options, io) {
    const stop = (reason: string): typeof COULD_NOT_RUN => {
      io.err(`${reason}\n`);
      return COULD_NOT_RUN;
    };
    const exporter = must(
      EXPORTERS.find((e) => e.id === options['document']),
      'document',
    );
    const asked = readDocumentOptions(exporter, options);
    if (!asked.ok) return stop(asked.problem);
    const project = await openProject(file as string);
    if (!project.ok) return stop(project.problem);
    const catalogueFiles = (options['catalogue'] as string[] | undefined) ?? [];
    const catalogues = await readCatalogues(catalogueFiles);
    if (catalogues.problems.length > 0) return stop(catalogues.problems.join('\n'));
    const result = checkProject(project.value, catalogues.parts);
    const date = dayOf(options, io);
    const input = { harness: result.harness, check: result, date, options: asked.value };
    const format = options['format'] as FileFormat;
    const bytes = await documentFile(exporter, input, format, bundledPlaces(io.root).fontsFolder);
    if (!bytes.ok) return stop(bytes.problem);
    const out = options['out'] as string;
    const refusal = await writeOutput(out, bytes.value, [file as string, ...catalogueFiles]);
    if (refusal !== null) return stop(refusal);
    const { rows } = exporter.table(input);
    io.err(`${exporter.title}, ${rows.length} rows, written to ${out}.\n${AID_NOT_AUTHORITY}\n`);
    return CLEAN;
  },
};
