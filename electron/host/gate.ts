import { createHash, timingSafeEqual } from 'node:crypto';
import { type IncomingHttpHeaders } from 'node:http';

export const TOKEN_HEADER = 'x-latchwork-token';
export const TICKET_HEADER = 'x-latchwork-ticket';

const digest = (text: string): Buffer => createHash('sha256').update(text).digest();

/** Same time whatever is given, whatever its length. */
export const tokenFits = (given: unknown, token: string): boolean =>
  typeof given === 'string' && timingSafeEqual(digest(given), digest(token));

/** A page that reaches this port under another name (DNS rebinding) is turned away. */
export const hostFits = (headers: IncomingHttpHeaders, port: number): boolean =>
  headers.host === `127.0.0.1:${port}` || headers.host === `localhost:${port}`;

/** Calls come from our own page: the browser states the origin of every POST. */
export const originFits = (headers: IncomingHttpHeaders): boolean =>
  headers.origin === `http://${headers.host}` &&
  (headers['sec-fetch-site'] === undefined || headers['sec-fetch-site'] === 'same-origin');
