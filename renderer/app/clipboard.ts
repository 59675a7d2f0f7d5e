import { Clip, copyObjects } from '@latchwork/core/commands/clip';
import { say } from '../ui/toasts';
import { selectedIds } from './selection';
import { appStore } from './store';

/** What was copied last, for a paste from a menu: reading the system's clipboard needs leave, a paste event does not. */
let last = '';
let pastes = 0;
const STEP_MM = 10;

/** The selected objects as text, so that they can be pasted into another window; null when nothing can be copied. */
export function clipText(): string | null {
  const { history, view } = appStore.getState();
  const ids = new Set(selectedIds(history.project, view.selection));
  const clip = copyObjects(history.project, ids);
  if (clip.connectors.length + clip.equipment.length + clip.splices.length === 0) return null;
  return JSON.stringify(clip);
}

/** Puts the selected objects on the clipboard. */
export async function copySelection(): Promise<boolean> {
  const text = clipText();
  if (text === null) {
    say(
      'plain',
      'Select a connector, splice or piece of equipment to copy it; wires between them come along.',
    );
    return false;
  }
  rememberCopy(text);
  // Denied in some hosts: then only this window can paste it.
  await navigator.clipboard.writeText(text).catch(() => undefined);
  return true;
}

export function rememberCopy(text: string): void {
  last = text;
  pastes = 0;
}

export async function pasteClipboard(): Promise<void> {
  const text = await navigator.clipboard.readText().catch(() => last);
  pasteText(text.includes('latchwork-clip') ? text : last);
}

/** Puts objects from a clipboard's text on the sheet, a little to the side, and selects them. */
export function pasteText(text: string): void {
  const clip = parseClip(text);
  if (!clip) {
    say('plain', 'The clipboard holds no objects of a harness.');
    return;
  }
  if (text !== last) rememberCopy(text);
  pastes += 1;
  pasteClip(clip, STEP_MM * pastes);
}

/** Copies the selected objects beside themselves, without touching the clipboard. */
export function duplicateSelection(): void {
  const text = clipText();
  const clip = text === null ? null : parseClip(text);
  if (clip) pasteClip(clip, STEP_MM);
}

function pasteClip(clip: Clip, by: number): void {
  const { dispatch, select } = appStore.getState();
  const named = [...clip.connectors, ...clip.splices, ...clip.equipment];
  const ids = Object.fromEntries(named.map((o) => [o.id, crypto.randomUUID()]));
  const refused = dispatch({ id: 'objects.paste', args: { clip, offset: { x: by, y: by }, ids } });
  if (!refused) select(Object.values(ids));
}

function parseClip(text: string): Clip | null {
  try {
    const parsed = Clip.safeParse(JSON.parse(text));
    return parsed.success ? parsed.data : null;
  } catch {
    return null;
  }
}
