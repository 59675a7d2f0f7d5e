import { createStore, useStore } from 'zustand';
import type { BridgeClient } from '@latchwork/core/bridge/client';
import type { Channel } from '@latchwork/core/bridge/channels';
import type { Request, Response } from '@latchwork/core/bridge/contract';
import { say } from '../ui/toasts';

export interface HostState {
  /** Null where the page was opened without a host: everything works but files. */
  readonly client: BridgeClient | null;
  readonly info: Response<'app:info'> | null;
  readonly demos: Response<'project:list-demos'>['demos'];
  readonly recent: Response<'project:recent'>['recent'];
}

/** What is known of the machine behind the window. */
export const hostStore = createStore<HostState>()(() => ({
  client: null,
  info: null,
  demos: [],
  recent: [],
}));

export const useHost = <T>(pick: (state: HostState) => T): T => useStore(hostStore, pick);

/** Calls the host. Null when there is none or it cannot be reached; the user has then been told. */
export async function callHost<C extends Channel>(
  channel: C,
  request: Request<C>,
): Promise<Response<C> | null> {
  const { client } = hostStore.getState();
  if (!client) {
    say(
      'problem',
      'This window has no host, so it can neither open nor write files. Start the program again.',
    );
    return null;
  }
  try {
    return await client.call(channel, request);
  } catch (error) {
    say('problem', `The host did not answer: ${error instanceof Error ? error.message : String(error)}`);
    return null;
  }
}

/** Reads the list of recent files again: after opening and saving. */
export async function refreshRecent(): Promise<void> {
  const answer = await callHost('project:recent', {});
  if (answer) hostStore.setState({ recent: answer.recent });
}
