import { type IncomingMessage, type Server, type ServerResponse, createServer } from 'node:http';
import { type AddressInfo } from 'node:net';
import { type Handlers } from '@latchwork/core/bridge/contract';
import { serveCall } from '@latchwork/core/bridge/serve-call';
import { readWindowFile } from '../services/window-files';
import { windowHeaders } from '../services/window-policy';
import { TICKET_HEADER, TOKEN_HEADER, hostFits, originFits, tokenFits } from './gate';
import { readJsonBody } from './json-body';
import { type Ticket } from './ticket';

export interface HostOptions {
  readonly handlers: Handlers;
  readonly windowFolder: string;
  readonly token: string;
  /** For a window whose address others can read. */
  readonly ticket?: Ticket;
  /** 0 takes a free one. */
  readonly port: number;
}

export interface RunningHost {
  readonly port: number;
  /** With the token in the fragment, which a browser never sends. */
  readonly address: string;
  close(): Promise<void>;
}

/** Serves the window and answers its calls, on this machine only. */
export async function startHost(options: HostOptions): Promise<RunningHost> {
  const server = createServer((request, response) => {
    handle(options, server, request, response).catch((error: unknown) => {
      // Our bug: say so where it runs, tell the page no details.
      process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
      if (response.headersSent) response.destroy();
      else answer(response, 500, { error: 'The host failed.' });
    });
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(options.port, '127.0.0.1', resolve);
  });
  const { port } = server.address() as AddressInfo;
  return {
    port,
    address: `http://127.0.0.1:${port}/#token=${options.token}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

async function handle(
  options: HostOptions,
  server: Server,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const { port } = server.address() as AddressInfo;
  if (!hostFits(request.headers, port)) return answer(response, 403, { error: 'Wrong host.' });
  const { pathname } = new URL(request.url ?? '/', 'http://127.0.0.1');
  if (pathname === '/ticket') return takeTicket(options, request, response);
  if (pathname.startsWith('/rpc/')) return call(options, pathname.slice('/rpc/'.length), request, response);
  if (request.method !== 'GET' && request.method !== 'HEAD')
    return answer(response, 405, { error: 'Only GET here.' });
  const file = await readWindowFile(options.windowFolder, pathname);
  if (!file) return answer(response, 404, { error: 'Not found.' });
  response.writeHead(200, {
    ...windowHeaders,
    'Cache-Control': 'no-store',
    'Content-Type': file.mediaType,
    'Content-Length': file.bytes.length,
  });
  response.end(request.method === 'HEAD' ? undefined : file.bytes);
}

function takeTicket(
  { token, ticket }: HostOptions,
  request: IncomingMessage,
  response: ServerResponse,
): void {
  if (request.method !== 'POST') return answer(response, 405, { error: 'Only POST here.' });
  if (!originFits(request.headers)) return answer(response, 403, { error: 'Wrong origin.' });
  if (!ticket?.takes(request.headers[TICKET_HEADER]))
    return answer(response, 401, { error: 'Wrong ticket.' });
  answer(response, 200, { token });
}

async function call(
  { handlers, token }: HostOptions,
  channel: string,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  if (request.method !== 'POST') return answer(response, 405, { error: 'Only POST here.' });
  if (!originFits(request.headers)) return answer(response, 403, { error: 'Wrong origin.' });
  if (!tokenFits(request.headers[TOKEN_HEADER], token))
    return answer(response, 401, { error: 'Wrong token.' });
  const body = await readJsonBody(request);
  if (!body.ok) return answer(response, body.problem.status, { error: body.problem.error });
  const result = await serveCall(handlers, channel, body.value);
  if (result.ok) return answer(response, 200, result.value);
  const { problem } = result;
  if (problem.code === 'unknown-channel') return answer(response, 404, { error: 'Unknown channel.' });
  answer(response, 400, { error: `${problem.channel}: ${problem.issues.join('; ')}` });
}

function answer(response: ServerResponse, status: number, body: unknown): void {
  const bytes = Buffer.from(JSON.stringify(body));
  response.writeHead(status, {
    ...windowHeaders,
    'Cache-Control': 'no-store',
    'Content-Type': 'application/json; charset=utf-8',
    'Content-Length': bytes.length,
    // What was not read of a refused body must not be taken for the next request.
    ...(status >= 400 ? { Connection: 'close' } : {}),
  });
  response.end(bytes);
}
