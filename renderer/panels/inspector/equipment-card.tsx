import type { Equipment } from '@latchwork/core/model/equipment';
import { useApp } from '../../app/store';
import { ChoiceField } from '../../ui/choice-field';
import { LengthField } from '../../ui/length-field';
import { NumberField } from '../../ui/number-field';
import { TextField } from '../../ui/text-field';
import { DesignatorField, attempt, orNull } from './fields';
import { RefLink } from './ref-link';
import { CardHead, Section } from './section';

type Change = Extract<Parameters<typeof attempt>[0], { id: 'equipment.edit' }>['args']['change'];

/** A board, a panel, a device. */
export function EquipmentCard({ equipment: e }: { equipment: Equipment }) {
  const connectors = useApp((s) => s.history.project.connectors).filter((c) => c.equipment === e.id);
  const edit = (change: Change): string | null =>
    attempt({ id: 'equipment.edit', args: { id: e.id, change } });
  const size = (value: number | null, field: 'widthMm' | 'heightMm'): string | null =>
    value === null ? 'It needs a size to be drawn.' : edit({ [field]: value });
  return (
    <>
      <CardHead name={e.designator} kind={e.kind} />
      <Section title={e.kind === 'device' ? 'Device' : e.kind === 'board' ? 'Board' : 'Panel'}>
        <DesignatorField
          value={e.designator}
          call={(designator) => ({ id: 'equipment.edit', args: { id: e.id, change: { designator } } })}
        />
        <TextField
          label="Description"
          name="description"
          value={e.description ?? ''}
          commit={(t) => edit({ description: orNull(t) })}
        />
        {e.kind === 'device' ? null : (
          <LengthField
            label="Thickness"
            name="thicknessMm"
            valueMm={e.thicknessMm}
            commit={(thicknessMm) => edit({ thicknessMm })}
          />
        )}
        {e.kind === 'panel' ? (
          <LengthField
            label="Coatings"
            name="coatingsMm"
            valueMm={e.coatingsMm}
            allow="not-negative"
            hint="sum over both faces; counts as thickness for a latch"
            commit={(coatingsMm) => edit({ coatingsMm })}
          />
        ) : null}
        {e.kind === 'board' ? <SolderFields board={e} edit={edit} /> : null}
      </Section>
      <Section title="Drawn size" open={false}>
        <LengthField label="Width" valueMm={e.widthMm} commit={(v) => size(v, 'widthMm')} />
        <LengthField label="Height" valueMm={e.heightMm} commit={(v) => size(v, 'heightMm')} />
      </Section>
      <Section title="Connectors on it">
        {connectors.length === 0 ? (
          <p className="second">None. Drop a header or a panel housing on it.</p>
        ) : null}
        <div className="card-actions">
          {connectors.map((c) => (
            <RefLink key={c.id} to={{ type: 'connector', id: c.id }} />
          ))}
        </div>
      </Section>
    </>
  );
}

function SolderFields({
  board,
  edit,
}: {
  board: Extract<Equipment, { kind: 'board' }>;
  edit: (change: Change) => string | null;
}) {
  const solder = board.solderProcess;
  const set = (field: 'peakC' | 'timeS', value: number | null): string | null => {
    if (!solder) return 'Choose the process first.';
    const { [field]: _old, ...rest } = solder;
    return edit({ solderProcess: value === null ? rest : { ...rest, [field]: value } });
  };
  return (
    <>
      <ChoiceField
        label="Soldered by"
        name="solderProcess"
        value={solder?.process ?? ''}
        choices={[
          { value: '', text: 'not known' },
          { value: 'wave', text: 'wave' },
          { value: 'reflow', text: 'reflow' },
          { value: 'hand', text: 'hand' },
        ]}
        choose={(process) => void edit({ solderProcess: process === '' ? null : { ...solder, process } })}
      />
      <NumberField
        label="Peak"
        unit="°C"
        name="solderProcess.peakC"
        positive
        value={solder?.peakC}
        commit={(v) => set('peakC', v)}
      />
      <NumberField
        label="Time at peak"
        unit="s"
        name="solderProcess.timeS"
        positive
        value={solder?.timeS}
        commit={(v) => set('timeS', v)}
      />
    </>
  );
}
