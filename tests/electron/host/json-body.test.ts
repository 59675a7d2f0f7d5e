import { type IncomingMessage } from 'node:http';
import { Readable } from 'node:stream';
import { expect, it } from 'vitest';
import { readJsonBody } from '../../../electron/host/json-body';

const request = (chunks: Buffer[], type = 'application/json'): IncomingMessage =>
  Object.assign(Readable.from(chunks), { headers: { 'content-type': type } }) as unknown as IncomingMessage;

it('joins what comes in pieces, also in the middle of a letter', async () => {
  const bytes = Buffer.from('{"a":"Ω"}');
  const answer = await readJsonBody(request([bytes.subarray(0, 7), bytes.subarray(7)]));
  expect(answer).toEqual({ ok: true, value: { a: 'Ω' } });
});

it('stops at its limit', async () => {
  const answer = await readJsonBody(request([Buffer.from('"1234'), Buffer.from('5678"')]), 8);
  expect(answer).toMatchObject({ ok: false, problem: { status: 413 } });
});

it.each([
  ['no UTF-8', Buffer.from([0x22, 0xff, 0x22]), 'application/json', 400],
  ['nothing', Buffer.from(''), 'application/json', 400],
  ['another type', Buffer.from('{}'), 'text/plain', 415],
])('refuses %s', async (_what, bytes, type, status) => {
  expect(await readJsonBody(request([bytes], type))).toMatchObject({ ok: false, problem: { status } });
});
