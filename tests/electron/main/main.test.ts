import { beforeAll, describe, expect, it, vi } from 'vitest';
import * as electron from './fake-electron';

vi.mock('electron', () => import('./fake-electron'));

interface Sender {
  readonly sender: electron.FakeWebContents;
  readonly senderFrame: { url: string } | null;
}

const invoke = (channel: string, event: Sender, request: unknown) =>
  (electron.registered.get(channel) as unknown as (event: Sender, request: unknown) => Promise<unknown>)(
    event,
    request,
  );

const windowAt = (index: number) => electron.FakeWindow.opened[index]!;
const ownEvent = (index = 0): Sender => {
  const { webContents } = windowAt(index);
  return { sender: webContents, senderFrame: webContents.mainFrame };
};

beforeAll(async () => {
  vi.stubGlobal('__dirname', '/nowhere/.out/electron');
  await import('../../../electron/main/main');
  await vi.waitFor(() => expect(windowAt(0).loadURL).toHaveBeenCalled());
});

describe('the window', () => {
  it('has no Node, is sandboxed and isolated', () => {
    expect(windowAt(0).options.webPreferences).toMatchObject({
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      webviewTag: false,
      preload: expect.stringMatching(/preload\.cjs$/),
    });
  });

  it('loads its own address', () => {
    expect(windowAt(0).loadURL).toHaveBeenCalledWith('app://latchwork/index.html');
  });

  it.each(['will-navigate', 'will-redirect', 'will-attach-webview'])('refuses %s', (name) => {
    const preventDefault = vi.fn();
    windowAt(0).webContents.emit(name, { preventDefault });
    expect(preventDefault).toHaveBeenCalledOnce();
  });

  it('opens no other window', () => {
    expect(windowAt(0).webContents.openHandler?.({ url: 'https://example.org' })).toEqual({ action: 'deny' });
  });

  it('stays open with unsaved work unless the user says otherwise', () => {
    const preventDefault = vi.fn();
    windowAt(0).webContents.emit('will-prevent-unload', { preventDefault });
    expect(preventDefault).not.toHaveBeenCalled();
    electron.dialog.showMessageBoxSync.mockReturnValueOnce(1);
    windowAt(0).webContents.emit('will-prevent-unload', { preventDefault });
    expect(preventDefault).toHaveBeenCalledOnce();
  });
});

describe('the session', () => {
  const { defaultSession } = electron.session;

  it.each([
    ['media', false],
    ['geolocation', false],
    ['notifications', false],
    ['clipboard-read', false],
    ['openExternal', false],
    ['fileSystem', false],
    ['clipboard-sanitized-write', true],
  ])('permission %s: %s', (permission, allowed) => {
    const answer = vi.fn();
    defaultSession.setPermissionRequestHandler.mock.calls[0]![0](null, permission, answer);
    expect(answer).toHaveBeenCalledWith(allowed);
    expect(defaultSession.setPermissionCheckHandler.mock.calls[0]![0](null, permission)).toBe(allowed);
  });

  it('gives no device', () => {
    expect(defaultSession.setDevicePermissionHandler.mock.calls[0]![0]({})).toBe(false);
  });

  it.each([
    ['app://latchwork/assets/a.js', false],
    ['blob:app://latchwork/1', false],
    ['data:image/png;base64,', false],
    ['https://example.org/', true],
    ['http://127.0.0.1/', true],
    ['file:///etc/passwd', true],
    ['app://other/x', true],
    ['ws://x/', true],
  ])('request to %s is stopped: %s', (url, cancel) => {
    const answer = vi.fn();
    defaultSession.webRequest.onBeforeRequest.mock.calls[0]![0]({ url }, answer);
    expect(answer).toHaveBeenCalledWith({ cancel });
  });
});

describe('the channels', () => {
  it('answer the own window', async () => {
    expect(await invoke('app:info', ownEvent(), {})).toMatchObject({ host: 'electron', dialogs: 'native' });
  });

  it('refuse a frame inside the page', async () => {
    const event = { ...ownEvent(), senderFrame: { url: 'app://latchwork/index.html' } };
    await expect(invoke('app:info', event, {})).rejects.toThrow('Refused');
  });

  it('refuse a frame that is gone', async () => {
    await expect(invoke('app:info', { ...ownEvent(), senderFrame: null }, {})).rejects.toThrow('Refused');
  });

  it.each(['https://example.org/', 'app://other/index.html', 'file:///x', 'about:blank'])(
    'refuse a page at %s',
    async (url) => {
      const sender = Object.assign(Object.create(windowAt(0).webContents), { mainFrame: { url } });
      await expect(invoke('app:info', { sender, senderFrame: sender.mainFrame }, {})).rejects.toThrow(
        'Refused',
      );
    },
  );

  it('refuse a window that is not ours', async () => {
    const stranger = new electron.FakeWebContents();
    await expect(
      invoke('app:info', { sender: stranger, senderFrame: stranger.mainFrame }, {}),
    ).rejects.toThrow('Refused');
  });

  it('refuse what does not parse', async () => {
    await expect(invoke('project:save', ownEvent(), { token: 1 })).rejects.toThrow('project:save');
  });

  it.each([
    ['https://example.org/', 1],
    ['file:///etc/passwd', 0],
  ])('hand %s to the browser %i times', async (url, times) => {
    electron.shell.openExternal.mockClear();
    await invoke('shell:open-external', ownEvent(), { url });
    expect(electron.shell.openExternal).toHaveBeenCalledTimes(times);
  });
});

describe('the scheme of the window', () => {
  it('is a secure origin and may do nothing else special', () => {
    expect(electron.protocol.registerSchemesAsPrivileged).toHaveBeenCalledWith([
      { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } },
    ]);
  });

  it.each([
    ['app://latchwork/../../package.json'],
    ['app://latchwork/%2e%2e/%2e%2e/package.json'],
    ['app://other/index.html'],
  ])('serves no %s, and that under the policy', async (url) => {
    const response = await electron.schemes.get('app')!(new Request(url));
    expect(response.status).toBe(404);
    expect(response.headers.get('content-security-policy')).toContain("default-src 'none'");
  });
});

describe('a second start', () => {
  it('opens its file in a window of the first', async () => {
    electron.app.emit('second-instance', {}, ['latchwork', '--flag', 'x.latchwork'], '/nowhere');
    expect(electron.FakeWindow.opened).toHaveLength(2);
    expect(await invoke('project:initial', ownEvent(1), {})).toMatchObject({ status: 'failed' });
    expect(await invoke('project:initial', ownEvent(0), {})).toMatchObject({ status: 'empty' });
  });

  it('forgets a window that is closed', async () => {
    const event = ownEvent(1);
    windowAt(1).emit('closed');
    await expect(invoke('app:info', event, {})).rejects.toThrow('Refused');
  });
});
