import { newProject } from '@latchwork/core/model/new-project';
import { askChoice } from '../../ui/ask-choice';
import { say } from '../../ui/toasts';
import { callHost, hostStore } from '../host';
import { appStore, isDirty } from '../store';
import { askListedFile } from './ask-listed-file';
import { takeOpened } from './opened';
import { save } from './save';

/** Before other work takes the place of this one: true when nothing would be lost, or the user does not mind. */
export async function mayReplace(): Promise<boolean> {
  const state = appStore.getState();
  if (!isDirty(state)) return true;
  const choice = await askChoice(
    'Save your changes first?',
    `${state.history.project.titleBlock.title || state.document.name} has changes that are not saved.`,
    [
      { answer: 'discard', text: 'Do not save' },
      { answer: 'save', text: 'Save', primary: true },
    ],
  );
  if (choice === 'save') return save();
  if (choice === 'discard') void callHost('backup:discard', { document: state.document.id });
  return choice === 'discard';
}

/** An empty project in place of the open one. */
export async function startNew(): Promise<void> {
  if (!(await mayReplace())) return;
  const id = crypto.randomUUID();
  appStore.getState().open(newProject({ id, revisionId: crypto.randomUUID() }), {});
  appStore.getState().setView({ page: 'diagram' });
}

export async function openFile(): Promise<void> {
  if (!(await mayReplace())) return;
  if (hostStore.getState().info?.dialogs === 'native') return take(await callHost('project:open-dialog', {}));
  const name = await askListedFile();
  if (name !== null) await take(await callHost('project:open', { from: 'folder', name }));
}

export async function openRecent(id: string): Promise<void> {
  if (await mayReplace()) await take(await callHost('project:open', { from: 'recent', id }));
}

export async function openDemo(demo: string): Promise<void> {
  if (await mayReplace()) await take(await callHost('project:new-from-demo', { demo }));
}

/** Reads the file of the open document again, after it was changed on disk. */
export async function reloadFromDisk(): Promise<void> {
  const { token } = appStore.getState().document;
  if (token !== null && (await mayReplace()))
    await take(await callHost('project:open', { from: 'token', token }));
}

type Answer = Awaited<ReturnType<typeof callHost<'project:open'>>>;

async function take(answer: Answer): Promise<void> {
  if (answer?.status === 'opened') await takeOpened(answer);
  if (answer?.status === 'failed') say('problem', answer.reason);
}
