import type { ConnectorUse } from '@latchwork/core/derive/harness';
import { isMatingHalf } from '@latchwork/core/model/parts/part';
import { useApp } from '../../app/store';
import { CheckField } from '../../ui/check-field';
import { ChoiceField } from '../../ui/choice-field';
import { LengthField } from '../../ui/length-field';
import { NumberField } from '../../ui/number-field';
import { TextField } from '../../ui/text-field';
import { askPart } from '../part-picker';
import { useAllParts } from '../shelf/use-all-parts';
import { Accessories } from './accessories';
import { CavityTable } from './cavity-table';
import { CutOutFields } from './cut-out-fields';
import { DesignatorField, NodeField, attempt, orNull } from './fields';
import { FootprintFields } from './footprint-fields';
import { MatedWith } from './mated-with';
import { PartButton } from './part-button';
import { LabelsHere } from './labels-here';
import { PartFacts } from './part-facts';
import { CardHead, Section } from './section';

type Change = Extract<Parameters<typeof attempt>[0], { id: 'connector.edit' }>['args']['change'];

/** A placed housing or header. */
export function ConnectorCard({ use }: { use: ConnectorUse }) {
  const { connector: c, part } = use.resolved;
  const equipment = useApp((s) => s.history.project.equipment);
  const parts = useAllParts();
  const edit = (change: Change): string | null =>
    attempt({ id: 'connector.edit', args: { ids: [c.id], change } });
  const change = async (): Promise<void> => {
    const halves = parts.filter(isMatingHalf);
    const judge = (p: (typeof halves)[number]) =>
      p.family === part?.family && p.ways === part?.ways
        ? { group: 'Same family and ways', rank: 0, note: undefined }
        : { group: 'All others', rank: 1, note: undefined };
    const answer = await askPart({
      title: `Part of ${c.designator}`,
      parts: halves,
      current: c.part,
      judge: part ? judge : () => ({ group: 'Parts', rank: 0 }),
    });
    if (answer?.part) attempt({ id: 'connector.set-part', args: { id: c.id, part: answer.part } });
  };
  return (
    <>
      <CardHead name={c.designator} kind={part?.kind ?? 'connector'} />
      <Section title="Connector">
        <PartButton
          label="Part"
          name="part"
          part={part}
          choose={() => void change()}
          empty="part not known"
        />
        {part ? <p className="field-hint">{part.description}</p> : null}
        <DesignatorField
          value={c.designator}
          call={(designator) => ({ id: 'connector.edit', args: { ids: [c.id], change: { designator } } })}
        />
        <TextField
          label="Description"
          name="description"
          value={c.description ?? ''}
          commit={(t) => edit({ description: orNull(t) })}
        />
        <ChoiceField
          label="Drawn as"
          name="view"
          value={c.view}
          choices={[
            { value: 'mating-face', text: 'mating face' },
            { value: 'wire-entry-face', text: 'wire-entry face' },
          ]}
          choose={(view) => void edit({ view })}
        />
        <ChoiceField
          label="Wires leave to the"
          name="exit"
          value={c.exit}
          choices={[
            { value: 'left', text: 'left' },
            { value: 'right', text: 'right' },
          ]}
          choose={(exit) => void edit({ exit })}
        />
        <ChoiceField
          label="On"
          name="equipment"
          value={c.equipment ?? ''}
          choices={[
            { value: '', text: 'nothing, it hangs free' },
            ...equipment.map((e) => ({ value: e.id, text: `${e.designator} ${e.description ?? e.kind}` })),
          ]}
          choose={(id) => void edit({ equipment: id || null })}
        />
        <ChoiceField
          label="Supplied with"
          name="supply"
          value={c.supply}
          choices={[
            { value: 'harness', text: 'the harness' },
            { value: 'equipment', text: 'the equipment' },
          ]}
          choose={(supply) => void edit({ supply })}
        />
        <NodeField value={c.node} choose={(node) => void edit({ node })} />
        {c.node ? (
          <NumberField
            label="Turned there to"
            name="formboardAngleDeg"
            value={c.formboardAngleDeg}
            placeholder="in line with its run"
            hint="degrees of the mating axis, clockwise from right"
            commit={(toDeg) => attempt({ id: 'connector.turn', args: { ids: [c.id], toDeg } })}
          />
        ) : null}
      </Section>
      <Section title="Mating">
        <MatedWith use={use} />
        <CheckField
          label="Stays unmated on purpose"
          name="unmated"
          checked={c.unmated === true}
          choose={(on) => void edit({ unmated: on ? true : null })}
        />
        <NumberField
          label="Planned matings"
          name="plannedCycles"
          value={c.plannedCycles}
          whole
          positive
          commit={(plannedCycles) => edit({ plannedCycles })}
        />
        <LengthField
          label="Room on the mating axis"
          name="mateRoomMm"
          valueMm={c.mateRoomMm}
          hint="from the mating face of the other half"
          allow="not-negative"
          commit={(mateRoomMm) => edit({ mateRoomMm })}
        />
        <LengthField
          label="Room beside the latch"
          name="latchRoomMm"
          valueMm={c.latchRoomMm}
          allow="not-negative"
          commit={(latchRoomMm) => edit({ latchRoomMm })}
        />
      </Section>
      <Section title="Cavities">
        <CavityTable use={use} />
      </Section>
      <Section title="Accessories">
        <Accessories use={use} />
      </Section>
      <Section title="More" open={false}>
        <LengthField
          label="Service loop"
          name="serviceLoopMm"
          valueMm={c.serviceLoopMm}
          placeholder="none"
          commit={(serviceLoopMm) => edit({ serviceLoopMm })}
        />
        {part?.kind === 'header' ? <FootprintFields connector={c} /> : null}
        {use.resolved.equipment?.kind === 'panel' ? <CutOutFields connector={c} /> : null}
        <TextField
          label="Note"
          name="note"
          multiline
          value={c.note ?? ''}
          commit={(t) => edit({ note: orNull(t) })}
        />
      </Section>
      <LabelsHere id={c.id} />
      {part ? <PartFacts part={part} /> : null}
    </>
  );
}
