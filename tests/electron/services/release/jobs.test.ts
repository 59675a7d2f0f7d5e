import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { JobStateAnswer } from '@latchwork/core/bridge/answers';
import type { Request } from '@latchwork/core/bridge/contract';
import { serveCall } from '@latchwork/core/bridge/serve-call';
import { baselineOf } from '@latchwork/core/model/baseline';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { createHandlers, openServices } from '../../../../electron/services/handlers';
import { Jobs } from '../../../../electron/services/jobs';
import { demoProject, released } from '../../released';
import { tempFolder } from '../../temp-folder';

function bench() {
  const folder = tempFolder();
  const places = {
    dataFolder: join(folder, 'data'),
    workFolder: join(folder, 'work'),
    demosFolder: join(process.cwd(), 'demo-projects'),
    cataloguesFolder: join(process.cwd(), 'assets', 'catalogues'),
    fontsFolder: join(process.cwd(), 'assets', 'fonts'),
    windowFolder: join(folder, 'window'),
  };
  mkdirSync(places.workFolder);
  const handlers = createHandlers(openServices(places), {
    host: 'browser', version: '1', dialogs: null, initial: null, openExternal: async () => ({ status: 'here' }),
  }); // prettier-ignore
  /** As the window calls: question and answer parsed. */
  const call = async (channel: string, request: unknown): Promise<unknown> => {
    const answer = await serveCall(handlers, channel, request);
    if (!answer.ok) throw new Error(JSON.stringify(answer.problem));
    return answer.value;
  };
  const start = async (request: Request<'job:start'>): Promise<string> => {
    const answer = (await call('job:start', request)) as { status: string; job: string };
    expect(answer.status).toBe('started');
    return answer.job;
  };
  const stateOf = (job: string) => call('job:state', { job }) as Promise<JobStateAnswer>;
  const ended = async (job: string): Promise<JobStateAnswer> => {
    for (;;) {
      const state = await stateOf(job);
      if (state.status !== 'running') return state;
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
  };
  return { places, call, start, stateOf, ended, work: places.workFolder };
}

const SOME: Extract<Request<'job:start'>, { kind: 'export-all' }>['documents'] = [
  { document: 'parts-list', format: 'csv' },
  { document: 'purchase-list', format: 'csv', options: { quantity: 10 } },
  { document: 'purchase-list', format: 'csv', options: { quantity: 100 } },
  { document: 'vec', format: 'xml' },
  { document: 'cut-list', format: 'pdf' },
];

describe('export-all', { timeout: 60_000 }, () => {
  it('makes the chosen documents in a folder of their own, each time under a free name', async () => {
    const b = bench();
    const project = demoProject('bench-lamp');
    const ask: Request<'job:start'> = {
      kind: 'export-all',
      text: serialiseProject(project),
      date: '2026-03-01',
      documents: SOME,
    };
    const first = await b.ended(await b.start(ask));
    expect(first).toMatchObject({ status: 'made', leftOut: [], stoodAlready: false });
    const folder = join(b.work, 'exports', 'EX-0001-A-documents');
    expect(readdirSync(folder).sort()).toEqual([
      'EX-0001-A-cut-list.pdf',
      'EX-0001-A-parts-list.csv',
      'EX-0001-A-purchase-list-10.csv',
      'EX-0001-A-purchase-list-100.csv',
      'EX-0001-A-vec.vec',
    ]);
    expect(readFileSync(join(folder, 'EX-0001-A-parts-list.csv'), 'utf8')).toContain(baselineOf(project));
    await b.ended(await b.start(ask));
    expect(readdirSync(join(b.work, 'exports')).sort()).toEqual([
      'EX-0001-A-documents',
      'EX-0001-A-documents-2',
    ]);
  });

  it.each<[typeof SOME, string]>([
    [[{ document: 'no-such', format: 'csv' }], 'There is no document "no-such".'],
    [[{ document: 'connection-table', format: 'dxf' }], 'Connection table is not made as DXF.'],
  ])('refuses what it cannot make: %j', async (documents, reason) => {
    const b = bench();
    const text = serialiseProject(demoProject('bench-lamp'));
    const state = await b.ended(await b.start({ kind: 'export-all', text, date: '2026-03-01', documents }));
    expect(state).toEqual({ status: 'failed', reason });
    expect(readdirSync(b.work)).toEqual([]);
  });

  it('names what is wrong with a text that is no project', async () => {
    const b = bench();
    const state = await b.ended(await b.start({ kind: 'release', text: '{"format":' }));
    expect(state).toMatchObject({ status: 'failed' });
    expect(readdirSync(b.work)).toEqual([]);
  });
});

describe('release', { timeout: 60_000 }, () => {
  it('is cancelled between files and leaves nothing behind', async () => {
    const b = bench();
    const job = await b.start({
      kind: 'release',
      text: serialiseProject(released(demoProject('bench-lamp'))),
    });
    for (;;) {
      const state = await b.stateOf(job);
      if (state.status !== 'running') throw new Error(state.status);
      if (state.done >= 3) break;
      await new Promise((resolve) => setTimeout(resolve, 1));
    }
    await b.call('job:cancel', { job });
    expect(await b.ended(job)).toEqual({ status: 'cancelled' });
    expect(readdirSync(b.work)).toEqual([]);
  });

  it('refuses a draft, and a release that was changed by hand', async () => {
    const b = bench();
    const draft = serialiseProject(demoProject('bench-lamp'));
    expect(await b.ended(await b.start({ kind: 'release', text: draft }))).toMatchObject({
      status: 'failed', reason: 'Revision A is a draft. Release it first.',
    }); // prettier-ignore
    const project = released(demoProject('bench-lamp'));
    const altered = serialiseProject({ ...project, notes: [...project.notes, 'Use the blue one.'] });
    expect(await b.ended(await b.start({ kind: 'release', text: altered }))).toMatchObject({
      status: 'failed', reason: expect.stringContaining('it is not what was released'),
    }); // prettier-ignore
    expect(readdirSync(b.work)).toEqual([]);
  });

  it('is blocked by the critical findings of the faulty demo, each named', async () => {
    const b = bench();
    const text = serialiseProject(released(demoProject('workshop-faults')));
    const state = await b.ended(await b.start({ kind: 'release', text }));
    expect(state.status).toBe('blocked');
    if (state.status === 'blocked') expect(state.findings.join('\n')).toMatch(/\[net-conflict\], fail/);
    expect(readdirSync(b.work)).toEqual([]);
  });

  it('makes folder and zip whose project file has the baseline as its hash', async () => {
    const b = bench();
    const project = released(demoProject('bench-lamp'));
    const state = await b.ended(await b.start({ kind: 'release', text: serialiseProject(project) }));
    expect(state).toMatchObject({ status: 'made', stoodAlready: false });
    const releases = join(b.work, 'releases');
    expect(readdirSync(releases).sort()).toEqual(['EX-0001-A', 'EX-0001-A.zip']);
    const file = readFileSync(join(releases, 'EX-0001-A', 'EX-0001-A.latchwork'));
    expect(createHash('sha256').update(file).digest('hex')).toBe(baselineOf(project));
  });
});

describe('jobs', () => {
  const log = { write: () => undefined, text: () => '' } as never;

  it('run two at once and no more', () => {
    const jobs = new Jobs(log);
    const never = () => new Promise<never>(() => undefined);
    expect([jobs.start(never), jobs.start(never)]).toEqual([expect.any(String), expect.any(String)]);
    expect(jobs.start(never)).toBeNull();
  });

  it('tell of a mistake of the program instead of running for ever', async () => {
    const jobs = new Jobs(log);
    const id = jobs.start(() => Promise.reject(new Error('oh')));
    await new Promise((resolve) => setTimeout(resolve, 0));
    expect(jobs.stateOf(id ?? '')).toMatchObject({
      status: 'failed',
      reason: expect.stringContaining('mistake'),
    });
    expect(jobs.stateOf(crypto.randomUUID())).toMatchObject({ status: 'failed' });
  });
});
