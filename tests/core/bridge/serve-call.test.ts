import { bridgeClient } from '@latchwork/core/bridge/client';
import { channels } from '@latchwork/core/bridge/channels';
import { type Handlers, contract } from '@latchwork/core/bridge/contract';
import { serveCall } from '@latchwork/core/bridge/serve-call';
import { defaultSettings } from '@latchwork/core/bridge/settings';
import { describe, expect, it } from 'vitest';

const info = { version: '1.2.3', host: 'browser', platform: 'linux', dialogs: 'listed' } as const;

/** Only what the test asks for is there. */
const handlersWith = (some: Partial<Handlers>): Handlers => some as Handlers;

describe('the contract', () => {
  it('has a question and an answer for every channel', () => {
    expect(Object.keys(contract).sort()).toEqual([...channels].sort());
  });

  it.each(['project:save', 'project:save-as', 'project:on-disk', 'file:export'] as const)(
    'lets %s say that it failed, with a reason',
    (channel) => {
      expect(contract[channel].response.safeParse({ status: 'failed', reason: 'x' }).success).toBe(true);
      expect(contract[channel].response.safeParse({ status: 'failed' }).success).toBe(false);
    },
  );

  it('admits the default settings', () => {
    expect(contract['settings:set'].request.safeParse(defaultSettings).success).toBe(true);
  });
});

describe('serveCall', () => {
  it('passes question and answer through', async () => {
    const handlers = handlersWith({
      'project:save': async ({ token, text }) => ({ status: 'saved', revision: `${token}/${text}` }),
    });
    const request = { token: 't', text: 'x', revision: null };
    expect(await serveCall(handlers, 'project:save', request)).toEqual({
      ok: true,
      value: { status: 'saved', revision: 't/x' },
    });
  });

  it.each(['nothing', 'constructor', '__proto__', 'toString'])('knows no channel %s', async (channel) => {
    expect(await serveCall(handlersWith({}), channel, {})).toMatchObject({
      ok: false,
      problem: { code: 'unknown-channel' },
    });
  });

  it.each([
    [{}],
    [null],
    [{ token: 't', text: 1, revision: null }],
    [{ token: 't', text: '', revision: null, path: '/x' }],
  ])('refuses the question %j before any handler sees it', async (request) => {
    const handlers = handlersWith({
      'project:save': () => {
        throw new Error('reached');
      },
    });
    expect(await serveCall(handlers, 'project:save', request)).toMatchObject({
      ok: false,
      problem: { code: 'bad-request', channel: 'project:save' },
    });
  });

  it('does not let an answer out that the contract does not know', async () => {
    const handlers = handlersWith({ 'app:info': async () => ({ ...info, home: '/home/x' }) });
    await expect(serveCall(handlers, 'app:info', {})).rejects.toThrow();
  });
});

describe('bridgeClient', () => {
  it('parses both ways', async () => {
    const asked: unknown[] = [];
    const client = bridgeClient({
      invoke: async (channel, request) => {
        asked.push([channel, request]);
        return info;
      },
    });
    expect(await client.call('app:info', {})).toEqual(info);
    expect(asked).toEqual([['app:info', {}]]);
  });

  it('rejects an answer of another version of the host', async () => {
    const client = bridgeClient({ invoke: async () => ({ ...info, dialogs: 'other' }) });
    await expect(client.call('app:info', {})).rejects.toThrow();
  });

  it('rejects a wrong question without sending it', async () => {
    const client = bridgeClient({ invoke: () => Promise.reject(new Error('sent')) });
    await expect(client.call('project:save', { token: '', text: '', revision: null })).rejects.not.toThrow(
      'sent',
    );
  });
});
