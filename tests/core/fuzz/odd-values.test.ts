import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { parseProject } from '@latchwork/core/model/parse';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import { createRandom } from '../../generate/harness/random';
import { SAMPLE_TEXT } from '../model/sample-file';
import { withOddValue } from './odd-values';

const PROJECTS = Number(process.env['FUZZ_PROJECTS'] ?? 500);
const SEED = Number(process.env['FUZZ_SEED'] ?? 1);
/** Documents are made of every one of so many. */
const DOCUMENTS_EACH = 20;

const texts = [
  serialiseProject(tiny()),
  SAMPLE_TEXT,
  readFileSync('demo-projects/bench-lamp.latchwork', 'utf8'),
];

it(
  `${PROJECTS} projects with odd values of the right shape are derived, checked and documented without a throw`,
  { timeout: 600_000 },
  () => {
    const random = createRandom(SEED);
    let read = 0;
    for (let i = 0; i < PROJECTS; i++) {
      let raw = JSON.parse(texts[i % texts.length] as string);
      for (let n = 1 + (i % 4); n > 0; n--) raw = withOddValue(raw, random);
      const text = JSON.stringify(raw);
      const parsed = parseProject(text);
      if (!parsed.ok) continue;
      read++;
      try {
        const harness = deriveHarness(parsed.value);
        const check = checkHarness(harness, RULES);
        if (i % DOCUMENTS_EACH !== 0) continue;
        const input = { harness, check, date: '2026-03-01' };
        for (const e of EXPORTERS) {
          e.table(input);
          e.paper?.(input);
          e.drawing?.(input);
        }
      } catch (error) {
        throw new Error(`project ${i}: ${text}`, { cause: error });
      }
    }
    expect(read).toBeGreaterThan(PROJECTS / 4);
  },
);
