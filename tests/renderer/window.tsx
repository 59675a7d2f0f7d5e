import axe from 'axe-core';
import { render } from 'vitest-browser-react';
import { bridgeClient } from '@latchwork/core/bridge/client';
import type { Channel } from '@latchwork/core/bridge/channels';
import type { Handlers } from '@latchwork/core/bridge/contract';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { App } from '../../renderer/app/app';
import { hostStore } from '../../renderer/app/host';
import { openOverlay } from '../../renderer/app/overlays';
import { appStore } from '../../renderer/app/store';
import { emptyView } from '../../renderer/app/view';
import { dialogStore } from '../../renderer/ui/dialogs';
import { toastStore } from '../../renderer/ui/toasts';

/** The state of a window that has just been opened, with a tiny project in it. */
export function freshWindow(change?: (t: TinyDraft) => void): void {
  delete document.documentElement.dataset.theme;
  hostStore.setState({ client: null, info: null, demos: [], recent: [] });
  dialogStore.setState({ open: [] });
  toastStore.setState({ toasts: [] });
  openOverlay(null);
  const project = tiny(change);
  appStore.getState().open(project, { name: 'tiny.latchwork' });
  appStore.getState().setView(emptyView);
  appStore.getState().setCatalogue(project.parts);
}

/** The whole window, drawn. */
export async function openWindow() {
  document.querySelector('#frame')?.remove();
  const frame = document.createElement('div');
  frame.id = 'frame';
  frame.style.cssText = 'position: fixed; inset: 0';
  document.body.append(frame);
  return render(<App />, { container: frame });
}

/** A host of the listed kind that answers from these handlers and keeps what it was asked. */
export function fakeHost(handlers: Partial<Handlers>): { asked: { channel: Channel; request: unknown }[] } {
  const asked: { channel: Channel; request: unknown }[] = [];
  const client = bridgeClient({
    invoke(channel, request) {
      asked.push({ channel, request });
      const handler = handlers[channel] as ((r: unknown) => Promise<unknown>) | undefined;
      return handler ? handler(request) : Promise.reject(new Error(`${channel} is not answered here`));
    },
  });
  const info = { version: '0', host: 'browser', platform: 'test', dialogs: 'listed' } as const;
  hostStore.setState({ client, info });
  return { asked };
}

export const project = () => appStore.getState().history.project;

export const idOf = (designator: string): string => {
  const { connectors, wires, equipment, nodes, segments } = project();
  const found = [connectors, wires, equipment, nodes, segments]
    .flat()
    .find((o) => o.designator === designator);
  if (!found) throw new Error(`no ${designator}`);
  return found.id;
};

/** Findings of axe in words: rule and the first places. */
export async function axeFindings(): Promise<string[]> {
  const { violations } = await axe.run(document.body, {
    resultTypes: ['violations'],
    runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  });
  return violations.map(
    (v) =>
      `${v.id}: ${v.nodes
        .slice(0, 3)
        .map((n) => n.html.slice(0, 160))
        .join(' | ')}`,
  );
}
