import { callHost, hostStore } from '../host';
import { appStore } from '../store';

/** Looks whether the open file was changed by someone else: now and then, and when the window comes back. Returns how to stop. */
export function watchDisk(everyMs = 10_000): () => void {
  const look = async (): Promise<void> => {
    const { token, revision, changedOnDisk } = appStore.getState().document;
    if (!hostStore.getState().client || token === null || revision === null || changedOnDisk) return;
    const answer = await callHost('project:on-disk', { token, revision });
    const still = appStore.getState().document;
    if (still.token !== token || still.revision !== revision) return;
    if (answer?.status === 'changed' || answer?.status === 'gone')
      appStore.getState().setDocument({ changedOnDisk: true });
  };
  const timer = setInterval(() => {
    if (document.visibilityState === 'visible') void look();
  }, everyMs);
  const onFocus = (): void => void look();
  window.addEventListener('focus', onFocus);
  return () => {
    clearInterval(timer);
    window.removeEventListener('focus', onFocus);
  };
}
