import { serialiseProject } from '@latchwork/core/model/serialise';
import { askChoice } from '../../ui/ask-choice';
import { say } from '../../ui/toasts';
import { callHost, hostStore, refreshRecent } from '../host';
import { appStore } from '../store';
import { askFileName } from './ask-file-name';
import { holdFile, letGo, mayWrite } from './hold-file';
import { settleOnDisk } from './settle-on-disk';

/** Saves under the document's own name; asks for one where it has none. True when it is on disk. */
export async function save(): Promise<boolean> {
  const { document, history } = appStore.getState();
  if (document.token === null) return saveAs();
  const held = await mayWrite();
  if (held !== 'write') return held === 'other' ? saveAs() : false;
  return saveOver(document.token, history.project, document.revision);
}

async function saveOver(token: string, project: Saved, revision: string | null): Promise<boolean> {
  const answer = await callHost('project:save', { token, text: serialiseProject(project), revision });
  if (!answer) return false;
  if (answer.status === 'saved') {
    markSaved(project, { revision: answer.revision });
    return true;
  }
  if (answer.status === 'failed') {
    say('problem', `Not saved. ${answer.reason} Your work is still here.`);
    return false;
  }
  appStore.getState().setDocument({ changedOnDisk: true });
  const settled = await settleOnDisk();
  if (settled === 'merged') return save();
  if (settled === 'other') return saveAs();
  return settled === 'over' ? saveOver(token, project, null) : false;
}

/** Asks for a name and saves under it. */
export async function saveAs(): Promise<boolean> {
  const { document, history } = appStore.getState();
  const { title } = history.project.titleBlock;
  const suggestedName = document.token === null ? title || document.name : document.name;
  const native = hostStore.getState().info?.dialogs === 'native';
  let name = native ? null : await askFileName('Save as', suggestedName, '.latchwork');
  if (!native && name === null) return false;
  let replace = false;
  for (;;) {
    // As it is now: the question for a name may have stood there for long.
    const { project } = appStore.getState().history;
    const answer = await callHost('project:save-as', {
      suggestedName,
      text: serialiseProject(project),
      name,
      replace,
    });
    if (!answer || answer.status === 'cancelled') return false;
    if (answer.status === 'failed') {
      say('problem', `Not saved. ${answer.reason} Your work is still here.`);
      return false;
    }
    if (answer.status === 'saved') {
      await letGo();
      markSaved(project, { token: answer.token, name: answer.name, revision: answer.revision });
      await holdFile();
      return true;
    }
    const over = await askReplace(answer.name);
    if (over === null) return false;
    replace = over === 'replace';
    if (!replace) name = await askFileName('Save as', answer.name, '.latchwork');
    if (name === null) return false;
  }
}

/** A name is taken: write over that file, or choose another name. */
export const askReplace = (name: string): Promise<'replace' | 'rename' | null> =>
  askChoice('This name is taken', `${name} exists already. Writing over it cannot be undone.`, [
    { answer: 'replace', text: 'Write over it' },
    { answer: 'rename', text: 'Choose another name', primary: true },
  ]);

type Saved = Parameters<typeof serialiseProject>[0];

/** What was sent is what is on disk; edits made meanwhile stay unsaved. */
function markSaved(savedProject: Saved, file: { token?: string; name?: string; revision: string }): void {
  const { document, setDocument } = appStore.getState();
  setDocument({ ...file, savedProject, base: savedProject, savedAt: new Date(), changedOnDisk: false });
  void callHost('backup:discard', { document: document.id });
  void refreshRecent();
}
