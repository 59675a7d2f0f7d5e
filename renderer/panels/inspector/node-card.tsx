import type { Node } from '@latchwork/core/model/topology';
import { useApp } from '../../app/store';
import { ChoiceField } from '../../ui/choice-field';
import { LengthField } from '../../ui/length-field';
import { DesignatorField, attempt } from './fields';
import { RefLink } from './ref-link';
import { CardHead, Section } from './section';

/** A point of the formboard. */
export function NodeCard({ node }: { node: Node }) {
  const { connectors, segments, splices } = useApp((s) => s.history.project);
  const here = connectors.filter((c) => c.node === node.id);
  const others = connectors.filter((c) => c.node !== node.id);
  const move = (change: Partial<Node['position']>): string | null =>
    attempt({
      id: 'node.edit',
      args: { id: node.id, change: { position: { ...node.position, ...change } } },
    });
  const at = (value: number | null, axis: 'x' | 'y'): string | null =>
    value === null ? 'A node needs a place.' : move({ [axis]: value });
  return (
    <>
      <CardHead name={node.designator} kind="node" />
      <Section title="Node">
        <DesignatorField
          value={node.designator}
          call={(designator) => ({ id: 'node.edit', args: { id: node.id, change: { designator } } })}
        />
        <LengthField label="Across" valueMm={node.position.x} allow="signed" commit={(v) => at(v, 'x')} />
        <LengthField label="Down" valueMm={node.position.y} allow="signed" commit={(v) => at(v, 'y')} />
      </Section>
      <Section title="Connectors here">
        <div className="card-actions">
          {here.map((c) => (
            <RefLink key={c.id} to={{ type: 'connector', id: c.id }} />
          ))}
          {splices
            .filter((s) => s.node === node.id)
            .map((s) => (
              <RefLink key={s.id} to={{ type: 'splice', id: s.id }} />
            ))}
        </div>
        <ChoiceField
          label="Put here"
          value=""
          choices={[
            { value: '', text: 'choose a connector' },
            ...others.map((c) => ({
              value: c.id,
              text: c.node ? `${c.designator} (from another node)` : c.designator,
            })),
          ]}
          choose={(id) =>
            id && void attempt({ id: 'connector.edit', args: { ids: [id], change: { node: node.id } } })
          }
        />
      </Section>
      <Section title="Segments">
        <div className="card-actions">
          {segments
            .filter((s) => s.from === node.id || s.to === node.id)
            .map((s) => (
              <RefLink key={s.id} to={{ type: 'segment', id: s.id }} />
            ))}
        </div>
      </Section>
    </>
  );
}
