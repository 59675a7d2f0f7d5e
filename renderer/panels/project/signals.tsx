import { useMemo, useState } from 'react';
import { compareNatural } from '@latchwork/core/base/stable-order';
import type { Connector } from '@latchwork/core/model/connector';
import type { Signal } from '@latchwork/core/model/electrical';
import type { Wire } from '@latchwork/core/model/wire';
import { appStore, useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { ChoiceField, choicesOf } from '../../ui/choice-field';
import { NumberField } from '../../ui/number-field';
import { TextField, needed } from '../../ui/text-field';
import { attempt } from '../inspector/fields';
import { SignalSeparation } from './signal-separation';

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

type Place = NonNullable<Signal['source']>;
const placeKey = (p: Place): string => `${p.connector} ${p.cavity}`;

/** Positions that declare the signal, and the one that feeds it now. */
function placesOf(signal: Signal, connectors: readonly Connector[]): { value: string; text: string }[] {
  const { source } = signal;
  const declared = connectors.flatMap((c) =>
    c.cavities.filter((e) => e.signal === signal.id).map((e) => ({ connector: c.id, cavity: e.cavity })),
  );
  const isNew = source && !declared.some((p) => placeKey(p) === placeKey(source));
  return [...declared, ...(isNew ? [source] : [])]
    .map((p) => ({
      value: placeKey(p),
      text: `${connectors.find((c) => c.id === p.connector)?.designator ?? '?'}:${p.cavity}`,
    }))
    .sort((a, b) => compareNatural(a.text, b.text));
}

const CLASSES = ['power', 'return', 'signal', 'shield', 'neutral', 'protective-earth'] as const;

function SignalFields({ signal }: { signal: Signal }) {
  const signals = useApp((s) => s.history.project.signals);
  const connectors = useApp((s) => s.history.project.connectors);
  const places = placesOf(signal, connectors);
  const others = signals.filter((s) => s.id !== signal.id).sort((a, b) => compareNatural(a.name, b.name));
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
      <NumberField
        label="Peak lasts"
        unit="s"
        name="peakS"
        value={signal.peakS}
        commit={(peakS) =>
          peakS !== null && peakS <= 0 ? 'A peak lasts longer than zero.' : edit({ peakS })
        }
      />
      <ChoiceField
        label="Returns on"
        name="returnsOn"
        value={signal.returnsOn ?? ''}
        choices={[{ value: '', text: 'not known' }, ...others.map((s) => ({ value: s.id, text: s.name }))]}
        choose={(id) => void edit({ returnsOn: id === '' ? null : id })}
      />
      <ChoiceField
        label="Fed at"
        name="source"
        value={signal.source ? placeKey(signal.source) : ''}
        choices={[{ value: '', text: 'not known' }, ...places]}
        choose={(key) => {
          const [connector, cavity] = key.split(' ');
          void edit({ source: connector && cavity ? { connector, cavity } : null });
        }}
      />
      <NumberField
        label="Source limits at"
        unit="A"
        name="sourceLimitA"
        value={signal.sourceLimitA}
        commit={(sourceLimitA) =>
          sourceLimitA !== null && sourceLimitA <= 0 ? 'A source limits above zero.' : edit({ sourceLimitA })
        }
      />
      <SignalSeparation signal={signal} others={others} />
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
