import { bridgeClient, type BridgeClient } from '@latchwork/core/bridge/client';
import type { RawBridge } from '@latchwork/core/bridge/contract';

declare global {
  interface Window {
    /** Put there by Electron's preload; absent in the browser host. */
    readonly latchwork?: RawBridge;
  }
}

/** The host of this window: the preload's object in Electron, else the loopback host that served the page. */
export function connect(): BridgeClient | null {
  if (window.latchwork) return bridgeClient(window.latchwork);
  const token = new URLSearchParams(location.hash.slice(1)).get('token');
  return token ? bridgeClient(httpBridge(token)) : null;
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
