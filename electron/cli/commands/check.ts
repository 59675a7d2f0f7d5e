import { Option } from 'commander';
import { isAccepted } from '@latchwork/core/decisions/standing';
import { standingText } from '@latchwork/core/decisions/standing-words';
import { AID_NOT_AUTHORITY } from '@latchwork/core/exports/cautions';
import { type ToldFinding, toldFindings } from '@latchwork/core/exports/findings/told-findings';
import { evidenceText, needText, RESULT_WORDS } from '@latchwork/core/exports/findings/finding-words';
import { type CheckResult } from '@latchwork/core/rules/check-harness';
import { SEVERITIES, type Severity } from '@latchwork/core/rules/finding';
import { checkProject } from '../../services/check-project';
import { type CliCommand } from '../command';
import { CLEAN, COULD_NOT_RUN, FOUND } from '../io';
import { checkJson } from './shared/check-json';
import { dayOption, dayOf } from './shared/day-option';
import { openProject } from './shared/open-project';
import { readCatalogues } from './shared/read-catalogues';

/**
 * Asks every rule about a project. Cannot-verify counts like a failure: a blank is not a pass. What a decision on record
 * covers on the day is told and does not count for --fail-on.
 */
export const check: CliCommand = {
  name: 'check',
  summary: 'Check a project against its limits and list the findings.',
  describe: (command) =>
    void command
      .argument('<file>', 'project (.latchwork)')
      .addOption(
        new Option(
          '--fail-on <severity>',
          'exit 1 on findings of this severity or graver that no decision on record covers',
        )
          .choices(SEVERITIES)
          .default('major'),
      )
      .addOption(dayOption())
      .option('--catalogue <files...>', 'catalogues to hold the records of the project against (JSON or CSV)')
      .option('--json', 'findings as JSON of a stable shape'),
  async run([file], options, io) {
    const failOn = options['failOn'] as Severity;
    const project = await openProject(file as string);
    if (!project.ok) {
      io.err(`${project.problem}\n`);
      return COULD_NOT_RUN;
    }
    const catalogues = await readCatalogues((options['catalogue'] as string[] | undefined) ?? []);
    if (catalogues.problems.length > 0) {
      for (const problem of catalogues.problems) io.err(`${problem}\n`);
      return COULD_NOT_RUN;
    }
    const result = checkProject(project.value, catalogues.parts);
    const date = dayOf(options, io);
    const told = toldFindings(project.value, result.findings, date);
    io.out(options['json'] ? checkJson(result, told, failOn, date) : checkText(result, told, date));
    const found = told.some(
      (t) => SEVERITIES.indexOf(t.finding.severity) <= SEVERITIES.indexOf(failOn) && !isAccepted(t.standing),
    );
    return found ? FOUND : CLEAN;
  },
};

function checkText(result: CheckResult, told: readonly ToldFinding[], date: string): string {
  const { titleBlock, revisions, limitSet } = result.harness.project;
  const revision = revisions.at(-1)?.revision ?? 'not given';
  const number = titleBlock.identificationNumber ? `, ${titleBlock.identificationNumber}` : '';
  const tally = [...result.tally().values()];
  const passed = tally.reduce((n, t) => n + t.pass, 0);
  const accepted = told.filter((t) => isAccepted(t.standing)).length;
  const counts = SEVERITIES.map((s) => `${told.filter((t) => t.finding.severity === s).length} ${s}`);
  return [
    `${titleBlock.title}${number}, revision ${revision}. Limit set ${limitSet.name}, revision ${limitSet.revision}.`,
    ...told.flatMap(findingLines),
    '',
    `${told.length === 1 ? '1 finding' : `${told.length} findings`}: ${counts.join(', ')}. ${passed} checks passed by ${tally.length} rules.`,
    ...(result.harness.project.decisions.length > 0
      ? [`${accepted} accepted by a decision on record, judged on ${date}.`]
      : []),
    AID_NOT_AUTHORITY,
    '',
  ].join('\n');
}

function findingLines({ finding, where, message, standing }: ToldFinding): string[] {
  return [
    '',
    `${finding.severity}, ${RESULT_WORDS[finding.result]}${finding.open ? ', open point' : ''}: ${where} [${finding.rule}]`,
    `  ${message}`,
    ...(standing?.by ? [`  ${standingText(standing)}`] : []),
    ...finding.evidence.map((e) => `  used: ${evidenceText(e)}`),
    ...finding.needs.map((n) => `  needs: ${needText(n)}`),
    ...(finding.fix ? [`  fix: ${finding.fix.label}`] : []),
  ];
}
