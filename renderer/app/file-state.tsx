import { Button } from '../ui/button';
import { reloadFromDisk } from './files/open';
import { holderText } from './files/hold-file';
import { saveAs } from './files/save';
import { mergeWithDisk } from './files/settle-on-disk';
import { askChoice } from '../ui/ask-choice';
import { isDirty, useApp } from './store';

const two = (n: number): string => String(n).padStart(2, '0');

/** Where the work is: on disk and since when, only here, or overtaken on disk. */
export function FileState() {
  const dirty = useApp(isDirty);
  const { token, name, savedAt, changedOnDisk, heldBy } = useApp((s) => s.document);
  if (changedOnDisk)
    return (
      <Button look="link" className="file-state" data-tone="warn" onClick={() => void settle()}>
        changed on disk
      </Button>
    );
  if (heldBy)
    return (
      <span className="file-state" data-tone="warn" title={holderText(heldBy)} role="status">
        open elsewhere: {heldBy.user}
      </span>
    );
  const text = dirty
    ? token === null
      ? 'not saved yet'
      : 'changes not saved'
    : savedAt
      ? `saved ${two(savedAt.getHours())}:${two(savedAt.getMinutes())}`
      : token === null
        ? 'not saved yet'
        : 'saved';
  return (
    <span className="file-state" data-tone={dirty ? 'open' : undefined} title={name} role="status">
      {text}
    </span>
  );
}

async function settle(): Promise<void> {
  const choice = await askChoice(
    'The file on disk is not the one you opened',
    'Someone else has written it, or moved it away. Your work is still here and not on disk.',
    [
      { answer: 'theirs', text: 'Read theirs' },
      { answer: 'mine', text: 'Save mine under another name' },
      { answer: 'merge', text: 'Compare and merge', primary: true },
    ],
  );
  if (choice === 'theirs') await reloadFromDisk();
  if (choice === 'mine') await saveAs();
  if (choice === 'merge') await mergeWithDisk();
}
