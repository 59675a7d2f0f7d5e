import { defaultSettings, type Settings } from '@latchwork/core/bridge/settings';
import { callHost, hostStore } from './host';
import { appStore } from './store';
import { type ViewState, emptyView } from './view';

/** What of the view is remembered, in the words of the settings file. */
export const settingsOf = (view: ViewState, wireSizeUnit: Settings['wireSizeUnit']): Settings => ({
  theme: view.theme,
  lengthUnit: view.lengthUnit === 'in' ? 'inch' : 'mm',
  wireSizeUnit,
  panelSizesPx: { ...view.panelSizesPx },
});

export const viewOf = (settings: Settings): Pick<ViewState, 'theme' | 'lengthUnit' | 'panelSizesPx'> => ({
  theme: settings.theme,
  lengthUnit: settings.lengthUnit === 'inch' ? 'in' : 'mm',
  panelSizesPx: { ...emptyView.panelSizesPx, ...settings.panelSizesPx },
});

const WRITE_AFTER_MS = 500;

/** Takes over what is remembered, then writes every change of it, a moment later. Returns how to stop. */
export async function keepSettings(): Promise<() => void> {
  const settings = (hostStore.getState().client && (await callHost('settings:get', {}))) ?? defaultSettings;
  appStore.getState().setView(viewOf(settings));
  let written = JSON.stringify(settings);
  let timer = 0;
  const stop = appStore.subscribe((state, before) => {
    if (state.view === before.view || !hostStore.getState().client) return;
    clearTimeout(timer);
    timer = window.setTimeout(() => {
      const now = settingsOf(appStore.getState().view, settings.wireSizeUnit);
      const text = JSON.stringify(now);
      if (text === written) return;
      written = text;
      void callHost('settings:set', now);
    }, WRITE_AFTER_MS);
  });
  return () => {
    clearTimeout(timer);
    stop();
  };
}
