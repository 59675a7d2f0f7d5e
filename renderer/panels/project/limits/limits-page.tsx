import { useState } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import type { LimitSet } from '@latchwork/core/model/limit-set';
import { LIMIT_SETS } from '@latchwork/core/model/limit-sets/index';
import { X } from 'lucide-react';
import { openOverlay, useOverlay } from '../../../app/overlays';
import { useApp } from '../../../app/store';
import { Button } from '../../../ui/button';
import { askChoice } from '../../../ui/ask-choice';
import { TextField, needed } from '../../../ui/text-field';
import { say } from '../../../ui/toasts';
import { attempt } from '../../inspector/fields';
import { LimitEditor } from './limit-editor';
import { LimitsEffect } from './limits-effect';
import { LimitsGrid } from './limits-grid';
import { limitLines } from './limits-draft';
import './limits-page.css';

/** The limits that the rules compare with, on a page of their own: read, compared with another set, changed as a draft. */
export function LimitsPage() {
  if (useOverlay() !== 'limits') return null;
  return <OpenPage />;
}

function OpenPage() {
  const current = useApp((s) => s.history.project.limitSet);
  const [draft, setDraft] = useState(current);
  const [againstName, setAgainst] = useState(LIMIT_SETS.find((s) => s.name !== current.name)?.name ?? '');
  const lines = limitLines(draft);
  const [chosen, choose] = useState(lines[0]?.id ?? '');
  const against = LIMIT_SETS.find((s) => s.name === againstName) ?? current;
  const line = lines.find((l) => l.id === chosen) ?? lines[0];
  const isDirty = JSON.stringify(draft) !== JSON.stringify(current);
  const close = async (): Promise<void> => {
    if (!isDirty || (await mayDiscard())) openOverlay(null);
  };
  const apply = (): void => {
    const refused = attempt({ id: 'project.use-limit-set', args: { limitSet: draft } });
    if (refused === null) say('done', `The project goes by ${draft.name}, revision ${draft.revision}.`);
    else say('problem', refused);
  };
  return (
    <ModalOverlay
      className="dialog-back limits-back"
      isOpen
      isDismissable
      onOpenChange={(open) => {
        if (!open) void close();
      }}
    >
      <Modal className="dialog-box limits-box">
        <Dialog className="dialog limits">
          <header>
            <Heading slot="title" level={2}>
              Limit sets
            </Heading>
            <div className="limits-name">
              <TextField
                label="Set of this project"
                value={draft.name}
                commit={needed('The name of the set', (name) => (setDraft({ ...draft, name }), null))}
              />
              <TextField
                label="Revision"
                value={draft.revision}
                commit={(revision) => (setDraft({ ...draft, revision }), null)}
              />
            </div>
            <Button look="icon" aria-label="Close" onClick={() => void close()}>
              <X size={15} aria-hidden />
            </Button>
          </header>
          <div className="limits-columns">
            <LimitsGrid
              draft={draft}
              against={against}
              againstName={againstName}
              setAgainst={setAgainst}
              current={current}
              chosen={line?.id ?? ''}
              choose={choose}
            />
            <div className="limits-side">
              {line ? (
                <LimitEditor key={line.id} line={line} draft={draft} current={current} change={setDraft} />
              ) : null}
              <LimitsEffect draft={draft} isDirty={isDirty} />
            </div>
          </div>
          <footer>
            <p className="second">
              {isDirty
                ? 'A draft: the project goes by its old limits until you apply it.'
                : 'The limits that this project goes by. They are entered, not given: check each in its source.'}
            </p>
            <TakeSet draft={draft} take={setDraft} />
            <Button disabled={!isDirty} onClick={() => setDraft(current)}>
              Discard the draft
            </Button>
            <Button look="primary" disabled={!isDirty} onClick={apply}>
              Apply to the project
            </Button>
          </footer>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

/** Makes a shipped set the draft. */
function TakeSet({ draft, take }: { draft: LimitSet; take: (set: LimitSet) => void }) {
  return LIMIT_SETS.filter((s) => JSON.stringify(s) !== JSON.stringify(draft)).map((s) => (
    <Button key={s.name} onClick={() => take(s)}>
      Draft from {s.name}
    </Button>
  ));
}

const mayDiscard = async (): Promise<boolean> =>
  (await askChoice('Leave the draft?', 'The limits that you changed are not applied to the project.', [
    { answer: 'leave', text: 'Leave it' },
    { answer: 'stay', text: 'Stay here', primary: true },
  ])) === 'leave';
