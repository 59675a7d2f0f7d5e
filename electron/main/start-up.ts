import { resolve } from 'node:path';
import { PROJECT_ENDING } from '../services/project-file';
import { type Shell } from '../services/shell';

const DEMO_SWITCH = '--demo=';

/** What a command line asks to be opened: the first project file in it, or a demo. Other words are Chromium's. */
export function initialFrom(argv: readonly string[], workingFolder: string): Shell['initial'] {
  const file = argv.slice(1).find((word) => !word.startsWith('-') && word.endsWith(PROJECT_ENDING));
  if (file) return { path: resolve(workingFolder, file) };
  const demo = argv.find((word) => word.startsWith(DEMO_SWITCH))?.slice(DEMO_SWITCH.length);
  return demo ? { demo } : null;
}
