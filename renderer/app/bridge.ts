import { bridgeClient, type BridgeClient } from '@latchwork/core/bridge/client';
import type { RawBridge } from '@latchwork/core/bridge/contract';

declare global {
  interface Window {
    /** Put there by Electron's preload; absent in the browser host. */
    readonly latchwork?: RawBridge;
  }
}

/** The host of this window: the preload's object in Electron, else the loopback host that served the page. */
export async function connect(): Promise<BridgeClient | null> {
  if (window.latchwork) return bridgeClient(window.latchwork);
  const words = new URLSearchParams(location.hash.slice(1));
  const ticket = words.get('ticket');
  const token = ticket ? await tokenFor(ticket) : (words.get('token') ?? sessionStorage.getItem(KEPT));
  return token ? bridgeClient(httpBridge(token)) : null;
}

/** Where the token of a ticket is kept for a reload of this window; gone with the window. */
const KEPT = 'latchwork-token';

/** Exchanges the ticket, which is good once, and takes it out of the address. */
async function tokenFor(ticket: string): Promise<string | null> {
  const answer = await fetch('/ticket', { method: 'POST', headers: { 'x-latchwork-ticket': ticket } });
  history.replaceState(null, '', location.pathname + location.search);
  if (!answer.ok) return sessionStorage.getItem(KEPT);
  const { token } = (await answer.json()) as { token: string };
  sessionStorage.setItem(KEPT, token);
  return token;
}

/** Calls the loopback host. The token came in the address's fragment and goes into a header. */
export const httpBridge = (token: string): RawBridge => ({
  async invoke(channel, request) {
    const answer = await fetch(`/rpc/${channel}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', 'x-latchwork-token': token },
      body: JSON.stringify(request),
    });
    const body: unknown = await answer.json();
    if (!answer.ok)
      throw new Error(`The host answered ${answer.status} to ${channel}: ${JSON.stringify(body)}`);
    return body;
  },
});
