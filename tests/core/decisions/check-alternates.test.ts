import { checkAlternates, withAlternates } from '@latchwork/core/decisions/check-alternates';
import { rawCheckOf } from '@latchwork/core/decisions/raw-check';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Part } from '@latchwork/core/model/parts/part';
import type { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { Finding } from '@latchwork/core/rules/finding';
import { RULES } from '@latchwork/core/rules/index';
import { addPartLike } from '@latchwork/core/rules/shared/example-parts';
import { describe, expect, it } from 'vitest';

const checked = (project: Project) => checkHarness(deriveHarness(project), RULES);

function found(project: Project, catalogue: readonly Part[] = []): readonly Finding[] {
  const check = checked(project);
  return withAlternates(check, checkAlternates(check, catalogue)).findings.filter(
    (f) => f.rule === 'alternate-checked',
  );
}

const pinWith = (change: object, also: (t: TinyDraft) => void = () => {}): Project =>
  tiny((t) => {
    addPartLike(t, 'contact', 'C-PIN', { partNumber: 'C-PIN-B', ...change });
    t.part('contact', 'C-PIN').alternates = ['C-PIN-B'];
    also(t);
  });

describe('what is said of alternates', () => {
  it('nothing where they stand in', () => expect(found(pinWith({ form: 'loose' }))).toEqual([]));

  it('which checks fail, and where', () => {
    const [finding] = found(pinWith({ insulationMaxMm: 1.1 }));
    expect(finding).toMatchObject({ severity: 'major', result: 'fail' });
    expect(finding?.data['differences']).toMatch(/^would break insulation-range \(\w+\) at X\d:1, X\d:2/);
    expect(finding?.evidence[0]?.source).toBe('C-PIN-B in place of C-PIN');
  });

  it('that a lesser value breaks nothing in this design, lightly', () => {
    const [finding] = found(pinWith({ insulationMaxMm: 1.3 }));
    expect(finding).toMatchObject({ severity: 'minor', result: 'fail' });
    expect(finding?.data['differences']).toMatch(/^breaks nothing here, but is less: insulationMaxMm/);
  });

  it('what its record has to say first, asked for once', () => {
    const project = pinWith({ insulationMaxMm: undefined });
    const [finding] = found(project);
    expect(finding).toMatchObject({ result: 'cannot-verify', open: false });
    const alternate = project.parts.find((p) => p.partNumber === 'C-PIN-B');
    expect(finding?.needs.filter((n) => n.field === 'insulationMaxMm')).toHaveLength(1);
    expect(finding?.needs.find((n) => n.field === 'insulationMaxMm')?.at?.id).toBe(alternate?.id);
  });

  it('which are on record nowhere, as one open point', () => {
    const project = tiny((t) => void (t.part('contact', 'C-PIN').alternates = ['C-X', 'C-Y']));
    const findings = found(project);
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({ result: 'cannot-verify', open: true });
    expect(findings[0]?.needs.map((n) => n.what)).toEqual(['record of C-X', 'record of C-Y']);
  });

  it('the same of a record that only a catalogue has', () => {
    const project = pinWith({ insulationMaxMm: 1.1 });
    const alternate = project.parts.find((p) => p.partNumber === 'C-PIN-B') as Part;
    const without = { ...project, parts: project.parts.filter((p) => p !== alternate) };
    expect(found(without)[0]?.result).toBe('cannot-verify');
    const [finding] = found(without, [alternate]);
    expect(finding?.result).toBe('fail');
    expect(finding?.key).toBe(found(project)[0]?.key);
  });

  it('in the shape and with the keys of any finding', () => {
    const all = [{ insulationMaxMm: 1.1 }, { insulationMaxMm: 1.3 }, { insulationMaxMm: undefined }].flatMap((c) => found(pinWith(c))); // prettier-ignore
    for (const finding of all) expect(Finding.safeParse(finding).success).toBe(true);
    const bare = checked(pinWith({ insulationMaxMm: 1.1 })).findings.filter(
      (f) => f.rule === 'alternate-checked',
    );
    expect(bare.map((f) => f.key)).toEqual([all[0]?.key]);
  });
});

describe('a completed check', () => {
  const check = checked(pinWith({ insulationMaxMm: 1.1 }));
  const completed = withAlternates(check, checkAlternates(check, []));

  it('counts them', () =>
    expect(completed.tally().get('alternate-checked')).toEqual({ pass: 0, fail: 1, cannotVerify: 0 }));

  it('leads back to the check it was made from', () => {
    expect(rawCheckOf(completed)).toBe(check);
    expect(rawCheckOf(withAlternates(completed, checkAlternates(completed, [])))).toBe(check);
  });

  it('says nothing else of anything else', () => {
    const others = (list: readonly Finding[]) => list.filter((f) => f.rule !== 'alternate-checked');
    expect(others(completed.findings)).toEqual(others(check.findings));
  });
});
