import { byId } from '@latchwork/core/base/by-id';
import type { Splice } from '@latchwork/core/model/wire';
import { partOfKind } from '@latchwork/core/model/parts/part';
import { useApp } from '../../app/store';
import { askPart } from '../part-picker';
import { useAllParts } from '../shelf/use-all-parts';
import { DesignatorField, NodeField, attempt } from './fields';
import { PartButton } from './part-button';
import { RefLink } from './ref-link';
import { CardHead, Section } from './section';

/** A joint of wire ends. */
export function SpliceCard({ splice }: { splice: Splice }) {
  const project = useApp((s) => s.history.project);
  const parts = useAllParts();
  const part = byId(project.parts).get(splice.part ?? '');
  const wires = project.wires.filter((w) => w.ends.some((e) => e.at === 'splice' && e.splice === splice.id));
  const choose = async (): Promise<void> => {
    const splices = parts.flatMap((p) => partOfKind(p, 'splice') ?? []);
    const answer = await askPart({
      title: `Part of ${splice.designator}`,
      parts: splices,
      current: splice.part,
      none: splice.part ? 'No part' : undefined,
    });
    if (answer) attempt({ id: 'splice.edit', args: { id: splice.id, change: { part: answer.part } } });
  };
  return (
    <>
      <CardHead name={splice.designator} kind="splice" />
      <Section title="Splice">
        <PartButton label="Part" name="part" part={part} choose={() => void choose()} />
        <DesignatorField
          value={splice.designator}
          call={(designator) => ({ id: 'splice.edit', args: { id: splice.id, change: { designator } } })}
        />
        <NodeField
          value={splice.node}
          choose={(node) => void attempt({ id: 'splice.edit', args: { id: splice.id, change: { node } } })}
        />
      </Section>
      <Section title="Wires in it">
        {wires.length === 0 ? (
          <p className="second">None yet. Draw a wire and let go over the splice.</p>
        ) : null}
        <div className="card-actions">
          {wires.map((w) => (
            <RefLink key={w.id} to={{ type: 'wire', id: w.id }} />
          ))}
        </div>
      </Section>
    </>
  );
}
