import { RULES } from '@latchwork/core/rules/index';
import { type AnyRule } from '@latchwork/core/rules/rule';
import { type CliCommand } from '../command';
import { CLEAN, COULD_NOT_RUN } from '../io';

/** The rule book, or one rule with its reasons. */
export const rules: CliCommand = {
  name: 'rules',
  summary: 'List the rules, or show one with its reasons, source and examples.',
  describe: (command) =>
    void command.argument('[id]', 'rule to show').option('--json', 'rules as JSON of a stable shape'),
  async run([id], options, io) {
    const shown = id === undefined ? RULES : RULES.filter((r) => r.meta.id === id);
    if (shown.length === 0) {
      io.err(`There is no rule "${String(id)}". "latchwork rules" lists them.\n`);
      return COULD_NOT_RUN;
    }
    if (options['json']) io.out(`${JSON.stringify(rulesJson(shown), null, 2)}\n`);
    else if (id === undefined) io.out(listText(shown));
    else io.out(shown.map(ruleText).join('\n'));
    return CLEAN;
  },
};

function listText(list: readonly AnyRule[]): string {
  const width = Math.max(...list.map((r) => r.meta.id.length));
  return list
    .map(({ meta }) => `${meta.id.padEnd(width)}  ${meta.severity.padEnd(8)}  ${meta.summary}\n`)
    .join('');
}

function ruleText({ meta, scope, examples }: AnyRule): string {
  const { good, bad, unknown } = examples();
  const named = (title: string, list: readonly { name: string; expect?: readonly string[] }[]): string[] =>
    list.map((e) => `${title}: ${e.name}${e.expect?.length ? ` (finding at ${e.expect.join('; ')})` : ''}`);
  return [
    `${meta.id}, revision ${meta.revision}: ${meta.severity}, asked about each ${scope}`,
    '',
    meta.summary,
    `Why: ${meta.why}`,
    `Source: ${meta.source}`,
    '',
    ...named('Passes', good),
    ...named('Fails', bad),
    ...named('Cannot verify', unknown),
    '',
  ].join('\n');
}

const rulesJson = (list: readonly AnyRule[]) => ({
  format: 'latchwork-rules',
  formatVersion: 1,
  rules: list.map(({ meta, scope, examples }) => {
    const { good, bad, unknown } = examples();
    const named = (list: readonly { name: string; expect?: readonly string[] }[]) =>
      list.map((e) => ({ name: e.name, expect: e.expect ?? [] }));
    return {
      id: meta.id,
      revision: meta.revision,
      severity: meta.severity,
      scope,
      summary: meta.summary,
      why: meta.why,
      source: meta.source,
      examples: { pass: named(good), fail: named(bad), cannotVerify: named(unknown) },
    };
  }),
});
