import { commonGround } from '@latchwork/core/merge/common-ground';
import { parseProject } from '@latchwork/core/model/parse';
import { openProblemText } from '@latchwork/core/model/problem';
import { askChoice } from '../../ui/ask-choice';
import { say } from '../../ui/toasts';
import { callHost } from '../host';
import { appStore } from '../store';
import { askMerge } from './merge-dialog';

export type Settled = 'merged' | 'over' | 'other' | null;

/** What to do with a file that is not the one that was opened. `merged`: the work here now holds theirs too. */
export async function settleOnDisk(): Promise<Settled> {
  const choice = await askChoice(
    'The file was changed by someone else',
    'It is not the one that was opened here, so nothing was written. You can look at what differs and merge both, keep both by saving yours under another name, or write over theirs.',
    [
      { answer: 'over', text: 'Write over theirs' },
      { answer: 'other', text: 'Save under another name' },
      { answer: 'merge', text: 'Compare and merge', primary: true },
    ],
  );
  if (choice !== 'merge') return choice;
  return (await mergeWithDisk()) ? 'merged' : null;
}

/** Reads the file again and puts its changes and those of this window together, as one step that can be undone. */
export async function mergeWithDisk(): Promise<boolean> {
  const { document, history } = appStore.getState();
  if (document.token === null) return false;
  const answer = await callHost('project:open', { from: 'token', token: document.token });
  if (answer?.status !== 'opened') {
    if (answer?.status === 'failed') say('problem', `Not merged. ${answer.reason} Your work is still here.`);
    return false;
  }
  const theirs = parseProject(answer.text);
  if (!theirs.ok) {
    say('problem', `Not merged. ${openProblemText(theirs.problem)} Your work is still here.`);
    return false;
  }
  const mine = history.project;
  if (theirs.value.id !== mine.id) {
    say('problem', 'Not merged: the file holds another project now. Save yours under another name.');
    return false;
  }
  const base = document.base ?? commonGround(mine, theirs.value);
  const project = await askMerge({ base, mine, theirs: theirs.value });
  if (!project) return false;
  if (appStore.getState().history.project !== mine) {
    say('problem', 'Not merged: the project was changed meanwhile. Try again.');
    return false;
  }
  const { dispatch, setDocument } = appStore.getState();
  if (dispatch({ id: 'project.take', args: { project } })) return false;
  setDocument({
    revision: answer.revision,
    base: theirs.value,
    savedProject: theirs.value,
    changedOnDisk: false,
  });
  return true;
}
