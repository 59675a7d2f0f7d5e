import { mkdirSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { networkInterfaces } from 'node:os';
import { connect } from 'node:net';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { Ticket } from '../../../electron/host/ticket';
import { type RunningHost, startHost } from '../../../electron/host/server';
import { createHandlers, openServices } from '../../../electron/services/handlers';
import { contentPolicy } from '../../../electron/services/window-policy';
import { tempFolder } from '../temp-folder';

const token = 'a-token';

async function host(ticket = new Ticket('a-ticket')): Promise<RunningHost> {
  const folder = tempFolder();
  const places = {
    dataFolder: join(folder, 'data'),
    workFolder: join(folder, 'work'),
    demosFolder: join(folder, 'demos'),
    cataloguesFolder: join(folder, 'catalogues'),
    fontsFolder: join(process.cwd(), 'assets', 'fonts'),
    windowFolder: join(folder, 'window'),
  };
  mkdirSync(places.windowFolder);
  writeFileSync(join(places.windowFolder, 'index.html'), '<!doctype html>');
  const handlers = createHandlers(openServices(places), {
    host: 'browser',
    version: '1.2.3',
    dialogs: null,
    openExternal: async () => ({ status: 'here' }),
    initial: null,
  });
  const running = await startHost({ handlers, windowFolder: places.windowFolder, token, ticket, port: 0 });
  onTestFinished(() => running.close());
  return running;
}

interface Answer {
  readonly status: number;
  readonly headers: Record<string, unknown>;
  readonly body: string;
}

/** Below fetch, which would not let us lie about Host and Origin. */
function send(
  { port }: RunningHost,
  path: string,
  {
    method = 'GET',
    headers = {},
    body = '',
  }: { method?: string; headers?: Record<string, string>; body?: string } = {},
): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const sent = request({ host: '127.0.0.1', port, path, method, headers }, (response) => {
      let text = '';
      response.on('data', (chunk: Buffer) => (text += chunk.toString()));
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, body: text }),
      );
    });
    sent.on('error', reject);
    sent.end(body);
  });
}

const callHeaders = ({ port }: RunningHost) => ({
  'content-type': 'application/json',
  origin: `http://127.0.0.1:${port}`,
  'x-latchwork-token': token,
});

const call = (running: RunningHost, channel: string, headers: Record<string, string> = {}, body = '{}') =>
  send(running, `/rpc/${channel}`, {
    method: 'POST',
    headers: { ...callHeaders(running), ...headers },
    body,
  });

describe('the browser host', () => {
  it('answers its own page', async () => {
    const answer = await call(await host(), 'app:info');
    expect(answer.status).toBe(200);
    expect(JSON.parse(answer.body)).toEqual({
      version: '1.2.3',
      host: 'browser',
      platform: process.platform,
      dialogs: 'listed',
    });
    expect(answer.headers['cache-control']).toBe('no-store');
  });

  it('states its address with the token where a browser does not send it', async () => {
    const running = await host();
    expect(running.address).toBe(`http://127.0.0.1:${running.port}/#token=${token}`);
  });

  it('serves the window under the closed policy, cached by nobody', async () => {
    const answer = await send(await host(), '/');
    expect(answer.body).toBe('<!doctype html>');
    expect(answer.headers).toMatchObject({
      'content-security-policy': contentPolicy,
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'cache-control': 'no-store',
    });
  });

  it('starts the policy from nothing and lets no script in from elsewhere', () => {
    expect(contentPolicy.startsWith("default-src 'none'")).toBe(true);
    expect(contentPolicy).not.toMatch(/unsafe|https?:|\*/);
  });

  it.each([
    ['no token', { 'x-latchwork-token': '' }, 401],
    ['a wrong token', { 'x-latchwork-token': 'a-tokem' }, 401],
    ['a longer token', { 'x-latchwork-token': 'a-token-and-more' }, 401],
    ['another origin', { origin: 'http://example.org' }, 403],
    ['an opaque origin', { origin: 'null' }, 403],
    ['another port as origin', { origin: 'http://127.0.0.1:1' }, 403],
    ['a page of another site', { 'sec-fetch-site': 'cross-site' }, 403],
    ['another host name', { host: 'example.org' }, 403],
    ['a form', { 'content-type': 'text/plain' }, 415],
  ])('refuses a call with %s', async (_what, headers, status) => {
    expect((await call(await host(), 'app:info', headers)).status).toBe(status);
  });

  it('refuses a call without an origin', async () => {
    const running = await host();
    const { origin: _, ...headers } = callHeaders(running);
    const answer = await send(running, '/rpc/app:info', { method: 'POST', headers, body: '{}' });
    expect(answer.status).toBe(403);
  });

  it('does not even serve the window under another host name', async () => {
    expect((await send(await host(), '/', { headers: { host: 'evil.example' } })).status).toBe(403);
  });

  it.each([
    ['an unknown channel', 'project:delete', '{}', 404],
    ['a channel by prototype', 'constructor', '{}', 404],
    ['no JSON', 'app:info', '{', 400],
    ['more than was asked for', 'app:info', '{"x":1}', 400],
    ['a wrong type', 'project:save', '{"token":1,"text":"","revision":null}', 400],
  ])('refuses %s', async (_what, channel, body, status) => {
    expect((await call(await host(), channel, {}, body)).status).toBe(status);
  });

  it.each(['GET', 'PUT', 'OPTIONS'])('refuses a call by %s', async (method) => {
    const running = await host();
    expect((await send(running, '/rpc/app:info', { method, headers: callHeaders(running) })).status).toBe(
      405,
    );
  });

  it('refuses to be posted to elsewhere', async () => {
    expect((await send(await host(), '/', { method: 'POST' })).status).toBe(405);
  });

  it('gives the token for a ticket, once and in time', async () => {
    const ask = (running: RunningHost, ticket: string, headers: Record<string, string> = {}) =>
      send(running, '/ticket', {
        method: 'POST',
        headers: { origin: `http://127.0.0.1:${running.port}`, 'x-latchwork-ticket': ticket, ...headers },
      });
    const running = await host();
    expect((await ask(running, 'a-ticke')).status).toBe(401);
    expect((await ask(running, 'a-ticket', { origin: 'http://example.org' })).status).toBe(403);
    expect((await send(running, '/ticket')).status).toBe(405);
    expect(JSON.parse((await ask(running, 'a-ticket')).body)).toEqual({ token });
    expect((await ask(running, 'a-ticket')).status).toBe(401);
    let now = 0;
    const late = await host(new Ticket('a-ticket', () => now));
    now = 61_000;
    expect((await ask(late, 'a-ticket')).status).toBe(401);
  });

  it('opens no socket: an upgrade is answered like any request, and its words are not taken for calls', async () => {
    const running = await host();
    const headers = { connection: 'Upgrade', upgrade: 'websocket', 'sec-websocket-version': '13', 'sec-websocket-key': 'dGhlIHNhbXBsZSBub25jZQ==' }; // prettier-ignore
    for (const path of ['/', '/rpc/app:info', '/socket'])
      expect((await send(running, path, { headers })).status, path).not.toBe(101);
    expect(
      (await send(running, '/rpc/app:info', { headers: { ...headers, origin: 'http://example.org' } }))
        .status,
    ).toBe(405);
  });

  it.each([
    ['CONNECT', '127.0.0.1:22'],
    ['TRACE', '/'],
    ['DELETE', '/index.html'],
  ])('does not do what it was not made for: %s %s', async (method, path) => {
    const answer = await send(await host(), path, { method }).catch(() => ({ status: 0 }));
    expect(answer.status).not.toBe(200);
  });

  it('is no way to elsewhere: it has its own page only', async () => {
    expect((await send(await host(), 'http://example.org/')).body).toBe('<!doctype html>');
  });

  it.each([
    '/%2e%2e/%2e%2e/etc/passwd', '/..%2f..%2fetc/passwd', '/..%5c..%5cetc/passwd', '/%252e%252e/package.json', '/index.html/../../package.json',
    '/.%00./package.json', '/assets', '/assets/', '/C:/Windows/win.ini', '/%c0%ae%c0%ae/package.json', '/index.html%00.js', '/.git/config',
  ])('does not climb out or list: %s', async (path) => {
    const answer = await send(await host(), path);
    expect([answer.status, answer.body.includes('latchwork-project') || answer.body.includes('root:')]).toEqual([404, false]);
  }); // prettier-ignore

  it('stops reading a body that is too long, whatever length it claims', async () => {
    const { port } = await host();
    const status = await new Promise<string>((resolve) => {
      const socket = connect({ host: '127.0.0.1', port });
      socket.on('data', (chunk) => resolve(chunk.toString().split('\r\n')[0] ?? ''));
      socket.on('error', () => resolve('closed'));
      socket.write(`POST /rpc/app:info HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nOrigin: http://127.0.0.1:${port}\r\nx-latchwork-token: wrong\r\nContent-Type: application/json\r\nContent-Length: 99999999999\r\n\r\n{`); // prettier-ignore
      onTestFinished(() => void socket.destroy());
    });
    expect(status).toMatch(/401|closed/);
  });

  it.each(['/../package.json', '/%2e%2e/package.json', '//etc/passwd', '/nothing.js'])(
    'has no %s',
    async (path) => {
      expect((await send(await host(), path)).status).toBe(404);
    },
  );

  it('listens on this machine only', async () => {
    const { port } = await host();
    const others = Object.values(networkInterfaces())
      .flatMap((list) => list ?? [])
      .filter(({ internal, family }) => !internal && family === 'IPv4');
    for (const { address } of others) {
      const reached = await new Promise((resolve) => {
        const socket = connect({ host: address, port, timeout: 1000 });
        socket
          .once('connect', () => resolve(true))
          .once('error', () => resolve(false))
          .once('timeout', () => resolve(false));
        onTestFinished(() => void socket.destroy());
      });
      expect(reached, address).toBe(false);
    }
  });
});
