import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { tiny } from '@latchwork/core/model/tiny';
import { RULES } from '@latchwork/core/rules/index';
import { bench, type Bench } from './bench';

let b: Bench;
beforeAll(async () => {
  b = await bench();
});
afterAll(() => b.remove());

describe('latchwork rules', () => {
  it('lists every rule on a line with severity and summary', async () => {
    const { code, out } = await b.run('rules');
    expect(code).toBe(0);
    const lines = out.trimEnd().split('\n');
    expect(lines.map((l) => l.split(/\s+/)[0])).toEqual(RULES.map((r) => r.meta.id));
  });

  it('shows one rule with reason, source and the names of its examples', async () => {
    const { meta, examples } = RULES.find((r) => r.meta.id === 'contact-kind')!;
    const { code, out } = await b.run('rules', 'contact-kind');
    expect(code).toBe(0);
    for (const text of [meta.summary, meta.why, meta.source, ...examples().bad.map((e) => e.name)])
      expect(out).toContain(text);
  });

  it('gives the same as JSON', async () => {
    const { out } = await b.run('rules', '--json');
    const answer = JSON.parse(out);
    expect(answer).toMatchObject({ format: 'latchwork-rules', formatVersion: 1 });
    expect(answer.rules).toHaveLength(RULES.length);
    expect(Object.keys(answer.rules[0])).toEqual(['id', 'revision', 'severity', 'scope', 'summary', 'why', 'source', 'examples']); // prettier-ignore
  });

  it('ends with 2 on a rule that there is not', async () => {
    expect(await b.run('rules', 'poetry')).toMatchObject({
      code: 2,
      out: '',
      err: expect.stringContaining('poetry'),
    });
  });
});

describe('latchwork info', () => {
  it('shows the title block and what the file holds', async () => {
    const file = await b.save('tiny.latchwork', tiny());
    const { code, out } = await b.run('info', file);
    expect(code).toBe(0);
    expect(out).toMatch(/^Title +Tiny example$/m);
    expect(out).toContain('4 connectors, 4 contacts, 2 wires');
    const json = JSON.parse((await b.run('info', file, '--json')).out);
    expect(json).toMatchObject({ format: 'latchwork-info', formatVersion: 1, title: 'Tiny example', counts: { wires: 2, cables: 0 }, catalogues: ['Example parts 1'] }); // prettier-ignore
  });

  it('ends with 2 where there is no file', async () => {
    expect((await b.run('info', b.path('none'))).code).toBe(2);
  });
});
