import { appStore } from './store';

/** Writes the chosen theme to the page's root, where the tokens look for it. Returns how to stop. */
export function keepTheme(): () => void {
  const apply = (): void => {
    const { theme } = appStore.getState().view;
    if (theme === 'system') delete document.documentElement.dataset.theme;
    else document.documentElement.dataset.theme = theme;
  };
  apply();
  return appStore.subscribe((state, before) => {
    if (state.view.theme !== before.view.theme) apply();
  });
}
