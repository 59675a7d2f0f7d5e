import { afterEach, expect, it, vi } from 'vitest';
import { connect, httpBridge } from '../../../renderer/app/bridge';

afterEach(() => vi.unstubAllGlobals());

it('posts to the channel with the token in a header, never in the address', async () => {
  const fetched = vi.fn(
    async (_address: string, _init: RequestInit) => new Response('{"a":1}', { status: 200 }),
  );
  vi.stubGlobal('fetch', fetched);
  expect(await httpBridge('secret').invoke('app:info', {})).toEqual({ a: 1 });
  const [address, init] = fetched.mock.calls[0]!;
  expect(address).toBe('/rpc/app:info');
  expect(init).toMatchObject({ method: 'POST', body: '{}', headers: { 'x-latchwork-token': 'secret' } });
});

it('rejects what the host refuses', async () => {
  vi.stubGlobal('fetch', async () => new Response('{"error":"Wrong token."}', { status: 401 }));
  await expect(httpBridge('x').invoke('app:info', {})).rejects.toThrow(/401.*Wrong token/);
});

it('exchanges a ticket for the token once, takes it out of the address, and keeps the token for a reload', async () => {
  const fetched = vi.fn(async (address: string, _init: RequestInit) =>
    address === '/ticket' ? new Response('{"token":"secret"}') : new Response('{"demos":[]}'),
  );
  vi.stubGlobal('fetch', fetched);
  const before = location.hash;
  history.replaceState(null, '', '#ticket=once');
  const client = await connect();
  expect(location.hash).toBe('');
  await client!.call('project:list-demos', {});
  expect(
    fetched.mock.calls.map(([address, init]) => [address, Object.entries(init.headers ?? {}).at(-1)]),
  ).toEqual([
    ['/ticket', ['x-latchwork-ticket', 'once']],
    ['/rpc/project:list-demos', ['x-latchwork-token', 'secret']],
  ]);
  expect(await connect()).not.toBeNull();
  expect(fetched.mock.calls.filter(([address]) => address === '/ticket')).toHaveLength(1);
  sessionStorage.clear();
  expect(await connect()).toBeNull();
  history.replaceState(null, '', before || location.pathname);
});
