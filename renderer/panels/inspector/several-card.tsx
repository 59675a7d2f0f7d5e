import type { ObjectRef } from '@latchwork/core/rules/finding';
import type { Action } from '../../app/actions/action';
import { ACTIONS } from '../../app/actions/index';
import { appStore, useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { ChoiceField } from '../../ui/choice-field';
import { ColourField } from './colour-field';
import { SignalField, type attempt } from './fields';
import { CardHead, Section } from './section';

const OFFERED = ['edit.duplicate', 'edit.fit-contacts', 'arrange.group', 'edit.delete'];

const plural = (type: string, n: number): string =>
  n === 1 ? `1 ${type}` : `${n} ${type.endsWith('y') ? `${type.slice(0, -1)}ies` : `${type}s`}`;

/** Several objects: what they have in common can be changed in one step. */
export function SeveralCard({ refs }: { refs: readonly ObjectRef[] }) {
  const counts = new Map<string, number>();
  for (const r of refs) counts.set(r.type, (counts.get(r.type) ?? 0) + 1);
  const connectors = refs.flatMap((r) => (r.type === 'connector' ? [r.id] : []));
  const wires = refs.flatMap((r) => (r.type === 'wire' ? [r.id] : []));
  return (
    <>
      <CardHead name={String(refs.length)} kind="objects selected" />
      <Section title="Selection">
        <p>{[...counts].map(([type, n]) => plural(type, n)).join(', ')}</p>
        <div className="card-actions">
          <ActionButtons ids={OFFERED} />
        </div>
      </Section>
      <Section title="Align">
        <div className="card-actions">
          <ActionButtons
            ids={ACTIONS.flatMap((a) =>
              /^arrange\.(left|right|top|bottom|centre)/.test(a.id) ? [a.id] : [],
            )}
          />
        </div>
      </Section>
      {connectors.length ? <CommonConnector ids={connectors} /> : null}
      {wires.length ? <CommonWire ids={wires} /> : null}
    </>
  );
}

function ActionButtons({ ids }: { ids: readonly string[] }) {
  return ACTIONS.filter((a) => ids.includes(a.id)).map((a) => <ActionButton key={a.id} action={a} />);
}

function ActionButton({ action }: { action: Action }) {
  const enabled = useApp((s) => action.enabled?.(s) ?? true);
  return (
    <Button disabled={!enabled} onClick={() => void action.run()}>
      {action.label.replace(/^Align /, '')}
    </Button>
  );
}

function CommonConnector({ ids }: { ids: readonly string[] }) {
  const { connectors, equipment } = useApp((s) => s.history.project);
  const chosen = connectors.filter((c) => ids.includes(c.id));
  const common = <T,>(pick: (c: (typeof chosen)[number]) => T): T | undefined => {
    const values = new Set(chosen.map(pick));
    return values.size === 1 ? [...values][0] : undefined;
  };
  const set = (
    change: Extract<Parameters<typeof attempt>[0], { id: 'connector.edit' }>['args']['change'],
  ): void => {
    appStore.getState().dispatch({ id: 'connector.edit', args: { ids: [...ids], change } });
  };
  const DIFFERENT = { value: '' as const, text: 'different' };
  return (
    <Section title={plural('connector', ids.length)}>
      <ChoiceField
        label="Drawn as"
        value={common((c) => c.view) ?? ''}
        choices={[
          ...(common((c) => c.view) ? [] : [DIFFERENT]),
          { value: 'mating-face', text: 'mating face' },
          { value: 'wire-entry-face', text: 'wire-entry face' },
        ]}
        choose={(view) => view && set({ view })}
      />
      <ChoiceField
        label="Wires leave to the"
        value={common((c) => c.exit) ?? ''}
        choices={[
          ...(common((c) => c.exit) ? [] : [DIFFERENT]),
          { value: 'left', text: 'left' },
          { value: 'right', text: 'right' },
        ]}
        choose={(exit) => exit && set({ exit })}
      />
      <ChoiceField
        label="On"
        value={common((c) => c.equipment ?? 'none') ?? 'different'}
        choices={[
          ...(common((c) => c.equipment ?? 'none') ? [] : [{ value: 'different', text: 'different' }]),
          { value: 'none', text: 'nothing, they hang free' },
          ...equipment.map((e) => ({ value: e.id, text: e.designator })),
        ]}
        choose={(id) => set({ equipment: id === 'none' ? null : id })}
      />
    </Section>
  );
}

function CommonWire({ ids }: { ids: readonly string[] }) {
  const wires = useApp((s) => s.history.project.wires).filter((w) => ids.includes(w.id));
  const first = wires[0];
  const same = (pick: (w: (typeof wires)[number]) => unknown): boolean =>
    new Set(wires.map((w) => JSON.stringify(pick(w)))).size === 1;
  const set = (
    change: Extract<Parameters<typeof attempt>[0], { id: 'wire.edit' }>['args']['change'],
  ): void => {
    appStore.getState().dispatch({ id: 'wire.edit', args: { ids: [...ids], change } });
  };
  return (
    <Section title={plural('wire', ids.length)}>
      <ColourField
        colour={same((w) => w.colour) ? first?.colour : undefined}
        offered={undefined}
        choose={(colour) => set({ colour })}
      />
      <SignalField
        value={same((w) => w.signal) ? first?.signal : undefined}
        none={same((w) => w.signal) ? 'none' : 'different'}
        choose={(signal) => set({ signal })}
      />
    </Section>
  );
}
