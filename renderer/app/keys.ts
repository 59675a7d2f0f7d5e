import { tinykeys } from 'tinykeys';
import { dialogStore } from '../ui/dialogs';
import { ACTIONS } from './actions/index';
import { clipText, pasteText, rememberCopy } from './clipboard';
import { overlayStore } from './overlays';
import { appStore } from './store';

/** Whether what is typed goes into a text. */
export const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.closest('input, textarea, select, [contenteditable]') !== null;

/** Binds the keys of all actions, and the clipboard's events. Returns how to stop. */
export function bindKeys(): () => void {
  const bindings: Record<string, (event: KeyboardEvent) => void> = {};
  for (const action of ACTIONS) {
    if (!action.keys || action.byEvent) continue;
    bindings[action.keys] = (event) => {
      if (dialogStore.getState().open.length > 0 || event.defaultPrevented) return;
      // Behind an overlay nothing is deleted or turned round; one may still go to another.
      const hidden = overlayStore.getState().open !== null;
      if ((isTyping(event.target) || hidden) && !action.whileTyping) return;
      event.preventDefault();
      if (action.enabled?.(appStore.getState()) ?? true) void action.run();
    };
  }
  // Second keys that hands know.
  if (bindings['$mod+Shift+KeyZ']) bindings['$mod+KeyY'] = bindings['$mod+Shift+KeyZ'];
  if (bindings['Delete']) bindings['Backspace'] = bindings['Delete'];
  const stopKeys = tinykeys(window, bindings);

  const outside = (event: ClipboardEvent): boolean =>
    isTyping(event.target) ||
    event.defaultPrevented ||
    dialogStore.getState().open.length > 0 ||
    overlayStore.getState().open !== null;
  const onCopy = (event: ClipboardEvent): void => {
    if (outside(event) || !getSelection()?.isCollapsed) return;
    const text = clipText();
    if (text === null) return;
    event.preventDefault();
    event.clipboardData?.setData('text/plain', text);
    rememberCopy(text);
    if (event.type === 'cut') void ACTIONS.find((a) => a.id === 'edit.delete')?.run();
  };
  const onPaste = (event: ClipboardEvent): void => {
    if (outside(event)) return;
    event.preventDefault();
    pasteText(event.clipboardData?.getData('text/plain') ?? '');
  };
  document.addEventListener('copy', onCopy);
  document.addEventListener('cut', onCopy);
  document.addEventListener('paste', onPaste);
  return () => {
    stopKeys();
    document.removeEventListener('copy', onCopy);
    document.removeEventListener('cut', onCopy);
    document.removeEventListener('paste', onPaste);
  };
}
