import { homedir } from 'node:os';
import { join } from 'node:path';

/** Every folder that the program touches by itself. */
export interface Places {
  /** Settings, recent files, backups. */
  readonly dataFolder: string;
  /** Where the window lists and saves when the host has no dialogs of its own. */
  readonly workFolder: string;
  readonly demosFolder: string;
  readonly cataloguesFolder: string;
  readonly fontsFolder: string;
  /** The built window. */
  readonly windowFolder: string;
}

/** What comes with the program, seen from its root folder. */
export const bundledPlaces = (root: string) => ({
  demosFolder: join(root, 'demo-projects'),
  cataloguesFolder: join(root, 'assets', 'catalogues'),
  fontsFolder: join(root, 'assets', 'fonts'),
  windowFolder: join(root, '.out', 'renderer'),
});

/** The folder for a program's own data, as each system has it. */
export function defaultDataFolder(
  env: Record<string, string | undefined> = process.env,
  platform: NodeJS.Platform = process.platform,
  home: string = homedir(),
): string {
  if (platform === 'win32') return join(env.APPDATA ?? join(home, 'AppData', 'Roaming'), 'Latchwork');
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Latchwork');
  return join(env.XDG_CONFIG_HOME ?? join(home, '.config'), 'latchwork');
}

export const defaultWorkFolder = (home: string = homedir()): string => join(home, 'Documents', 'latchwork');
