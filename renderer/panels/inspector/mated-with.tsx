import { useState } from 'react';
import { compareNatural } from '@latchwork/core/base/stable-order';
import type { ConnectorUse } from '@latchwork/core/derive/harness';
import { matingObstacles } from '@latchwork/core/derive/mating';
import { appStore, useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { ChoiceField } from '../../ui/choice-field';
import { RefLink } from './ref-link';

/** The other half, or the choice of one: those that can mate first. */
export function MatedWith({ use }: { use: ConnectorUse }) {
  const connectors = useApp((s) => s.harness.connectors);
  const [refused, setRefused] = useState<{ other: string; reason: string } | null>(null);
  const { connector, part } = use.resolved;
  const mate = use.mates[0];
  if (mate) {
    const other = mate.a === connector.id ? mate.b : mate.a;
    return (
      <div className="input-row">
        Plugged to <RefLink to={{ type: 'connector', id: other }} />
        <span className="second">·</span>
        <Button look="link" onClick={() => appStore.getState().select([mate.id])}>
          which number meets which
        </Button>
      </div>
    );
  }
  const free = connectors
    .filter((u) => u !== use && u.mates.length === 0)
    .map((u) => {
      const half = u.resolved.part;
      const said = half && part ? matingObstacles(part, half) : undefined;
      const open = said === undefined || said.unknown.length > 0;
      return { c: u.resolved.connector, half, rank: said?.obstacles.length ? 2 : open ? 1 : 0 };
    })
    .sort((a, b) => a.rank - b.rank || compareNatural(a.c.designator, b.c.designator));
  const RANKS = ['fits', 'not known', 'does not fit'];
  const choices = free.map((f) => ({
    value: f.c.id,
    text: `${f.c.designator} · ${f.half?.partNumber ?? 'part not known'} · ${RANKS[f.rank] ?? ''}`,
  }));
  const add = (b: string, insist: boolean): void => {
    const reason = appStore.getState().attempt({ id: 'mate.add', args: { a: connector.id, b, insist } });
    setRefused(reason === null ? null : { other: b, reason });
  };
  return (
    <>
      <ChoiceField
        label="Plug to"
        name="mate"
        value=""
        choices={[
          { value: '', text: choices.length ? 'choose the other half' : 'no other half is free' },
          ...choices,
        ]}
        choose={(id) => id && add(id, false)}
      />
      {refused ? (
        <div className="refused" role="alert">
          <p>{refused.reason}</p>
          <Button onClick={() => add(refused.other, true)}>Plug them all the same, as a finding</Button>
        </div>
      ) : null}
    </>
  );
}
