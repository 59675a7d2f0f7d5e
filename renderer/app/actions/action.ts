import type { AppState } from '../store';

export type ActionGroup = 'File' | 'Edit' | 'Draw' | 'Arrange' | 'Formboard' | 'Go to' | 'View' | 'Help';

/** Something the user can do from menu, palette or keyboard; the table of them is index.ts. */
export interface Action {
  readonly id: string;
  readonly label: string;
  readonly group: ActionGroup;
  /** In the notation of tinykeys: "$mod+Shift+KeyZ". `$mod` is Ctrl, on a Mac Command. */
  readonly keys?: string;
  /** The browser's own event carries it out (copy, paste): the keys are shown, not bound. */
  readonly byEvent?: boolean;
  /** Also while text is being typed. */
  readonly whileTyping?: boolean;
  readonly enabled?: (state: AppState) => boolean;
  readonly run: () => void | Promise<unknown>;
}

const mac = (): boolean => /mac/i.test(navigator.platform);

/** Keys for people: "Ctrl+Shift+Z", on a Mac with its signs. */
export function keysText(keys: string): string {
  return keys
    .split('+')
    .map((key) => {
      if (key === '$mod') return mac() ? '⌘' : 'Ctrl';
      if (key === 'Shift' && mac()) return '⇧';
      if (key === 'Equal') return '+';
      if (key === 'Minus') return '−';
      if (key === 'Delete') return 'Del';
      return key.replace(/^(Key|Digit)/, '');
    })
    .join(mac() ? '' : '+');
}
