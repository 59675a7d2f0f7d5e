import type { CavityUse } from '@latchwork/core/derive/harness';
import { appStore, useApp } from '../../app/store';
import { ChoiceField } from '../../ui/choice-field';
import { Button } from '../../ui/button';
import { cavityFigures } from './cavity-figures';
import { setCavityState, stateChoices } from './cavity-state';
import { contactOf } from './cavity-table';
import { ComputedSection } from './computed-section';
import { SignalField } from './fields';
import { RefLink } from './ref-link';
import { CardHead, Section } from './section';
import { WireEndSection } from './wire-end';

/** One cavity of a connector. */
export function CavityCard({ cavity }: { cavity: CavityUse }) {
  const dispatch = useApp((s) => s.dispatch);
  const harness = useApp((s) => s.harness);
  const { connector } = cavity.connector;
  const place = { connector: connector.id, cavity: cavity.cavity };
  return (
    <>
      <CardHead
        name={`${connector.designator}:${cavity.cavity}`}
        kind={cavity.exists ? 'cavity' : 'the part has no such cavity'}
      />
      <Section title="Cavity">
        <div className="field">
          <span className="field-label">Of connector</span>
          <span className="field-value">
            <RefLink to={{ type: 'connector', id: connector.id }} />
          </span>
        </div>
        <SignalField
          label="Declared signal"
          none="none declared"
          value={cavity.entry?.signal}
          choose={(signal) => dispatch({ id: 'cavity.set-signal', args: { ...place, signal } })}
        />
        {cavity.state === 'wired' ? null : (
          <ChoiceField
            label="Holds"
            name="state"
            value={cavity.state}
            choices={stateChoices(cavity)}
            choose={(state) => void setCavityState(cavity, state)}
          />
        )}
        {cavity.state !== 'wired' && contactOf(cavity) ? (
          <p className="field-hint mono">{contactOf(cavity)}</p>
        ) : null}
        {cavity.ends.length > 1 ? (
          <div className="card-actions">
            <Button onClick={() => appStore.getState().dispatch({ id: 'contact.share', args: { place } })}>
              Crimp the {cavity.ends.length} wires into one contact
            </Button>
          </div>
        ) : null}
      </Section>
      <ComputedSection
        figures={cavityFigures(harness, cavity)}
        of={`${connector.designator}:${cavity.cavity}`}
      />
      {cavity.ends.map((e) => (
        <div key={`${e.wire.wire.id} ${e.index}`} className="cavity-wire">
          <p>
            Wire <RefLink to={{ type: 'wire', id: e.wire.wire.id }} />{' '}
            <span className="second">{e.wire.signal?.name}</span>
          </p>
          <WireEndSection wire={e.wire} index={e.index} />
        </div>
      ))}
    </>
  );
}
