import { useEffect, useRef, useSyncExternalStore, type ReactNode } from 'react';
import { useStore } from 'zustand';
import { Button } from '../ui/button';
import { toScreen } from './camera';
import type { Interaction } from './interaction';
import type { Viewport } from './viewport';

const STILL = { x: 0, y: 0, pxPerMm: 1 };
const NEVER = () => () => {};
const NOWHERE = () => STILL;

/** How long a note stays, ms. */
const NOTE_MS = 5000;

/** A refusal with a way to insist, and short notes why a gesture came to nothing; both stand where it happened. */
export function SheetQuestion({
  interaction,
  viewport,
}: {
  interaction: Interaction;
  viewport: Viewport;
}): ReactNode {
  const question = useStore(interaction.state, (s) => s.question);
  const note = useStore(interaction.state, (s) => s.note);
  const asked = question !== null || note !== null;
  // Follows the camera only while there is something to place.
  const camera = useSyncExternalStore(asked ? viewport.watch : NEVER, asked ? viewport.camera : NOWHERE);
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (question) first.current?.focus();
  }, [question]);
  useEffect(() => {
    if (!note) return;
    const timer = setTimeout(() => interaction.state.setState({ note: null }), NOTE_MS);
    return () => clearTimeout(timer);
  }, [note, interaction]);
  const place = (at: { x: number; y: number }): { left: number; top: number } => {
    const p = toScreen(camera, at);
    return { left: Math.max(8, p.x + 12), top: Math.max(8, p.y + 12) };
  };
  if (question)
    return (
      <div
        className="sheet-float sheet-question"
        role="alertdialog"
        aria-label="Refused"
        style={place(question.at)}
      >
        <p>{question.reason}</p>
        <menu>
          <Button ref={first} onClick={() => interaction.answer(null)}>
            Leave apart
          </Button>
          <Button onClick={() => interaction.answer(question.anyway.call)}>{question.anyway.label}</Button>
        </menu>
      </div>
    );
  if (note)
    return (
      <div className="sheet-float sheet-tip" role="status" style={place(note.at)}>
        {note.reason}
      </div>
    );
  return null;
}
