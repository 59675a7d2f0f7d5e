import { checkAlternate } from '@latchwork/core/decisions/check-alternate';
import { dispatch } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { countingIds } from '@latchwork/core/model/ids';
import type { Part } from '@latchwork/core/model/parts/part';
import type { Project } from '@latchwork/core/model/project';
import { referenceIssues } from '@latchwork/core/model/references';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import { describe, expect, it } from 'vitest';
import { generateProject } from '../../generate/harness-generator';

const project = generateProject({ wires: 60 });
const contact = project.parts.find((p) => p.kind === 'contact' && project.contacts.some((c) => c.part === p.id)) as Part; // prettier-ignore
const by = {
  ...contact,
  id: `${contact.id.slice(0, -4)}fade`,
  partNumber: 'OTHER',
  insulationMaxMm: 0.1,
} as Part;
const exchange = (part: string, other: Part) =>
  dispatch(startHistory(project), { id: 'part.exchange', args: { part, by: other } }, { newId: countingIds(), catalogue: [] }); // prettier-ignore
const keysOf = (p: Project): string[] => checkHarness(deriveHarness(p), RULES).findings.map((f) => f.key);

describe('exchanging a part', () => {
  const done = exchange(contact.id, by);
  if (!done.ok) throw new Error(done.problem.reason);
  const after = done.value.project;

  it('puts the other record wherever the part was, and nowhere else', () => {
    expect(after.contacts.filter((c) => c.part === contact.id)).toEqual([]);
    expect(after.contacts.filter((c) => c.part === by.id)).toHaveLength(
      project.contacts.filter((c) => c.part === contact.id).length,
    );
    expect(after.wires).toBe(project.wires);
    expect(referenceIssues(after)).toEqual([]);
  });

  it('brings the findings that trying the alternate foretold', () => {
    const check = checkHarness(deriveHarness(project), RULES);
    const foretold = checkAlternate(check, contact.id, by);
    const [before, now] = [new Set(keysOf(project)), keysOf(after)];
    const inCavities = (key: string): boolean => !key.includes('| part ');
    expect(now.filter((k) => !before.has(k) && inCavities(k)).sort()).toEqual(
      [...foretold.added, ...foretold.cannotVerify].map((f) => f.key).filter(inCavities).sort(), // prettier-ignore
    );
    expect(foretold.added.length).toBeGreaterThan(0);
  });

  it('is refused for another kind, itself, and what is nowhere used', () => {
    const wire = project.parts.find((p) => p.kind === 'wire') as Part;
    const unused = project.parts.find((p) => p.kind === 'tool' || p.kind === 'label');
    expect(exchange(contact.id, wire)).toMatchObject({ ok: false });
    expect(exchange(contact.id, contact)).toMatchObject({ ok: false });
    if (unused) expect(exchange(unused.id, { ...unused, id: by.id })).toMatchObject({ ok: false });
    expect(exchange(by.id, contact)).toMatchObject({ ok: false });
  });
});
