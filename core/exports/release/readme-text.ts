import type { ManifestGap } from './manifest';
import type { ReleaseFacts } from './release-facts';

/** What a person reads first in a package, as plain text; `projectFile` is its name. */
export const readmeText = (
  facts: ReleaseFacts,
  projectFile: string,
  leftOut: readonly ManifestGap[],
): string =>
  [
    `${facts.title}`,
    '',
    `Identification number  ${facts.identificationNumber}`,
    `Revision               ${facts.revision} (released ${facts.date})`,
    `Baseline (SHA-256)     ${facts.baseline}`,
    `Limit set              ${facts.limitSet}`,
    '',
    'Every file of this package was made from one project and names the same baseline.',
    `The baseline is the SHA-256 of ${projectFile}. Papers that bear another one do not belong here.`,
    '',
    'papers/     pages to print; print drawings at 100 % and hold a ruler to their scale bars',
    'tables/     the same documents as rows, for spreadsheets and other programs',
    'drawings/   drawings at true size, for other programs and machines',
    'exchange/   files of open standards',
    'manifest.json lists every file with its SHA-256, the findings and the decisions. "sha256sum -c SHA256SUMS" checks them.',
    '',
    'Cautions',
    ...facts.cautions.map((text) => `- ${text}`),
    '',
    ...(leftOut.length > 0
      ? ['Left out', ...leftOut.map(({ what, reason }) => `- ${what}: ${reason}`), '']
      : []),
  ].join('\n');
