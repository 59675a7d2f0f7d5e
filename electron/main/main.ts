import { join } from 'node:path';
import { type Handlers } from '@latchwork/core/bridge/contract';
import { app, session, shell as system } from 'electron';
import { z } from 'zod';
import { version } from '../package.json';
import { createHandlers, openServices } from '../services/handlers';
import { bundledPlaces, defaultWorkFolder } from '../services/places';
import { type Shell } from '../services/shell';
import { lockDownPages, lockDownSession } from './lock-down';
import { setMenu } from './menu';
import { nativeDialogs } from './native-dialogs';
import { openWindow, showWindow } from './open-window';
import { registerChannels } from './register';
import { initialFrom } from './start-up';
import { declareWindowScheme, serveWindowScheme } from './window-scheme';

z.config({ jitless: true });

/** `codeFolder` holds the bundles of this program: main.cjs and preload.cjs. */
function start(codeFolder: string): void {
  declareWindowScheme();
  lockDownPages();
  if (!app.requestSingleInstanceLock()) return app.quit();

  const places = {
    ...bundledPlaces(join(codeFolder, '..', '..')),
    dataFolder: app.getPath('userData'),
    workFolder: defaultWorkFolder(app.getPath('home')),
  };
  const services = openServices(places);
  const windows = new Map<number, Handlers>();

  const open = (initial: Shell['initial']): void => {
    const window = openWindow(codeFolder);
    const { id } = window.webContents;
    windows.set(
      id,
      createHandlers(services, {
        host: 'electron',
        version,
        dialogs: nativeDialogs(window),
        openExternal: async (url) => {
          await system.openExternal(url);
          return { status: 'done' };
        },
        initial,
      }),
    );
    window.once('closed', () => windows.delete(id));
    void showWindow(window);
  };

  // macOS hands files over by event, also before the program is ready.
  let handedOver: Shell['initial'] = null;
  app.on('open-file', (event, path) => {
    event.preventDefault();
    if (app.isReady()) open({ path });
    else handedOver = { path };
  });
  app.on('second-instance', (_event, argv, workingFolder) => open(initialFrom(argv, workingFolder)));
  app.on('activate', () => {
    if (windows.size === 0) open(null);
  });
  app.on('render-process-gone', (_event, _contents, { reason }) =>
    services.log.write('window-gone', { reason }),
  );
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit();
  });

  void app.whenReady().then(() => {
    setMenu(process.platform);
    lockDownSession(session.defaultSession);
    serveWindowScheme(places.windowFolder);
    registerChannels((contentsId) => windows.get(contentsId) ?? null);
    open(handedOver ?? initialFrom(process.argv, process.cwd()));
  });
}

start(__dirname);
