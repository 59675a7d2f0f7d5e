import { join } from 'node:path';
import { BrowserWindow } from 'electron';
import { mayLoseWork } from './native-dialogs';
import { WINDOW_ADDRESS } from './window-address';

/** A window that has no Node and one door: the preload's frozen object. */
export function openWindow(codeFolder: string): BrowserWindow {
  const window = new BrowserWindow({
    width: 1440,
    height: 900,
    minWidth: 960,
    minHeight: 600,
    show: false,
    webPreferences: {
      preload: join(codeFolder, 'preload.cjs'),
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    },
  });
  window.once('ready-to-show', () => window.show());
  // Preventing the event lets the page go.
  window.webContents.on('will-prevent-unload', (event) => {
    if (mayLoseWork(window)) event.preventDefault();
  });
  return window;
}

export const showWindow = (window: BrowserWindow): Promise<void> => window.loadURL(WINDOW_ADDRESS);
