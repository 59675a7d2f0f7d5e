import { afterAll, beforeAll, describe, expect, it, test } from 'vitest';
import { draftDecision } from '@latchwork/core/decisions/draft-decision';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Decision } from '@latchwork/core/model/decision';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import { bench, type Bench } from './bench';

let b: Bench;
beforeAll(async () => {
  b = await bench();
  await b.save('clean.latchwork', tiny());
  // A pin contact in a housing for sockets.
  await b.save(
    'faulty.latchwork',
    tiny((t) => {
      t.project.contacts[0]!.part = t.part('contact', 'C-PIN').id;
    }),
  );
});
afterAll(() => b.remove());

describe('latchwork check', () => {
  it('ends with 0 on a clean project, and still says that it is no authority', async () => {
    const { code, out, err } = await b.run('check', b.path('clean.latchwork'));
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('0 findings: 0 critical, 0 major, 0 minor, 0 note.');
    expect(out).toContain('Checked against the limits entered.');
  });

  it('ends with 1 on a finding and tells where, what, with which values', async () => {
    const { code, out } = await b.run('check', b.path('faulty.latchwork'));
    expect(code).toBe(1);
    expect(out).toMatch(/^major, fail: .*X1:1.* \[contact-kind\]$/m);
    expect(out).toMatch(/^ {2}used: .+ \(.+\)$/m);
  });

  test.each([
    ['critical', 0],
    ['major', 1],
    ['note', 1],
  ])('--fail-on %s ends with %i where the gravest finding is major', async (severity, code) => {
    expect((await b.run('check', b.path('faulty.latchwork'), '--fail-on', severity)).code).toBe(code);
  });

  it('--catalogue holds the records of the project against those of the catalogue', async () => {
    const parts = tiny().parts.map((part) => ({ ...part, massG: 7 }));
    const catalogue = (revision: string): string =>
      JSON.stringify({
        format: 'latchwork-catalogue',
        formatVersion: 1,
        name: 'Example parts',
        revision,
        parts,
      });
    const later = await b.write('later.json', catalogue('2'));
    const same = await b.write('same.json', catalogue('1'));
    const clean = b.path('clean.latchwork');
    const { code, out } = await b.run('check', clean, '--catalogue', later, '--fail-on', 'minor');
    expect(code).toBe(1);
    expect(out).toContain('C-PIN is from revision 1 of Example parts, revision 2 differs in massG');
    expect((await b.run('check', clean, '--catalogue', same, '--fail-on', 'minor')).code).toBe(0);
    const missing = await b.run('check', clean, '--catalogue', b.path('nowhere.json'));
    expect([missing.code, missing.out]).toEqual([2, '']);
    expect(missing.err).toContain('nowhere.json');
  });

  it('tries alternates in the place of their parts, also those that only a catalogue has', async () => {
    const named = await b.save(
      'alternates.latchwork',
      tiny((t) => void (t.part('contact', 'C-PIN').alternates = ['C-PIN-B'])),
    );
    const parts = tiny().parts.flatMap(
      (p) =>
      p.partNumber === 'C-PIN' ? [{ ...p, id: `${p.id.slice(0, -4)}fade`, partNumber: 'C-PIN-B', insulationMaxMm: 1.1 }] : [], // prettier-ignore
    );
    const catalogue = await b.write('alternates.json', JSON.stringify({ format: 'latchwork-catalogue', formatVersion: 1, name: 'Others', revision: '1', parts })); // prettier-ignore
    const without = await b.run('check', named);
    expect(without.code).toBe(1);
    expect(without.out).toContain('Whether C-PIN-B can stand in for C-PIN cannot be verified');
    const { code, out } = await b.run('check', named, '--catalogue', catalogue);
    expect(code).toBe(1);
    expect(out).toMatch(
      /C-PIN-B as alternate of C-PIN: would break insulation-range \(major\) at X\d:1, X\d:2/,
    );
    expect(out).toContain('(C-PIN-B in place of C-PIN)');
  });

  it('--json has the documented shape, on stdout alone, the same each time', async () => {
    const { code, out, err } = await b.run('check', b.path('faulty.latchwork'), '--json');
    expect([code, err]).toEqual([1, '']);
    const answer = JSON.parse(out);
    expect(Object.keys(answer)).toEqual(['format', 'formatVersion', 'caution', 'project', 'limitSet', 'failOn', 'date', 'summary', 'rules', 'accepted', 'findings']); // prettier-ignore
    expect(answer).toMatchObject({
      format: 'latchwork-check',
      formatVersion: 1,
      project: { title: 'Tiny example', identificationNumber: '', revision: 'A' },
      limitSet: { name: 'General', revision: '1' },
      failOn: 'major',
      date: '2026-03-01',
      accepted: 0,
    });
    const finding = answer.findings.find((f: { rule: string }) => f.rule === 'contact-kind');
    expect(Object.keys(finding)).toEqual(['key', 'rule', 'ruleRevision', 'severity', 'result', 'open', 'objects', 'message', 'data', 'evidence', 'needs', 'fix', 'standing', 'decisions']); // prettier-ignore
    expect(finding.objects[0]).toMatchObject({ text: 'X1:1' });
    expect(finding.message).not.toContain('{{');
    expect(answer.rules.find((r: { id: string }) => r.id === 'contact-kind')).toMatchObject({ pass: 3, fail: 1, cannotVerify: 0 }); // prettier-ignore
    const counted = Object.values(answer.summary as Record<string, { fail: number; cannotVerify: number }>).reduce((n, s) => n + s.fail + s.cannotVerify, 0); // prettier-ignore
    expect(counted).toBe(answer.findings.length);
    expect((await b.run('check', b.path('faulty.latchwork'), '--json')).out).toBe(out);
  });

  test.each([
    ['a file that is not there', ['check', 'nowhere.latchwork'], 'nowhere.latchwork: The file or folder does not exist.'],
    ['an unknown severity', ['check', 'clean.latchwork', '--fail-on', 'grave'], 'grave'],
    ['no file', ['check'], "missing required argument 'file'"],
    ['an unknown option', ['check', 'clean.latchwork', '--jsn'], 'unknown option'],
  ])('ends with 2 on %s, with nothing on stdout', async (_, argv, words) => {
    const { code, out, err } = await b.run(...argv.map((a) => (a.endsWith('.latchwork') ? b.path(a) : a)));
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(words);
  }); // prettier-ignore

  test.each([
    ['{', 'This is not readable JSON'],
    ['{"format":"other"}', 'This is not a latchwork-project file'],
    ['{"format":"latchwork-project","formatVersion":99}', 'format version 99'],
    ['{"format":"latchwork-project","formatVersion":1}', 'does not have the shape'],
    [new Uint8Array([0xff, 0xfe, 0x41]), 'not UTF-8'],
  ])('ends with 2 on a file that is no project: %j', async (content, words) => {
    const { code, out, err } = await b.run('check', await b.write('bad.latchwork', content));
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(words);
  });
});

describe('a finding with a decision on record', () => {
  const faulty = tiny((t) => void (t.wire('W1').ends[0].stripLengthMm = 9));
  const found = checkHarness(deriveHarness(faulty), RULES).findings[0]!;
  const permit = (change: Partial<Decision>): Decision => ({
    ...draftDecision(faulty, found, RULES.find((r) => r.meta.id === found.rule)?.meta),
    id: '00000000-0000-4000-8000-0000000d0001',
    number: 'D-1',
    kind: 'deviation-permit',
    reason: 'First lot only',
    requester: 'R. Quester',
    approvals: [{ name: 'A. Prover', role: 'quality', date: '2026-02-01' }],
    decidedOn: '2026-02-01',
    expiresOn: '2026-06-30',
    ...change,
  });
  const saved = (change: Partial<Decision> = {}) =>
    b.save('decided.latchwork', { ...faulty, decisions: [permit(change)] });

  test.each([
    ['before it was decided', '2026-01-31', 1, 'open: deviation permit D-1 is dated 2026-02-01'],
    ['on its last day', '2026-06-30', 0, 'accepted: deviation permit D-1 until 2026-06-30'],
    ['the day after', '2026-07-01', 1, 'expired: deviation permit D-1 expired with 2026-06-30'],
  ])('counts for --fail-on unless the decision covers it: %s', async (_name, day, code, words) => {
    const ran = await b.run('check', await saved(), '--fail-on', 'note', '--date', day);
    expect(ran.code).toBe(code);
    expect(ran.out).toContain(words);
    expect(ran.out).toContain(`${code === 0 ? 1 : 0} accepted by a decision on record, judged on ${day}.`);
  });

  it('goes by the day of the machine where none is named', async () => {
    expect((await b.run('check', await saved({ expiresOn: '2026-02-28' }))).out).toContain('judged on 2026-03-01'); // prettier-ignore
  });

  it('says the same in JSON', async () => {
    const { out } = await b.run('check', await saved(), '--json', '--date', '2026-07-01');
    const answer = JSON.parse(out);
    expect(answer).toMatchObject({ date: '2026-07-01', accepted: 0 });
    expect(answer.findings[0].standing).toEqual({
      state: 'expired',
      text: 'expired: deviation permit D-1 expired with 2026-06-30',
    });
  });

  test.each(['tomorrow', '2026-02-30', '1.3.2026'])('does not take "%s" for a day', async (day) => {
    const { code, out, err } = await b.run('check', await saved(), '--date', day);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('It is not a day');
  });
});
