import { EventEmitter } from 'node:events';
import { vi } from 'vitest';

type Listener = (...args: never[]) => unknown;

/** Just enough of Electron to see what our code asks of it. The real package would fetch its runtime here. */
export class FakeWebContents extends EventEmitter {
  static last = 0;
  readonly id = ++FakeWebContents.last;
  readonly mainFrame = { url: 'app://latchwork/index.html' };
  openHandler: ((details: { url: string }) => { action: string }) | null = null;
  setWindowOpenHandler(handler: (details: { url: string }) => { action: string }): void {
    this.openHandler = handler;
  }
}

export class FakeWindow extends EventEmitter {
  static opened: FakeWindow[] = [];
  readonly webContents = new FakeWebContents();
  readonly show = vi.fn();
  readonly loadURL = vi.fn(async (_address: string) => undefined);
  constructor(readonly options: { webPreferences: Record<string, unknown> }) {
    super();
    FakeWindow.opened.push(this);
    app.emit('web-contents-created', {}, this.webContents);
  }
}

class FakeApp extends EventEmitter {
  readonly requestSingleInstanceLock = vi.fn(() => true);
  readonly quit = vi.fn();
  readonly isReady = () => true;
  readonly whenReady = async () => undefined;
  readonly getPath = (name: string) => `/nowhere/${name}`;
}

export const app = new FakeApp();
export const registered = new Map<string, Listener>();
export const ipcMain = { handle: (channel: string, listener: Listener) => registered.set(channel, listener) };
export const schemes = new Map<string, (request: Request) => Promise<Response>>();
export const protocol = {
  registerSchemesAsPrivileged: vi.fn(),
  handle: (scheme: string, handler: (request: Request) => Promise<Response>) => schemes.set(scheme, handler),
};
export const session = {
  defaultSession: {
    setPermissionRequestHandler: vi.fn(),
    setPermissionCheckHandler: vi.fn(),
    setDevicePermissionHandler: vi.fn(),
    webRequest: { onBeforeRequest: vi.fn() },
  },
};
export const dialog = {
  showOpenDialog: vi.fn(async () => ({ canceled: true, filePaths: [] as string[] })),
  showSaveDialog: vi.fn(async () => ({ canceled: true, filePath: '' })),
  showMessageBoxSync: vi.fn(() => 0),
};
export const shell = { openExternal: vi.fn(async (_url: string) => undefined) };
export const Menu = {
  setApplicationMenu: vi.fn(),
  buildFromTemplate: vi.fn((template: unknown) => template),
};
export { FakeWindow as BrowserWindow };
