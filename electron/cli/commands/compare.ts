import { Option } from 'commander';
import { AID_NOT_AUTHORITY } from '@latchwork/core/exports/cautions';
import { changeNote } from '@latchwork/core/exports/compare/change-note';
import {
  areaSummary,
  compareProjects,
  type Comparison,
  isSame,
  notComparable,
} from '@latchwork/core/exports/compare/compare-projects';
import { compareTable, stateText } from '@latchwork/core/exports/compare/compare-table';
import { withBaseline } from '@latchwork/core/exports/document-head';
import type { DocumentInput } from '@latchwork/core/exports/exporter';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { baselineOf } from '@latchwork/core/model/baseline';
import type { Project } from '@latchwork/core/model/project';
import { checkProject } from '../../services/check-project';
import { type DocumentFormat, documentBytes } from '../../services/document-bytes';
import { paperBytes } from '../../services/paper-bytes';
import { bundledPlaces } from '../../services/places';
import { type CliCommand } from '../command';
import { CLEAN, COULD_NOT_RUN, FOUND } from '../io';
import { dayOf, dayOption } from './shared/day-option';
import { openProject } from './shared/open-project';
import { writeOutput } from './shared/write-output';

/** Tells what differs between two states of a project; as a change note on paper where a PDF is asked for. */
export const compare: CliCommand = {
  name: 'compare',
  summary: 'Tell what differs between two states of a project; exit 1 when something does.',
  describe: (command) =>
    void command
      .argument('<before>', 'project (.latchwork), the earlier state')
      .argument('<after>', 'project (.latchwork), the later state')
      .option('--json', 'the same as JSON of a stable shape')
      .addOption(
        new Option('--format <format>', 'with --out: rows as CSV or XLSX, or the change note as PDF').choices(
          ['csv', 'xlsx', 'pdf'],
        ),
      )
      .option('--out <path>', 'file to write; a file of that name is replaced')
      .option('--quantity <n>', 'harnesses of the order whose quantities are compared')
      .option('--other-project', 'compare although they are different projects')
      .addOption(dayOption()),
  async run([a, b], options, io) {
    const stop = (reason: string): typeof COULD_NOT_RUN => {
      io.err(`${reason}\n`);
      return COULD_NOT_RUN;
    };
    const [before, after] = await Promise.all([openProject(a as string), openProject(b as string)]);
    if (!before.ok) return stop(before.problem);
    if (!after.ok) return stop(after.problem);
    const { quantity: asked, format, out } = options as Record<string, string | undefined>;
    if ((format === undefined) !== (out === undefined)) return stop('--format and --out go together.');
    if (asked !== undefined && !/^[1-9]\d{0,8}$/.test(asked))
      return stop(`--quantity wants a whole number of harnesses from 1 on, not "${asked}".`);
    const apart = notComparable(before.value, after.value);
    if (apart !== null && !options['otherProject'])
      return stop(`${apart} Say --other-project to compare them all the same.`);
    const date = dayOf(options, io);
    const comparison = compareProjects(
      inputOf(before.value, date),
      inputOf(after.value, date),
      EXPORTERS,
      asked === undefined ? undefined : Number(asked),
    );
    const same = isSame(before.value, after.value);
    if (format !== undefined && out !== undefined) {
      const bytes = await bytesOf(comparison, format, bundledPlaces(io.root).fontsFolder);
      if (typeof bytes === 'string') return stop(bytes);
      const refusal = await writeOutput(out, bytes, [a as string, b as string]);
      if (refusal !== null) return stop(refusal);
      io.err(`${comparison.rows.length} changes, written to ${out}.\n${AID_NOT_AUTHORITY}\n`);
    }
    if (options['json']) io.out(jsonOf(comparison, same));
    else if (format === undefined) io.out(textOf(comparison, same));
    return same ? CLEAN : FOUND;
  },
};

function inputOf(project: Project, date: string): DocumentInput {
  const check = checkProject(project);
  return { harness: check.harness, check, date };
}

async function bytesOf(
  comparison: Comparison,
  format: string,
  fontsFolder: string,
): Promise<Uint8Array | string> {
  if (format !== 'pdf') {
    const baseline = baselineOf(comparison.after.harness.project);
    return documentBytes(withBaseline(compareTable(comparison), baseline), format as DocumentFormat);
  }
  const pdf = await paperBytes(changeNote(comparison), fontsFolder);
  return pdf.ok ? pdf.value : pdf.problem;
}

const MARKS = { added: '+', removed: '-', changed: '~' } as const;

function textOf(comparison: Comparison, same: boolean): string {
  const { before, after, rows } = comparison;
  const head = [
    `From revision ${stateText(before.harness.project)}`,
    `To revision   ${stateText(after.harness.project)}`,
  ];
  if (same) return `${[...head, 'Nothing differs.', AID_NOT_AUTHORITY].join('\n')}\n`;
  const lines = areaSummary(comparison).flatMap(([area, counts]) => [
    '',
    `${area}: ${counts}`,
    ...rows
      .filter((r) => r.area === area)
      .map((r) => {
        const values = r.before || r.after ? `: ${r.before || 'none'} → ${r.after || 'none'}` : '';
        return `  ${MARKS[r.what]} ${[r.subject, r.field].filter(Boolean).join(', ')}${values}`;
      }),
  ]);
  return `${[...head, ...lines, '', AID_NOT_AUTHORITY].join('\n')}\n`;
}

/** `latchwork compare --json`. New fields may come while `formatVersion` stays. */
function jsonOf(comparison: Comparison, same: boolean): string {
  const state = ({ harness: { project } }: DocumentInput) => ({
    id: project.id,
    title: project.titleBlock.title,
    identificationNumber: project.titleBlock.identificationNumber,
    revision: project.revisions.at(-1)?.revision ?? null,
    status: project.revisions.at(-1)?.status ?? null,
    baseline: baselineOf(project),
  });
  return `${JSON.stringify(
    {
      format: 'latchwork-compare',
      formatVersion: 1,
      caution: AID_NOT_AUTHORITY,
      same,
      before: state(comparison.before),
      after: state(comparison.after),
      date: comparison.after.date,
      quantity: comparison.quantity,
      changes: comparison.rows.map((r) => ({
        area: r.area,
        change: r.what,
        subject: r.subject,
        field: r.field || null,
        before: r.before || null,
        after: r.after || null,
        objects: [...r.objects, ...r.gone],
      })),
      documents: comparison.documents.map(({ exporter, added, removed, changed, head }) => ({
        document: exporter.id,
        added,
        removed,
        changed,
        head,
      })),
    },
    null,
    2,
  )}\n`;
}
