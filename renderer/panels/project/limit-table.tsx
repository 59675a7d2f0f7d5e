import { useState } from 'react';
import type { Limit } from '@latchwork/core/model/limit-set';
import { LIMIT_IDS, type LimitId } from '@latchwork/core/model/limit-sets/limit-ids';
import { useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { VerifiedMark } from '../../ui/calc-working';
import { CheckField } from '../../ui/check-field';
import { NumberField } from '../../ui/number-field';
import { TextField, needed } from '../../ui/text-field';
import { unitText } from '../../ui/unit-text';
import { attempt } from '../inspector/fields';
import './limit-table.css';

/** The limits that the rules compare with, each with what it bounds and where it comes from; then those that the set lacks. */
export function LimitTable() {
  const { limits } = useApp((s) => s.history.project.limitSet);
  const missing = (Object.keys(LIMIT_IDS) as LimitId[]).filter((id) => limits.every((l) => l.id !== id));
  return (
    <>
      {limits.map((limit) => (
        <LimitRow key={limit.id} limit={limit} />
      ))}
      {missing.length > 0 ? <h4 className="limit-missing">Not in this set</h4> : null}
      {missing.map((id) => (
        <MissingLimit key={id} id={id} />
      ))}
    </>
  );
}

const TYPED = { source: 'typed in this project', verified: false } as const;

const setLimit = (limit: Limit): string | null => attempt({ id: 'project.set-limit', args: { limit } });

const words = (id: string): string => id.replaceAll('-', ' ');
const isKnown = (id: string): id is LimitId => id in LIMIT_IDS;

function LimitRow({ limit }: { limit: Limit }) {
  const [open, setOpen] = useState(false);
  const { edition: _, ...bare } = limit;
  const source = `${limit.source}${limit.edition ? `, ${limit.edition}` : ''}`;
  return (
    <div className="limit-row">
      <NumberField
        label={words(limit.id)}
        unit={unitText(limit.unit)}
        name={`limit.${limit.id}`}
        value={limit.value}
        hint={isKnown(limit.id) ? LIMIT_IDS[limit.id].about : undefined}
        commit={(value) =>
          value === null ? 'A limit needs a value.' : setLimit({ ...bare, value, ...TYPED })
        }
      />
      <div className="limit-source">
        <VerifiedMark verified={limit.verified} />
        <span>{source}</span>
        <Button look="link" aria-expanded={open} onClick={() => setOpen(!open)}>
          {open ? 'Done' : 'Edit'}
          <span className="visually-hidden"> the source of {words(limit.id)}</span>
        </Button>
      </div>
      {open ? (
        <div className="limit-edit">
          <TextField
            label={`Source of ${words(limit.id)}`}
            stack
            value={source}
            commit={needed('A source', (text) => setLimit({ ...bare, source: text, verified: false }))}
          />
          <CheckField
            label="I have seen this value in its source"
            checked={limit.verified}
            choose={(verified) => void setLimit({ ...limit, verified })}
          />
        </div>
      ) : null}
    </div>
  );
}

/** A check that asks for it cannot verify until it has a value. */
function MissingLimit({ id }: { id: LimitId }) {
  const { unit, about } = LIMIT_IDS[id];
  return (
    <NumberField
      label={words(id)}
      unit={unitText(unit)}
      name={`limit.${id}`}
      value={undefined}
      placeholder="not set"
      hint={about}
      commit={(value) => (value === null ? null : setLimit({ id, value, unit, ...TYPED }))}
    />
  );
}
