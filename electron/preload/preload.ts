import { type Channel, channels } from '@latchwork/core/bridge/channels';
import { contextBridge, ipcRenderer } from 'electron';

contextBridge.exposeInMainWorld(
  'latchwork',
  Object.freeze({
    invoke: (channel: Channel, request: unknown): Promise<unknown> =>
      channels.includes(channel)
        ? ipcRenderer.invoke(channel, request)
        : Promise.reject(new Error('Unknown channel.')),
  }),
);
