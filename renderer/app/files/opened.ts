import type { Opened } from '@latchwork/core/bridge/answers';
import { openProblemText } from '@latchwork/core/model/problem';
import { parseProject } from '@latchwork/core/model/parse';
import { say } from '../../ui/toasts';
import { refreshRecent } from '../host';
import { appStore } from '../store';
import { holdFile, letGo } from './hold-file';
import { offerRescue } from './rescue';

export interface OpenedAs {
  /** Text that is newer than its file, or has none: a backup. */
  readonly unsaved?: boolean;
  readonly document?: string;
}

/** Takes a text from the host as the open document. A text that cannot be read changes nothing. */
export async function takeOpened(
  opened: Opened,
  { unsaved = false, document }: OpenedAs = {},
): Promise<boolean> {
  const parsed = parseProject(opened.text);
  if (!parsed.ok) {
    const text = `${opened.name} was not opened, and was not changed. ${openProblemText(parsed.problem)}`;
    const damaged = parsed.problem.code !== 'not-ours' && parsed.problem.code !== 'too-new';
    say('problem', text, damaged ? { text: 'See what can be rescued', run: () => void offerRescue(opened) } : undefined); // prettier-ignore
    return false;
  }
  const project = parsed.value;
  await letGo();
  const onDisk = opened.token !== null && !unsaved ? project : null;
  appStore.getState().open(project, {
    ...(document ? { id: document } : {}),
    token: opened.token,
    name: opened.name,
    revision: opened.revision,
    // Another object than the one on the sheet: the work counts as not saved.
    savedProject: unsaved ? { ...project } : onDisk,
    base: onDisk,
  });
  if (opened.token !== null) {
    await refreshRecent();
    await holdFile();
  }
  return true;
}
