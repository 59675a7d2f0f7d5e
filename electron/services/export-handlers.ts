import { mkdir } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { type ExportAnswer } from '@latchwork/core/bridge/answers';
import { type Handlers } from '@latchwork/core/bridge/contract';
import { writeAtomically } from './atomic-write';
import { bytesOfBase64 } from './base64';
import { bareFileName, nearestFileName } from './file-name';
import { type Places } from './places';
import { failed, isTaken, reasonOf } from './reason';
import { type Shell } from './shell';

export function exportHandlers(places: Places, shell: Shell): Pick<Handlers, 'file:export'> {
  return {
    'file:export': async ({ suggestedName, bytesBase64, filters, name, replace }) => {
      const bytes = bytesOfBase64(bytesBase64);
      if (!bytes) return failed('The document did not arrive whole.');
      const suggestion = nearestFileName(suggestedName, 'document');
      if (shell.dialogs) {
        const path = await shell.dialogs.saveExport(suggestion, filters);
        return path ? write(path, bytes, true) : { status: 'cancelled' };
      }
      const bare = bareFileName(name ?? suggestion);
      if (!bare.ok) return failed(bare.problem);
      const folder = join(places.workFolder, 'exports');
      try {
        await mkdir(folder, { recursive: true });
      } catch (error) {
        return failed(reasonOf(error));
      }
      return write(join(folder, bare.value), bytes, replace);
    },
  };
}

async function write(path: string, bytes: Uint8Array, replace: boolean): Promise<ExportAnswer> {
  const name = basename(path);
  try {
    await writeAtomically(path, bytes, { mustBeNew: !replace });
    return { status: 'saved', name };
  } catch (error) {
    return isTaken(error) ? { status: 'exists', name } : failed(reasonOf(error));
  }
}
