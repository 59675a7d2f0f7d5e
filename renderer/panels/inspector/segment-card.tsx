import { lengthText } from '@latchwork/core/model/length-text';
import type { Segment } from '@latchwork/core/model/topology';
import { thingsOnSegment } from '@latchwork/core/tools/formboard/board-walk';
import { useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { LengthField } from '../../ui/length-field';
import { TextField } from '../../ui/text-field';
import { BundleSection } from './bundle-section';
import { DesignatorField, attempt } from './fields';
import { RefLink } from './ref-link';
import { CardHead, Section } from './section';
import { SegmentLength } from './segment-length';

type Change = Extract<Parameters<typeof attempt>[0], { id: 'segment.edit' }>['args']['change'];

/** A run between two nodes, and what goes through it. */
export function SegmentCard({ segment }: { segment: Segment }) {
  const project = useApp((s) => s.history.project);
  const use = useApp((s) => s.harness.segments.find((u) => u.segment.id === segment.id));
  const wires = use?.wires ?? [];
  const things = thingsOnSegment(project, segment.id);
  const unit = useApp((s) => s.view.lengthUnit);
  const select = useApp((s) => s.select);
  const edit = (change: Change): string | null =>
    attempt({ id: 'segment.edit', args: { id: segment.id, change } });
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
        <SegmentLength segment={segment} edit={edit} />
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
        <LengthField
          label="Gap, noisy to quiet"
          name="noiseGapMm"
          valueMm={segment.noiseGapMm}
          placeholder="one bundle"
          allow="not-negative"
          hint="kept along this run between noisy and quiet wires"
          commit={(noiseGapMm) => edit({ noiseGapMm })}
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
      <Section title="What lies on it">
        {things.length === 0 ? (
          <p className="second">
            Nothing. Drop a sleeve, a tie, a clamp or a label from the shelf on the segment.
          </p>
        ) : null}
        {things.map((t) => (
          <div className="field" key={t.key}>
            <span className="field-label">{lengthText(t.atMm, unit)}</span>
            <span className="field-value">
              <Button look="link" onClick={() => select([t.key])}>
                {t.text}
              </Button>
            </span>
          </div>
        ))}
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
