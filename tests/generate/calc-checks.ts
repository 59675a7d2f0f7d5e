import { electricalChecks } from '../core/calc/published/electrical-checks';
import { geometryChecks } from '../core/calc/published/geometry-checks';
import { relativeDeviation, type PublishedCheck } from '../core/calc/published/check';

/** Two significant figures, without an exponent. */
const percent = (share: number): string =>
  `${Number((100 * share).toPrecision(2))
    .toFixed(6)
    .replace(/\.?0+$/, '')} %`;

function allowedText(c: PublishedCheck): string {
  if ('relative' in c.allowed && c.allowed.relative < 1e-8) return 'equal';
  if ('relative' in c.allowed) return `+/- ${percent(c.allowed.relative)}`;
  if ('absolute' in c.allowed)
    return c.allowed.absolute < 1e-8 ? 'equal' : `+/- ${c.allowed.absolute} ${c.unit}`.trim();
  return `0 to ${percent(c.allowed.below)} below the maximum`;
}

function line(checks: readonly PublishedCheck[]): string {
  const first = checks[0]!;
  const worst = checks.reduce((a, b) =>
    Math.abs(relativeDeviation(b)) > Math.abs(relativeDeviation(a)) ? b : a,
  );
  const deviation = relativeDeviation(worst);
  const worstText =
    Math.abs(deviation) < 5e-7
      ? 'none'
      : `${percent(deviation)} (${worst.what}: ${Number(worst.computed.toPrecision(5))} against ${Number(worst.published.toPrecision(5))} ${worst.unit})`;
  const sources = [...new Set(checks.map((c) => c.source))].join('; ');
  const cells = [
    first.calculation,
    first.group,
    sources,
    first.confidence,
    `${checks.length}`,
    worstText.replace(' )', ')'),
    [...new Set(checks.map(allowedText))].join('; '),
  ];
  return `| ${cells.join(' | ')} |`;
}

const HEAD = `# Calculations against published numbers

Written by \`npm run generate\` from the very list that the tests in \`tests/core/calc/published\` check; change nothing by hand.
"Seen" says how far the published number itself can be trusted: \`published\` (seen in the source named), \`derived\` (worked out
from a formula or by hand), \`memory\` (recalled; the program shows it as not verified).
`;

/** The calculations against published numbers as Markdown: a line per table or example, with the largest deviation. */
export function calcChecksText(notes: string): string {
  const groups = new Map<string, PublishedCheck[]>();
  for (const check of [...electricalChecks, ...geometryChecks]) {
    const key = `${check.calculation}|${check.group}`;
    groups.set(key, [...(groups.get(key) ?? []), check]);
  }
  return [
    HEAD,
    '| calculation | check | source | seen | numbers | largest deviation | allowed in the test |',
    '| --- | --- | --- | --- | --- | --- | --- |',
    ...[...groups.values()].map(line),
    '',
    notes,
  ].join('\n');
}
