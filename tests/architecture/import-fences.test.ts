import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type ICruiseOptions, type ICruiseResult, type IFlattenedRuleSet, cruise } from 'dependency-cruiser';
import { afterAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const { forbidden, options } = createRequire(import.meta.url)('./dependency-cruiser.config.cjs') as {
  forbidden: IFlattenedRuleSet['forbidden'];
  options: ICruiseOptions;
};

const made: string[] = [];
afterAll(() => made.forEach((folder) => rmSync(folder, { recursive: true })));

/** Rules broken by a small tree of our shape: file name to its text. */
async function rulesBroken(files: Record<string, string>): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), 'latchwork-fences-'));
  made.push(folder);
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'), 'junction');
  writeFileSync(join(folder, 'package.json'), '{"dependencies":{"zod":"1","react":"1","immer":"1"}}');
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  const tops = [...new Set(Object.keys(files).map((name) => name.split('/')[0]!))];
  const { output } = await cruise(tops, {
    ...options,
    baseDir: folder,
    validate: true,
    ruleSet: { forbidden },
  });
  return [...new Set((output as ICruiseResult).summary.violations.map(({ rule }) => rule.name))].sort();
}

const imports = (path: string) => `import { x } from '${path}';\nexport const y = x;\n`;
const x = 'export const x = 1;\n';

const bad: [rule: string, files: Record<string, string>][] = [
  [
    'no-cycles',
    {
      'core/base/a.ts': "import { b } from './b';\nexport const a = () => b;\n",
      'core/base/b.ts': "import { a } from './a';\nexport const b = () => a;\n",
    },
  ],
  [
    'no-cycles',
    {
      'core/base/a.ts': "import { type B } from './b';\nexport type A = B | 1;\n",
      'core/base/b.ts': "import { type A } from './a';\nexport type B = A | 2;\n",
    },
  ],
  [
    'no-rule-to-rule',
    { 'core/rules/contact-kind.ts': imports('./contact-series'), 'core/rules/contact-series.ts': x },
  ],
  [
    'no-rule-from-machinery',
    { 'core/rules/rule.ts': imports('./contact-series'), 'core/rules/contact-series.ts': x },
  ],
  ['core-is-lowest', { 'core/base/a.ts': imports('../../renderer/app/x'), 'renderer/app/x.ts': x }],
  ['core-packages', { 'core/base/a.ts': imports('react') }],
  ['core-packages', { 'core/base/a.ts': imports('node:fs') }],
  ['core-base-layer', { 'core/base/a.ts': imports('../model/x'), 'core/model/x.ts': x }],
  ['core-model-layer', { 'core/model/a.ts': imports('../rules/x'), 'core/rules/x.ts': x }],
  ['core-rules-layer', { 'core/rules/a.ts': imports('../commands/x'), 'core/commands/x.ts': x }],
  ['core-rules-layer', { 'core/rules/a.ts': imports('../exports/x'), 'core/exports/x.ts': x }],
  ['core-commands-layer', { 'core/commands/a.ts': imports('../rules/x'), 'core/rules/x.ts': x }],
  ['core-exports-layer', { 'core/exports/a.ts': imports('../commands/x'), 'core/commands/x.ts': x }],
  [
    'window-has-no-machine',
    { 'renderer/app/a.ts': imports('../../electron/services/x'), 'electron/services/x.ts': x },
  ],
  ['window-has-no-node', { 'renderer/app/a.ts': imports('node:fs') }],
  ['shells-do-not-draw', { 'electron/host/a.ts': imports('../../renderer/app/x'), 'renderer/app/x.ts': x }],
  ['services-know-no-shell', { 'electron/services/a.ts': imports('../host/x'), 'electron/host/x.ts': x }],
  ['preload-is-tiny', { 'electron/preload/a.ts': imports('../services/x'), 'electron/services/x.ts': x }],
  ['no-orphans', { 'core/base/a.ts': x }],
  ['resolvable', { 'core/base/a.ts': imports('./nowhere') }],
];

describe('the import fences', () => {
  it.each(bad)('%s bites', async (rule, files) => {
    expect(await rulesBroken(files)).toContain(rule);
  });

  it('lets a rule stand on its machinery, the model and the harness', async () => {
    const broken = await rulesBroken({
      'core/rules/contact-kind.ts':
        "import { x } from './rule';\nimport { x as m } from '../model/x';\nimport { x as d } from '../derive/x';\nexport const y = [x, m, d];\n",
      'core/rules/rule.ts': x,
      'core/model/x.ts': x,
      'core/derive/x.ts': x,
    });
    expect(broken).toEqual([]);
  });

  it('has a reason beside every rule', () => {
    for (const rule of forbidden ?? []) expect(rule.comment?.length, rule.name).toBeGreaterThan(20);
  });
});
