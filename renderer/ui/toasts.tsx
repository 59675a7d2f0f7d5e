import { X } from 'lucide-react';
import { createStore, useStore } from 'zustand';
import { Button } from './button';

export interface Toast {
  readonly id: number;
  readonly tone: 'done' | 'problem' | 'plain';
  readonly text: string;
  readonly action?: { readonly text: string; readonly run: () => void } | undefined;
}

/** Short messages at the corner. Not a library: those write styles into the page, which the content policy refuses. */
export const toastStore = createStore<{ readonly toasts: readonly Toast[] }>()(() => ({ toasts: [] }));

let count = 0;
const SHOWN_MS = { done: 4_000, plain: 6_000, problem: 12_000 } as const;

/** Says something without asking anything. A problem stays longer; the same text is not said twice at a time. */
export function say(tone: Toast['tone'], text: string, action?: Toast['action']): void {
  const id = ++count;
  toastStore.setState((s) => ({
    toasts: [...s.toasts.filter((t) => t.text !== text), { id, tone, text, action }].slice(-4),
  }));
  setTimeout(() => dismiss(id), SHOWN_MS[tone]);
}

const dismiss = (id: number): void =>
  toastStore.setState((s) => ({ toasts: s.toasts.filter((t) => t.id !== id) }));

/** Draws the messages; a screen reader speaks them as they come. */
export function Toasts() {
  const toasts = useStore(toastStore, (s) => s.toasts);
  return (
    <div className="toasts" role="log" aria-label="Messages" aria-live="polite">
      {toasts.map((t) => (
        <div key={t.id} className="toast" data-tone={t.tone}>
          <p>{t.text}</p>
          {t.action ? (
            <Button
              look="plain"
              onClick={() => {
                dismiss(t.id);
                t.action?.run();
              }}
            >
              {t.action.text}
            </Button>
          ) : null}
          <Button look="icon" aria-label="Dismiss" onClick={() => dismiss(t.id)}>
            <X size={14} aria-hidden />
          </Button>
        </div>
      ))}
    </div>
  );
}
