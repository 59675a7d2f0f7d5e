import { AMPACITY_TABLES } from '@latchwork/core/calc/ampacity-base';
import { MaterialGroup } from '@latchwork/core/calc/creepage';
import { PULL_TABLES } from '@latchwork/core/calc/data/pull-force';
import { LimitSet } from '@latchwork/core/model/limit-set';
import { LIMIT_SETS } from '@latchwork/core/model/limit-sets/index';
import { LIMIT_IDS, TABLE_IDS } from '@latchwork/core/model/limit-sets/limit-ids';
import { newProject } from '@latchwork/core/model/new-project';
import { countingIds } from '@latchwork/core/model/ids';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

describe.each(LIMIT_SETS.map((set) => [set.name, set] as const))('the shipped set %s', (_name, set) => {
  it('can be embedded in a project', () => {
    expect(LimitSet.safeParse(set).error).toBeUndefined();
  });

  it('gives a value in the right unit, with its source, for every limit that is documented, and no other', () => {
    expect(set.limits.map((l) => l.id)).toEqual(Object.keys(LIMIT_IDS));
    for (const limit of set.limits) {
      expect(limit.unit, limit.id).toBe(LIMIT_IDS[limit.id as keyof typeof LIMIT_IDS].unit);
      expect(limit.source, limit.id).not.toBe('');
      expect(limit.value, limit.id).toBeGreaterThanOrEqual(0);
    }
  });

  it('chooses tables that exist', () => {
    expect(set.tables?.map((t) => t.id).sort()).toEqual(Object.keys(TABLE_IDS).sort());
    const known: Record<keyof typeof TABLE_IDS, readonly string[]> = {
      'pull-force': Object.keys(PULL_TABLES),
      ampacity: AMPACITY_TABLES,
      'material-group': MaterialGroup.options,
    };
    for (const { id, table } of set.tables ?? [])
      expect(known[id as keyof typeof known], id).toContain(table);
  });

  it('claims to have seen nothing that is common practice', () => {
    for (const l of set.limits)
      if (l.source.startsWith('common practice')) expect(l.verified, l.id).toBe(false);
  });
});

it('documents every limit in a sentence', () => {
  for (const { about } of Object.values(LIMIT_IDS)) expect(about).toMatch(/^[A-Z].*\.$/);
});

it('has no limit that no rule asks for', () => {
  const texts = ['rules', 'rules/shared', 'derive'].flatMap((name) => {
    const folder = new URL(`../../../../core/${name}/`, import.meta.url);
    const files = readdirSync(folder).filter((f) => f.endsWith('.ts'));
    return files.map((f) => readFileSync(new URL(f, folder), 'utf8'));
  });
  const ids = [...Object.keys(LIMIT_IDS), ...Object.keys(TABLE_IDS)];
  expect(ids.filter((id) => !texts.some((text) => text.includes(`'${id}'`)))).toEqual([]);
});

// FAA AC 43.13-1B 11-158: 12 inches, exactly 304.8 mm; NASA-STD-8739.4 table 11-2: 20 and 100 mm.
it('carries the published numbers of the aerospace set', () => {
  const aerospace = LIMIT_SETS.find((s) => s.name === 'Aerospace')!;
  const value = (id: keyof typeof LIMIT_IDS) => aerospace.limits.find((l) => l.id === id)?.value;
  expect(value('tie-spacing-max')).toBeCloseTo(12 * 25.4, 9);
  expect([value('untwist-max-quiet'), value('untwist-max')]).toEqual([20, 100]);
  expect(value('bend-radius-factor')).toBe(10);
});

it('leaves an empty project without findings, whichever set it uses', () => {
  const id = countingIds(1);
  const project = newProject({ id: id(), revisionId: id() });
  for (const limitSet of LIMIT_SETS)
    expect(checkHarness(deriveHarness({ ...project, limitSet }), RULES).findings).toEqual([]);
});
