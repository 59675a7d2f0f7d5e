import { useMemo, useState } from 'react';
import { compareNatural } from '@latchwork/core/base/stable-order';
import type { Signal } from '@latchwork/core/model/electrical';
import type { Wire } from '@latchwork/core/model/wire';
import { appStore, useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { ChoiceField, choicesOf } from '../../ui/choice-field';
import { NumberField } from '../../ui/number-field';
import { TextField, needed } from '../../ui/text-field';
import { attempt } from '../inspector/fields';

/** The signal list: what travels on the wires. */
export function Signals() {
  const signals = useApp((s) => s.history.project.signals);
  const wires = useApp((s) => s.history.project.wires);
  const [open, setOpen] = useState<string | null>(null);
  const sorted = [...signals].sort((a, b) => compareNatural(a.name, b.name));
  const carriers = useMemo(() => wiresBySignal(wires), [wires]);
  const carrying = (id: string): readonly string[] => carriers.get(id) ?? [];
  const shown = signals.find((s) => s.id === open);
  return (
    <>
      {signals.length ? (
        <table className="mini-table">
          <thead>
            <tr>
              <th scope="col">Signal</th>
              <th scope="col">Class</th>
              <th scope="col">V</th>
              <th scope="col">A</th>
              <th scope="col">Wires</th>
            </tr>
          </thead>
          <tbody>
            {sorted.map((s) => (
              <tr key={s.id} aria-selected={s.id === open}>
                <td data-field={`signal:${s.id}`}>
                  <Button
                    look="link"
                    className="mono"
                    aria-expanded={s.id === open}
                    onClick={() => setOpen(s.id === open ? null : s.id)}
                  >
                    {s.name}
                  </Button>
                </td>
                <td className="second">{s.class ?? 'not known'}</td>
                <td className="mono">{s.voltageV}</td>
                <td className="mono">{s.currentA}</td>
                <td>
                  <Button
                    look="link"
                    className="mono"
                    disabled={carrying(s.id).length === 0}
                    aria-label={`${carrying(s.id).length} wires of ${s.name}: select`}
                    onClick={() => appStore.getState().select(carrying(s.id))}
                  >
                    {carrying(s.id).length}
                  </Button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : (
        <p className="second">
          No signal yet. Signals let the program find opens, wrong joints and overloads.
        </p>
      )}
      {shown ? <SignalFields key={shown.id} signal={shown} /> : null}
      <TextField
        key={signals.length}
        label="New signal"
        value=""
        placeholder="name, then Enter"
        mono
        commit={(name) => (name === '' ? null : attempt({ id: 'signal.add', args: { signal: { name } } }))}
      />
    </>
  );
}

function wiresBySignal(wires: readonly Wire[]): ReadonlyMap<string, readonly string[]> {
  const out = new Map<string, string[]>();
  for (const { id, signal } of wires) {
    if (signal === undefined) continue;
    const list = out.get(signal);
    if (list) list.push(id);
    else out.set(signal, [id]);
  }
  return out;
}

const CLASSES = ['power', 'return', 'signal', 'shield', 'protective-earth'] as const;

function SignalFields({ signal }: { signal: Signal }) {
  const edit = (
    change: Extract<Parameters<typeof attempt>[0], { id: 'signal.edit' }>['args']['change'],
  ): string | null => attempt({ id: 'signal.edit', args: { id: signal.id, change } });
  return (
    <div className="signal-fields">
      <TextField
        label="Name"
        name="name"
        mono
        value={signal.name}
        commit={needed('The name', (name) => edit({ name }))}
      />
      <ChoiceField
        label="Class"
        name="class"
        value={signal.class ?? ''}
        choices={[{ value: '', text: 'not known' }, ...choicesOf(CLASSES)]}
        choose={(c) => void edit({ class: c === '' ? null : c })}
      />
      <NumberField
        label="Voltage"
        unit="V"
        name="voltageV"
        value={signal.voltageV}
        commit={(voltageV) => edit({ voltageV })}
      />
      <NumberField
        label="Current"
        unit="A"
        name="currentA"
        value={signal.currentA}
        commit={(currentA) =>
          currentA !== null && currentA < 0 ? 'A current here cannot be negative.' : edit({ currentA })
        }
      />
      <NumberField
        label="Peak current"
        unit="A"
        name="peakCurrentA"
        value={signal.peakCurrentA}
        commit={(peakCurrentA) =>
          peakCurrentA !== null && peakCurrentA < 0
            ? 'A current here cannot be negative.'
            : edit({ peakCurrentA })
        }
      />
      <div className="card-actions">
        <Button
          onClick={() => appStore.getState().dispatch({ id: 'objects.remove', args: { ids: [signal.id] } })}
        >
          Delete signal
        </Button>
      </div>
    </div>
  );
}
