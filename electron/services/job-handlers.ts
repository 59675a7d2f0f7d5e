import { join } from 'node:path';
import type { Handlers, Request } from '@latchwork/core/bridge/contract';
import { partsToEmbed, parseCatalogue } from '@latchwork/core/catalogue/parse-catalogue';
import type { Part } from '@latchwork/core/model/parts/part';
import { readCatalogues } from './bundled-catalogues';
import { projectOfText } from './check-project';
import type { Jobs, Work } from './jobs';
import type { Places } from './places';
import { failed } from './reason';
import { makeRelease } from './release';
import { exportAll } from './release/export-all';
import { pause } from './release/make-files';
import type { Shell } from './shell';

type JobChannels = Extract<keyof Handlers, `job:${string}`>;

export function jobHandlers(jobs: Jobs, places: Places, shell: Shell): Pick<Handlers, JobChannels> {
  const folderFor = async (kind: Request<'job:start'>['kind']): Promise<string | null> =>
    shell.dialogs
      ? shell.dialogs.chooseFolder()
      : join(places.workFolder, kind === 'release' ? 'releases' : 'exports');

  return {
    'job:start': async (request) => {
      const folder = await folderFor(request.kind);
      if (folder === null) return { status: 'cancelled' };
      const job = jobs.start(workOf(request, folder, places));
      return job === null
        ? failed('Two jobs are running already. Wait for one of them, or cancel it.')
        : { status: 'started', job };
    },
    'job:state': async ({ job }) => jobs.stateOf(job),
    'job:cancel': async ({ job }) => {
      jobs.cancel(job);
      return { status: 'done' };
    },
  };
}

const workOf =
  (request: Request<'job:start'>, folder: string, { cataloguesFolder, fontsFolder }: Places): Work =>
  async (onProgress, signal) => {
    await pause(undefined);
    const project = projectOfText(request.text);
    if (!project.ok) return failed(project.problem);
    const catalogue = await bundledParts(cataloguesFolder);
    const making = { fontsFolder, catalogue, onProgress, signal };
    return request.kind === 'release'
      ? makeRelease(project.value, folder, making)
      : exportAll(project.value, request.documents, request.date, folder, making);
  };

/** Parts of the catalogues that come with the program; one that does not read is told where it is opened. */
async function bundledParts(folder: string): Promise<readonly Part[]> {
  return (await readCatalogues(folder)).flatMap(({ text }) => {
    const catalogue = parseCatalogue(text);
    return catalogue.ok ? partsToEmbed(catalogue.value) : [];
  });
}
