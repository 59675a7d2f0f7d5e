import { useEffect, useState } from 'react';
import type { FolderAnswer } from '@latchwork/core/bridge/answers';
import { Button } from '../../ui/button';
import { DialogFrame, ask } from '../../ui/dialogs';
import { VirtualList } from '../../ui/virtual-list';
import { callHost } from '../host';
import './files.css';

type Listed = Extract<FolderAnswer, { status: 'listed' }>;

export interface ListedFiles {
  readonly title: string;
  readonly channel: 'project:list-folder' | 'catalogue:list-folder';
  readonly what: string;
}

const PROJECTS: ListedFiles = { title: 'Open project', channel: 'project:list-folder', what: 'project' };

/** Lets the user pick a file of the working folder, for hosts without a dialog of the system. */
export const askListedFile = (files = PROJECTS): Promise<string | null> =>
  ask<string>((done) => <ListedFileDialog files={files} done={done} />, { wide: true });

function ListedFileDialog({ files, done }: { files: ListedFiles; done: (name: string | null) => void }) {
  const [folder, setFolder] = useState<FolderAnswer | null>(null);
  const [chosen, setChosen] = useState<string | null>(null);
  useEffect(() => {
    void callHost(files.channel, {}).then((answer) => answer && setFolder(answer));
  }, [files]);
  return (
    <DialogFrame
      title={files.title}
      buttons={
        <>
          <Button onClick={() => done(null)}>Cancel</Button>
          <Button look="primary" disabled={chosen === null} onClick={() => done(chosen)}>
            Open
          </Button>
        </>
      }
    >
      {folder === null ? (
        <p className="second">Looking into the working folder …</p>
      ) : folder.status === 'failed' ? (
        <p>{folder.reason}</p>
      ) : (
        <Files what={files.what} folder={folder} chosen={chosen} choose={setChosen} open={done} />
      )}
    </DialogFrame>
  );
}

interface FilesProps {
  readonly what: string;
  readonly folder: Listed;
  readonly chosen: string | null;
  readonly choose: (name: string) => void;
  readonly open: (name: string) => void;
}

function Files({ what, folder, chosen, choose, open }: FilesProps) {
  return (
    <>
      <p className="second file-place">{folder.place}</p>
      {folder.files.length === 0 ? (
        <p>There is no {what} in this folder yet.</p>
      ) : (
        <div className="file-list">
          <VirtualList
            label={`Files: ${what}`}
            items={folder.files}
            keyOf={(f) => f.name}
            heightOf={() => 32}
            isSelected={(f) => f.name === chosen}
            onChoose={(f) => choose(f.name)}
            onAct={(f) => open(f.name)}
            render={(f) => (
              <div className="file-row">
                <span>{f.name}</span>
                <span className="second mono">{Math.ceil(f.bytes / 1024)} kB</span>
                <span className="second mono">{dateText(f.modified)}</span>
              </div>
            )}
          />
        </div>
      )}
    </>
  );
}

/** "2026-03-14 10:42", in the time of this machine. */
export function dateText(iso: string): string {
  const d = new Date(iso);
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${d.getFullYear()}-${two(d.getMonth() + 1)}-${two(d.getDate())} ${two(d.getHours())}:${two(d.getMinutes())}`;
}
