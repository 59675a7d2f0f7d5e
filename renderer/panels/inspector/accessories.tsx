import { X } from 'lucide-react';
import { byId } from '@latchwork/core/base/by-id';
import type { ConnectorUse } from '@latchwork/core/derive/harness';
import { PART_KIND_NAMES } from '@latchwork/core/model/parts/part';
import { appStore, useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { askPart } from '../part-picker';
import { useAllParts } from '../shelf/use-all-parts';

const KINDS = new Set(['secondary-lock', 'strain-relief', 'grommet', 'tool', 'label']);

/** Parts fitted to a connector: locks, strain reliefs. */
export function Accessories({ use }: { use: ConnectorUse }) {
  const projectParts = useApp((s) => s.history.project.parts);
  const parts = useAllParts();
  const { connector: c, part } = use.resolved;
  const named = part?.kind === 'housing' ? part.secondaryLock : undefined;
  const fitted = c.accessories.map((a) => ({ ...a, record: byId(projectParts).get(a.part) }));
  const hasLock = fitted.some((a) => a.record?.partNumber === named);
  const add = async (): Promise<void> => {
    const answer = await askPart({
      title: `Accessory for ${c.designator}`,
      parts: parts.filter((p) => KINDS.has(p.kind)),
      judge: (p) =>
        p.partNumber === named
          ? { group: 'Named by the housing', rank: 0 }
          : { group: PART_KIND_NAMES[p.kind], rank: 1 },
    });
    if (answer?.part)
      appStore.getState().dispatch({ id: 'connector.add-accessory', args: { id: c.id, part: answer.part } });
  };
  return (
    <>
      {fitted.length === 0 ? <p className="second">None fitted.</p> : null}
      <ul>
        {fitted.map((a) => (
          <li key={a.id} className="input-row accessory">
            <span className="mono">{a.record?.partNumber ?? 'part not known'}</span>
            <span className="second">{a.record ? PART_KIND_NAMES[a.record.kind] : ''}</span>
            <span className="mono">{a.quantity > 1 ? `× ${a.quantity}` : ''}</span>
            <Button
              look="icon"
              aria-label={`Take off ${a.record?.partNumber ?? 'accessory'}`}
              onClick={() =>
                appStore
                  .getState()
                  .dispatch({ id: 'connector.remove-accessory', args: { id: c.id, accessory: a.id } })
              }
            >
              <X size={14} aria-hidden />
            </Button>
          </li>
        ))}
      </ul>
      <div className="card-actions">
        {named && !hasLock ? (
          <Button
            onClick={() => appStore.getState().dispatch({ id: 'connector.fit-lock', args: { id: c.id } })}
          >
            Fit secondary lock {named}
          </Button>
        ) : null}
        <Button onClick={() => void add()}>Add accessory …</Button>
      </div>
    </>
  );
}
