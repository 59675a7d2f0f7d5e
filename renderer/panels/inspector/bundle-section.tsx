import { useState } from 'react';
import { bendRadius } from '@latchwork/core/calc/bend-radius';
import type { BundleDiameter } from '@latchwork/core/calc/bundle-diameter';
import type { Working } from '@latchwork/core/calc/calculation';
import { coveringThicknessMm } from '@latchwork/core/calc/covering-thickness';
import { bundleOf } from '@latchwork/core/derive/bundle';
import type { CoveringUse, SegmentUse } from '@latchwork/core/derive/harness';
import { diameterNeeds } from '@latchwork/core/rules/shared/bundle-words';
import { useApp } from '../../app/store';
import { WorkedCalc } from '../../ui/calc-working';
import { CrossSection } from '../../ui/cross-section';
import { Length, Quantity } from '../../ui/quantity';
import { Section } from './section';
import { segmentSection } from './segment-section';
import { type Stretch, stretchesOf } from './stretches';

/** The bundle of a segment cut across, how thick it is, and how tightly it may be bent. */
export function BundleSection({ use }: { use: SegmentUse }) {
  const bundle = bundleOf(use);
  if (use.wires.length === 0) return null;
  return (
    <Section title="Cross-section">
      {bundle ? <Bundle use={use} bundle={bundle} /> : <CannotVerify use={use} />}
    </Section>
  );
}

const CannotVerify = ({ use }: { use: SegmentUse }) => (
  <p className="cannot-verify">
    Cannot verify the bundle diameter: needs{' '}
    {diameterNeeds(use)
      .map((n) => n.what)
      .join(', ')}
    .
  </p>
);

function Bundle({ use, bundle }: { use: SegmentUse; bundle: BundleDiameter }) {
  const unit = useApp((s) => s.view.lengthUnit);
  const select = useApp((s) => s.select);
  const stretches = stretchesOf(use);
  const [chosen, choose] = useState(0);
  const [hover, setHover] = useState<string | null>(null);
  const shown = stretches[Math.min(chosen, stretches.length - 1)] as Stretch;
  const outside = outsideOf(bundle, shown.coverings);
  return (
    <>
      <CrossSection
        section={segmentSection(use, bundle, shown.coverings)}
        label={`Cross-section of ${use.segment.designator}: ${use.wires.length} wires`}
        unit={unit}
        onHover={setHover}
        onPick={(id) => select([id])}
      />
      <p className="section-caption" aria-live="off">
        {hover ?? <span className="second">Point at a wire to have its name, press to select it.</span>}
      </p>
      {stretches.map((stretch, i) => (
        <div className="field" key={stretch.fromMm}>
          <span className="field-label">
            {stretches.length === 1 ? (
              'Diameter'
            ) : (
              <label className="check">
                <input type="radio" name="stretch" checked={i === chosen} onChange={() => choose(i)} />
                {Math.round(stretch.fromMm)} to {Math.round(stretch.toMm)}
              </label>
            )}
          </span>
          <span className="field-value">
            <OutsideDiameter use={use} bundle={bundle} stretch={stretch} />
          </span>
        </div>
      ))}
      {outside ? <LeastBend diameterMm={outside.diameterMm} /> : null}
    </>
  );
}

function OutsideDiameter({
  use,
  bundle,
  stretch,
}: {
  use: SegmentUse;
  bundle: BundleDiameter;
  stretch: Stretch;
}) {
  const outside = outsideOf(bundle, stretch.coverings);
  if (!outside)
    return (
      <span className="cannot-verify">
        cannot verify: needs{' '}
        {diameterNeeds(use)
          .map((n) => n.what)
          .join(', ')}
      </span>
    );
  return (
    <>
      <WorkedCalc title={`Diameter of ${use.segment.designator}`} working={outside.working}>
        <Length mm={outside.diameterMm} />
      </WorkedCalc>{' '}
      <span className="second">
        {stretch.coverings.length === 0
          ? 'bare'
          : stretch.coverings.map((c) => c.covering.designator ?? c.part?.form).join(', ')}
      </span>
    </>
  );
}

/** The bundle with what lies on it; null where a wall is not stated. */
export function outsideOf(
  bundle: BundleDiameter,
  coverings: readonly CoveringUse[],
): { readonly diameterMm: number; readonly working: Working } | null {
  const walls = coverings.map((c) => stretchWall(c));
  if (walls.some((w) => w === undefined)) return null;
  const figures = walls.map((value, i) => ({
    name: coverings[i]?.covering.designator ?? coverings[i]?.part?.partNumber ?? `Covering ${i + 1}`,
    value: value ?? 0,
    unit: 'mm',
  }));
  const { working } = bundle;
  return {
    diameterMm: bundle.laidMm + 2 * walls.reduce<number>((sum, w) => sum + (w ?? 0), 0),
    working: { ...working, figures: [...working.figures, ...figures] },
  };
}

const stretchWall = ({ part }: CoveringUse): number | undefined =>
  part?.wallMm === undefined ? undefined : coveringThicknessMm(part.wallMm, part.tapeOverlap);

/** Least bend radius by the factor of the limit set. */
function LeastBend({ diameterMm }: { diameterMm: number }) {
  const limit = useApp((s) => s.history.project.limitSet.limits.find((l) => l.id === 'bend-radius-factor'));
  if (!limit) return null;
  const result = bendRadius.run(
    bendRadius.inputs.parse({ bundleDiameterMm: diameterMm, bundleFactor: limit.value }),
  );
  if (!result.ok) return null;
  const { working, leastMm } = result.value;
  return (
    <div className="field">
      <span className="field-label">Least bend</span>
      <span className="field-value">
        <WorkedCalc
          title="Least inside radius of a bend"
          working={{ ...working, sources: [{ title: limit.source, verified: limit.verified }] }}
        >
          <Length mm={leastMm} />
        </WorkedCalc>{' '}
        <span className="second">
          <Quantity value={limit.value} /> × diameter
        </span>
      </span>
    </div>
  );
}
