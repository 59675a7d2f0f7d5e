import { channels } from '@latchwork/core/bridge/channels';
import { type Handlers } from '@latchwork/core/bridge/contract';
import { serveCall } from '@latchwork/core/bridge/serve-call';
import { type IpcMainInvokeEvent, ipcMain } from 'electron';
import { isWindowAddress } from './window-address';

/** The only place that listens to a window. `handlersOf` gives null for a window that is not ours. */
export function registerChannels(handlersOf: (contentsId: number) => Handlers | null): void {
  for (const channel of channels)
    ipcMain.handle(channel, async (event: IpcMainInvokeEvent, request: unknown) => {
      const handlers = comesFromOurPage(event) ? handlersOf(event.sender.id) : null;
      if (!handlers) throw new Error('Refused: not the window of this program.');
      const result = await serveCall(handlers, channel, request);
      if (result.ok) return result.value;
      throw new Error(
        result.problem.code === 'bad-request'
          ? `${channel}: ${result.problem.issues.join('; ')}`
          : 'Unknown channel.',
      );
    });
}

/** The top frame of the page at our own address: no frame inside it, no page it was led to. */
function comesFromOurPage({ sender, senderFrame }: IpcMainInvokeEvent): boolean {
  return senderFrame !== null && senderFrame === sender.mainFrame && isWindowAddress(senderFrame.url);
}
