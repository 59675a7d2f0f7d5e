import { boundText, KIND_WORDS } from '../../decisions/standing-words';
import { SEVERITIES } from '../../rules/finding';
import type { DocumentInput } from '../exporter';
import { RESULT_WORDS } from '../findings/finding-words';
import { toldFindings } from '../findings/told-findings';
import type { ReleaseFacts } from './release-facts';

/** Raised when a field changes its meaning or goes away; new fields do not raise it. */
export const RELEASE_FORMAT_VERSION = 1;

export interface ManifestFile {
  readonly path: string;
  readonly bytes: number;
  readonly sha256: string;
}

export interface ManifestGap {
  readonly what: string;
  readonly reason: string;
}

/** What a release package holds and what it was released on, as JSON text; the same input gives the same text. */
export function manifestText(
  facts: ReleaseFacts,
  { harness: { project }, check, date }: DocumentInput,
  files: readonly ManifestFile[],
  leftOut: readonly ManifestGap[],
): string {
  const told = toldFindings(project, check.findings, date);
  const count = (severity: string, result: string, accepted: boolean): number =>
    told.filter(
      ({ finding: f, standing: s }) =>
        f.severity === severity && f.result === result && (s.state === 'accepted') === accepted,
    ).length;
  const manifest = {
    format: 'latchwork-release',
    formatVersion: RELEASE_FORMAT_VERSION,
    title: facts.title,
    identificationNumber: facts.identificationNumber,
    revision: facts.revision,
    baseline: facts.baseline,
    limitSet: facts.limitSet,
    date: facts.date,
    cautions: facts.cautions,
    titleBlock: project.titleBlock,
    revisions: project.revisions.map(({ revision, date: of, description, status }) => ({
      revision,
      date: of ?? null,
      description,
      status,
    })),
    findings: {
      judgedOn: date,
      summary: Object.fromEntries(
        SEVERITIES.map((s) => [
          s,
          {
            fail: count(s, 'fail', false),
            cannotVerify: count(s, 'cannot-verify', false),
            accepted: count(s, 'fail', true) + count(s, 'cannot-verify', true),
          },
        ]),
      ),
      listed: told.map(({ finding, where, message, standing }) => ({
        key: finding.key,
        rule: finding.rule,
        ruleRevision: finding.ruleRevision,
        severity: finding.severity,
        result: RESULT_WORDS[finding.result],
        where,
        message,
        standing: standing.state,
      })),
    },
    decisions: project.decisions.map((d) => ({
      number: d.number,
      kind: KIND_WORDS[d.kind],
      finding: d.finding,
      rule: d.rule,
      ruleRevision: d.ruleRevision,
      reason: d.reason,
      decidedOn: d.decidedOn,
      holds: boundText(d),
      approvals: d.approvals,
    })),
    files,
    leftOut,
  };
  return `${JSON.stringify(manifest, null, 2)}\n`;
}

/** Sums of files in the form that `sha256sum -c` reads: hash, two blanks, path, line feed. */
export const sumsText = (files: readonly ManifestFile[]): string =>
  files.map((f) => `${f.sha256}  ${f.path}\n`).join('');
