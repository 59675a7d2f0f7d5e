import { afterEach, expect, it, vi } from 'vitest';
import { httpBridge } from '../../../renderer/app/bridge';

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
