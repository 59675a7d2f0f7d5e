import { byId } from '@latchwork/core/base/by-id';
import { segmentLengthMm } from '@latchwork/core/derive/route';
import type { Segment } from '@latchwork/core/model/topology';
import { useApp } from '../../app/store';
import { LengthField } from '../../ui/length-field';
import { TextField } from '../../ui/text-field';
import { Length } from '../../ui/quantity';
import { WorkedNumber, inMm } from '../../ui/worked-number';
import { BundleSection } from './bundle-section';
import { DesignatorField, attempt } from './fields';
import { RefLink } from './ref-link';
import { CardHead, Section } from './section';

type Change = Extract<Parameters<typeof attempt>[0], { id: 'segment.edit' }>['args']['change'];

/** A run between two nodes, and what goes through it. */
export function SegmentCard({ segment }: { segment: Segment }) {
  const project = useApp((s) => s.history.project);
  const use = useApp((s) => s.harness.segments.find((u) => u.segment.id === segment.id));
  const wires = use?.wires ?? [];
  const coverings = project.coverings.filter(
    (c) => c.from.segment === segment.id || c.to.segment === segment.id,
  );
  const edit = (change: Change): string | null =>
    attempt({ id: 'segment.edit', args: { id: segment.id, change } });
  const { lengthMm: _typed, ...drawn } = segment;
  const drawnMm = segmentLengthMm(drawn, byId(project.nodes));
  return (
    <>
      <CardHead name={segment.designator} kind="segment" />
      <Section title="Segment">
        <div className="field">
          <span className="field-label">Between</span>
          <span className="field-value">
            <RefLink to={{ type: 'node', id: segment.from }} /> <span className="second">and</span>{' '}
            <RefLink to={{ type: 'node', id: segment.to }} />
          </span>
        </div>
        <DesignatorField
          value={segment.designator}
          call={(designator) => ({ id: 'segment.edit', args: { id: segment.id, change: { designator } } })}
        />
        <div className="field">
          <span className="field-label">Length</span>
          <span className="field-value">
            <WorkedNumber
              working={{
                title: `Length of ${segment.designator}`,
                lines: [
                  {
                    label: 'Drawn',
                    value: inMm(drawnMm),
                    source: `formboard, nodes${segment.via?.length ? ' and bends' : ''}`,
                  },
                  ...(segment.lengthMm === undefined
                    ? []
                    : [{ label: 'Typed', value: inMm(segment.lengthMm), source: 'typed at the segment' }]),
                ],
                result: inMm(segment.lengthMm ?? drawnMm),
                method: 'A typed length wins over the drawn one.',
              }}
            >
              <Length mm={segment.lengthMm ?? drawnMm} />
            </WorkedNumber>
          </span>
        </div>
        <LengthField
          label="Typed length"
          name="lengthMm"
          valueMm={segment.lengthMm}
          placeholder="as drawn"
          commit={(lengthMm) => edit({ lengthMm })}
        />
        <LengthField
          label="Tolerance +"
          name="plusMm"
          valueMm={segment.plusMm}
          allow="not-negative"
          commit={(plusMm) => edit({ plusMm })}
        />
        <LengthField
          label="Tolerance −"
          name="minusMm"
          valueMm={segment.minusMm}
          allow="not-negative"
          commit={(minusMm) => edit({ minusMm })}
        />
        <LengthField
          label="Tightest bend"
          name="bendRadiusMm"
          valueMm={segment.bendRadiusMm}
          placeholder="as drawn"
          hint="inside radius, as installed"
          commit={(bendRadiusMm) => edit({ bendRadiusMm })}
        />
        <LengthField
          label="Threaded through a hole of"
          name="holeMm"
          valueMm={segment.holeMm}
          placeholder="none"
          commit={(holeMm) => edit({ holeMm })}
        />
        <TextField
          label="Approved wire styles"
          name="wireStyles"
          value={(segment.wireStyles ?? []).join(', ')}
          placeholder="any"
          hint="commas between them"
          commit={(text) => edit({ wireStyles: stylesIn(text) })}
        />
      </Section>
      {use ? <BundleSection use={use} /> : null}
      <Section title={`Wires through it (${wires.length})`}>
        <div className="card-actions">
          {wires.map((w) => (
            <RefLink key={w.wire.id} to={{ type: 'wire', id: w.wire.id }} />
          ))}
        </div>
      </Section>
      <Section title="Coverings">
        {coverings.length === 0 ? (
          <p className="second">None. Drop a sleeve or a tube on the segment.</p>
        ) : null}
        <div className="card-actions">
          {coverings.map((c) => (
            <RefLink key={c.id} to={{ type: 'covering', id: c.id }} />
          ))}
        </div>
      </Section>
    </>
  );
}

function stylesIn(text: string): string[] | null {
  const styles = text
    .split(',')
    .map((style) => style.trim())
    .filter((style) => style !== '');
  return styles.length > 0 ? styles : null;
}
