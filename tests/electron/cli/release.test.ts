import { createHash } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { parse } from 'csv-parse/sync';
import { releaseStateOf, withoutOwnBaseline } from '@latchwork/core/model/baseline';
import { parseProject } from '@latchwork/core/model/parse';
import type { Project } from '@latchwork/core/model/project';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { demoProject, released } from '../released';
import { bench, type Bench } from './bench';

let b: Bench;
beforeEach(async () => void (b = await bench()));
afterEach(() => b.remove());

async function saved(name: string): Promise<Project> {
  const project = parseProject(await b.read(name));
  if (!project.ok) throw new Error(JSON.stringify(project.problem));
  return project.value;
}

describe('latchwork release', { timeout: 120_000 }, () => {
  it('releases a draft, rewrites its file, and gives the same package of the released file again', async () => {
    const file = await b.save('lamp.latchwork', demoProject('bench-lamp'));
    const { code, out } = await b.run('release', file, '--out', b.path('out'), '--date', '2026-03-01', '--approved-by', 'A. Prover'); // prettier-ignore
    expect(code).toBe(0);
    const project = await saved('lamp.latchwork');
    expect(releaseStateOf(project)).toBe('as-released');
    expect(project.titleBlock).toMatchObject({ approvalPerson: 'A. Prover', dateOfIssue: '2026-03-01' });
    const baseline = createHash('sha256')
      .update(serialiseProject(withoutOwnBaseline(project)))
      .digest('hex');
    expect(out).toContain(`Revision A of Bench lamp harness, baseline ${baseline}.`);
    expect(await b.files()).toEqual(['lamp.latchwork', 'out']);
    const again = await b.run('release', file, '--out', b.path('out'), '--date', '2026-03-01');
    expect([again.code, again.out]).toEqual([0, expect.stringContaining('stand there already, to the byte')]);
    const late = await b.run('release', file, '--out', b.path('out'), '--date', '2026-03-02');
    expect([late.code, late.err]).toEqual([2, expect.stringContaining('was released on 2026-03-01')]);
  });

  it('is blocked by critical findings: they are listed, and nothing is written', async () => {
    const project = demoProject('workshop-faults');
    const file = await b.save('faults.latchwork', project);
    const { code, out } = await b.run('release', file, '--out', b.path('out'));
    expect([code, out]).toEqual([1, expect.stringMatching(/^Not released: \d+ critical findings are open/)]);
    expect(out).toContain('[net-conflict], fail:');
    expect(await b.files()).toEqual(['faults.latchwork']);
    expect(await b.read('faults.latchwork')).toBe(serialiseProject(project));
  });

  it('could not run: without a number, on a release changed by hand, on a file that is none', async () => {
    const lamp = demoProject('bench-lamp');
    const nameless = await b.save('nameless.latchwork', { ...lamp, titleBlock: { ...lamp.titleBlock, identificationNumber: '' } }); // prettier-ignore
    const altered = await b.save('altered.latchwork', { ...released(lamp), notes: ['mine'] });
    for (const [file, reason] of [
      [nameless, 'no identification number'],
      [altered, 'it is not what was released'],
      [b.path('nowhere'), 'does not exist'],
    ] as const) {
      const { code, err } = await b.run('release', file, '--out', b.path('out'));
      expect([code, err]).toEqual([2, expect.stringContaining(reason)]);
    }
    expect(await b.files()).toEqual(['altered.latchwork', 'nameless.latchwork']);
  });
});

describe('latchwork compare', { timeout: 60_000 }, () => {
  const lamp = demoProject('bench-lamp');
  const changed: Project = {
    ...lamp,
    wires: lamp.wires.map((w, i) => (i === 0 ? { ...w, colour: { base: 'VT' } } : w)),
  };

  it('ends with 0 where nothing differs, with 1 where something does, and says what', async () => {
    const [one, two, three] = [await b.save('a', lamp), await b.save('b', lamp), await b.save('c', changed)];
    expect(await b.run('compare', one, two)).toMatchObject({
      code: 0,
      out: expect.stringContaining('Nothing differs.'),
    });
    const { code, out } = await b.run('compare', one, three);
    expect(code).toBe(1);
    expect(out).toMatch(/Wires: 1 changed\n {2}~ wire W1, colour, base: \w+ → VT/);
    expect(out).toContain('~ Connection table, 1 row changed');
  });

  it('says the same as JSON, CSV and as a change note in PDF', async () => {
    const [one, three] = [await b.save('a', lamp), await b.save('c', changed)];
    const json = await b.run('compare', one, three, '--json', '--quantity', '10');
    const answer = JSON.parse(json.out);
    expect(answer).toMatchObject({
      format: 'latchwork-compare',
      formatVersion: 1,
      same: false,
      quantity: 10,
    });
    const csv = await b.run('compare', one, three, '--format', 'csv', '--out', b.path('x.csv'));
    expect(csv.code).toBe(1);
    const rows = parse(await b.read('x.csv'), { columns: true }) as Record<string, string>[];
    expect(rows).toHaveLength(answer.changes.length);
    expect((await b.run('compare', one, three, '--format', 'pdf', '--out', b.path('x.pdf'))).code).toBe(1);
    expect((await b.bytes('x.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
    expect((await b.run('compare', one, three, '--format', 'csv', '--out', one)).code).toBe(2);
  });

  it('refuses projects of different ids unless told, and quantities that are none', async () => {
    const [one, other] = [await b.save('a', lamp), await b.save('o', demoProject('weather-station'))];
    expect(await b.run('compare', one, other)).toMatchObject({ code: 2, err: expect.stringContaining('different projects') }); // prettier-ignore
    expect((await b.run('compare', one, other, '--other-project', '--json')).code).toBe(1);
    expect((await b.run('compare', one, one, '--quantity', 'ten')).code).toBe(2);
    expect((await b.run('compare', one, one, '--format', 'pdf')).code).toBe(2);
  });
});
