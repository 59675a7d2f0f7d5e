import { AID_NOT_AUTHORITY } from '@latchwork/core/exports/cautions';
import { openOverlay } from '../../app/overlays';
import { appStore, useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { CheckField } from '../../ui/check-field';
import { TextField } from '../../ui/text-field';
import { attempt } from '../inspector/fields';
import { Section } from '../inspector/section';
import { LabelMethodFields } from './label-method';
import { LimitSetChoice } from './limit-set-choice';
import { LimitTable } from './limit-table';
import { LimitTables } from './limit-tables';
import { Revisions } from './revisions';
import { Signals } from './signals';
import { TitleBlockFields } from './title-block-fields';

/** The project itself: what the inspector shows while nothing is selected. */
export function ProjectCard() {
  const { notes, regulated, limitSet, signals, revisions, labels } = useApp((s) => s.history.project);
  return (
    <>
      <Section title="Title block">
        <TitleBlockFields />
      </Section>
      <Section title={`Signals (${signals.length})`}>
        <Signals />
      </Section>
      <Section title={`Labels (${labels.length})`} open={false}>
        <LabelMethodFields />
      </Section>
      <Section title={`Revisions (${revisions.length})`} open={false}>
        <Revisions />
      </Section>
      <Section title={`Limits: ${limitSet.name}, revision ${limitSet.revision}`} open={false}>
        <div className="card-actions">
          <Button onClick={() => openOverlay('limits')}>Open the page of limit sets</Button>
        </div>
        <LimitSetChoice />
        <LimitTables />
        <LimitTable />
        <CheckField
          label="Regulated use: safety findings need two approvers"
          checked={regulated}
          choose={(on) =>
            appStore.getState().dispatch({ id: 'project.edit', args: { change: { regulated: on } } })
          }
        />
      </Section>
      <Section title="Notes" open={notes.length > 0}>
        {notes.map((note, i) => (
          <TextField
            key={`${i} ${note}`}
            label={`Note ${i + 1}`}
            stack
            multiline
            value={note}
            commit={(text) =>
              attempt({
                id: 'project.edit',
                args: { change: { notes: text ? notes.with(i, text) : notes.toSpliced(i, 1) } },
              })
            }
          />
        ))}
        <div className="card-actions">
          <Button
            onClick={() =>
              attempt({ id: 'project.edit', args: { change: { notes: [...notes, 'New note'] } } })
            }
          >
            Add a note
          </Button>
        </div>
      </Section>
      <p className="card-caution second">{AID_NOT_AUTHORITY}</p>
    </>
  );
}
