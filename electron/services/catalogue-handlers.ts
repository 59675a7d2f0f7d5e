import { basename, extname, join } from 'node:path';
import { type CatalogueAnswer } from '@latchwork/core/bridge/answers';
import { type Handlers } from '@latchwork/core/bridge/contract';
import { base64Of } from './base64';
import { readCatalogues } from './bundled-catalogues';
import { bareFileName } from './file-name';
import { listFolder } from './folder-list';
import { type Places } from './places';
import { readWhole } from './read-whole';
import { failed } from './reason';
import { type Shell } from './shell';

export const CATALOGUE_ENDINGS = ['.json', '.csv', '.xlsx'];
const MAX_CATALOGUE_BYTES = 64 * 1024 * 1024;

type CatalogueChannels = Extract<keyof Handlers, `catalogue:${string}`>;

export function catalogueHandlers(places: Places, shell: Shell): Pick<Handlers, CatalogueChannels> {
  return {
    'catalogue:list': async () => ({ catalogues: await readCatalogues(places.cataloguesFolder) }),
    'catalogue:list-folder': () => listFolder(places.workFolder, places.workFolder, CATALOGUE_ENDINGS),
    'catalogue:import': async ({ name }) => {
      const bare = bareFileName(name);
      return bare.ok ? read(join(places.workFolder, bare.value)) : failed(bare.problem);
    },
    'catalogue:import-dialog': async () => {
      if (!shell.dialogs) return failed('This host has no dialog of its own.');
      const path = await shell.dialogs.openCatalogue();
      return path ? read(path) : { status: 'cancelled' };
    },
  };
}

async function read(path: string): Promise<CatalogueAnswer> {
  if (!CATALOGUE_ENDINGS.includes(extname(path).toLowerCase()))
    return failed('A catalogue is a JSON, CSV or XLSX file.');
  const bytes = await readWhole(path, { as: 'a catalogue', maxBytes: MAX_CATALOGUE_BYTES });
  return bytes.ok
    ? { status: 'opened', name: basename(path), bytesBase64: base64Of(bytes.value) }
    : failed(bytes.problem);
}
