import { type KeyboardEvent, useEffect, useEffectEvent, useState } from 'react';

/** Takes the text over. Null when it was taken, else why not, in words. */
export type Commit = (text: string) => string | null;

export interface DraftText {
  readonly text: string;
  readonly problem: string | null;
  readonly change: (text: string) => void;
  readonly finish: () => void;
  readonly onKeyDown: (event: KeyboardEvent<HTMLInputElement | HTMLTextAreaElement>) => void;
}

/**
 * Text while it is being typed. It is committed on Enter and on leaving the field; Escape brings the old one back. Text that
 * is refused stays, with the reason. What is still open when the field goes away (another object was selected) is committed.
 */
export function useDraftText(value: string, commit: Commit, multiline = false): DraftText {
  const [draft, setDraft] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);

  const finish = (): void => {
    if (draft === null) return;
    const refused = draft === value ? null : commit(draft.trim());
    setProblem(refused);
    if (refused === null) setDraft(null);
  };
  const finishOnLeave = useEffectEvent(() => {
    if (draft !== null && draft !== value) commit(draft.trim());
  });
  useEffect(() => () => finishOnLeave(), []);

  return {
    text: draft ?? value,
    problem,
    change: setDraft,
    finish,
    onKeyDown(event) {
      if (event.key === 'Enter' && (!multiline || event.ctrlKey || event.metaKey)) {
        event.preventDefault();
        finish();
      } else if (event.key === 'Escape' && draft !== null) {
        event.stopPropagation();
        setDraft(null);
        setProblem(null);
      }
    },
  };
}
