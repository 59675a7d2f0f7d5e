import { mkdir } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { type OpenAnswer, type SaveAsAnswer } from '@latchwork/core/bridge/answers';
import { type Handlers } from '@latchwork/core/bridge/contract';
import { writeAtomically } from './atomic-write';
import { within, WRITE_WITHIN_MS } from './deadline';
import { listDemos } from './demo-projects';
import { bareFileName, nearestFileName, withEnding } from './file-name';
import { listFolder } from './folder-list';
import { type PathTokens } from './path-tokens';
import { type Places } from './places';
import { PROJECT_ENDING, compareOnDisk, readProjectFile, saveProjectFile } from './project-file';
import { sweepLeftovers } from './sweep-leftovers';
import { failed, isTaken, reasonOf } from './reason';
import { type RecentProjects } from './recent-projects';
import { revisionOf } from './revision';
import { type Shell } from './shell';

const NO_TOKEN = 'This file is not open here any more. Save it under a name.';

export interface ProjectParts {
  readonly places: Places;
  readonly tokens: PathTokens;
  readonly recent: RecentProjects;
}

type ProjectChannels = Exclude<
  Extract<keyof Handlers, `project:${string}`>,
  'project:hold' | 'project:let-go'
>;

export function projectHandlers(
  { places, tokens, recent }: ProjectParts,
  shell: Shell,
): Pick<Handlers, ProjectChannels> {
  const openPath = async (path: string): Promise<OpenAnswer> => {
    const read = await readProjectFile(path);
    if (!read.ok) return failed(read.problem);
    await Promise.all([recent.remember(path), sweepLeftovers(path)]);
    return { status: 'opened', token: tokens.tokenFor(path), name: basename(path), ...read.value };
  };

  const openDemo = async (demo: string): Promise<OpenAnswer> => {
    const known = (await listDemos(places.demosFolder)).some((entry) => entry.demo === demo);
    if (!known) return failed('There is no demo of this name.');
    const read = await readProjectFile(join(places.demosFolder, demo + PROJECT_ENDING));
    if (!read.ok) return failed(read.problem);
    return { status: 'opened', token: null, name: demo, text: read.value.text, revision: null };
  };

  const saveTo = async (path: string, text: string, replace: boolean): Promise<SaveAsAnswer> => {
    const bytes = Buffer.from(text, 'utf8');
    const name = basename(path);
    try {
      await within(writeAtomically(path, bytes, { mustBeNew: !replace }), WRITE_WITHIN_MS);
    } catch (error) {
      return isTaken(error) ? { status: 'exists', name } : failed(reasonOf(error));
    }
    await recent.remember(path);
    return { status: 'saved', token: tokens.tokenFor(path), name, revision: revisionOf(bytes) };
  };

  return {
    'project:initial': async () => {
      if (!shell.initial) return { status: 'empty' };
      const answer =
        'path' in shell.initial ? await openPath(shell.initial.path) : await openDemo(shell.initial.demo);
      return answer.status === 'cancelled' ? { status: 'empty' } : answer;
    },
    'project:list-demos': async () => ({ demos: await listDemos(places.demosFolder) }),
    'project:new-from-demo': ({ demo }) => openDemo(demo),
    'project:recent': async () => ({ recent: await recent.list() }),
    'project:list-folder': () => listFolder(places.workFolder, places.workFolder, [PROJECT_ENDING]),
    'project:open': async (request) => {
      if (request.from === 'folder') {
        const name = bareFileName(request.name);
        if (!name.ok) return failed(name.problem);
        if (!name.value.toLowerCase().endsWith(PROJECT_ENDING)) return failed('This is not a project file.');
        return openPath(join(places.workFolder, name.value));
      }
      const path =
        request.from === 'recent' ? await recent.pathOf(request.id) : tokens.pathFor(request.token);
      return path ? openPath(path) : failed('This file is not known here any more.');
    },
    'project:open-dialog': async () => {
      if (!shell.dialogs) return failed('This host has no dialog of its own.');
      const path = await shell.dialogs.openProject();
      return path ? openPath(path) : { status: 'cancelled' };
    },
    'project:save': async ({ token, text, revision }) => {
      const path = tokens.pathFor(token);
      return path ? saveProjectFile(path, text, revision) : failed(NO_TOKEN);
    },
    'project:save-as': async ({ suggestedName, text, name, replace }) => {
      if (shell.dialogs) {
        const suggestion = withEnding(nearestFileName(suggestedName, 'harness'), PROJECT_ENDING);
        const path = await shell.dialogs.saveProject(suggestion);
        // The dialog of the system has asked about replacing.
        return path ? saveTo(withEnding(path, PROJECT_ENDING), text, true) : { status: 'cancelled' };
      }
      const bare = bareFileName(withEnding(name ?? suggestedName, PROJECT_ENDING));
      if (!bare.ok) return failed(bare.problem);
      try {
        await mkdir(places.workFolder, { recursive: true });
      } catch (error) {
        return failed(reasonOf(error));
      }
      return saveTo(join(places.workFolder, bare.value), text, replace);
    },
    'project:on-disk': async ({ token, revision }) => {
      const path = tokens.pathFor(token);
      return path ? compareOnDisk(path, revision) : failed(NO_TOKEN);
    },
  };
}
