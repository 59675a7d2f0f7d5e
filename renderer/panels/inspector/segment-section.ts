import { coveringThicknessMm } from '@latchwork/core/calc/covering-thickness';
import type { BundleDiameter } from '@latchwork/core/calc/bundle-diameter';
import { packCircles, type PackedCircle } from '@latchwork/core/calc/packing/pack-circles';
import { type BundleMember, bundleMembers, wireDiameterMm } from '@latchwork/core/derive/bundle';
import type { CoveringUse, ResolvedWire, SegmentUse } from '@latchwork/core/derive/harness';
import { colourText } from '@latchwork/core/model/colour';
import { wireSizeText } from '@latchwork/core/model/wire-size';
import type { Section, SectionHull, SectionRing, SectionWire } from '../../ui/cross-section';

/** The picture of a segment between two stations: its bundle, and the coverings that lie there. */
export function segmentSection(
  use: SegmentUse,
  bundle: BundleDiameter,
  coverings: readonly CoveringUse[],
): Section {
  const wires: SectionWire[] = [];
  const hulls: SectionHull[] = [];
  bundleMembers(use.wires).forEach((member, i) => {
    const circle = bundle.circles[i];
    if (!circle) return;
    const [first] = member.wires as [ResolvedWire];
    if (member.wires.length === 1 && !first.wire.core) {
      wires.push(discOf(first, circle));
      return;
    }
    hulls.push(hullOf(member, first, circle));
    wires.push(...insideOf(member, circle));
  });
  return { wires, hulls, rings: ringsOf(coverings, bundle.laidMm / 2), laidR: bundle.laidMm / 2 };
}

const discOf = (w: ResolvedWire, { x, y, r }: PackedCircle): SectionWire => ({
  id: w.wire.id,
  name: wireName(w),
  colour: w.wire.colour ?? null,
  x,
  y,
  r,
});

/** Designator, colour, size and signal, as far as they are known. */
export const wireName = ({ wire, conductor, signal }: ResolvedWire): string =>
  [
    wire.designator,
    wire.colour && colourText(wire.colour),
    conductor && wireSizeText(conductor.size),
    signal?.name,
  ]
    .filter(Boolean)
    .join(' · ');

function hullOf({ wires }: BundleMember, first: ResolvedWire, { x, y, r }: PackedCircle): SectionHull {
  const cable = first.wire.core ? first.part : undefined;
  if (first.wire.core)
    return {
      id: first.wire.core.cable,
      name: `cable ${cable?.partNumber ?? ''}`.trim(),
      form: 'jacket',
      colour: cable?.kind === 'cable' ? cable.jacketColour : undefined,
      x,
      y,
      r,
    };
  return {
    id: first.group?.id ?? first.wire.id,
    name: `${first.group?.designator ?? 'twist'}: ${wires.map((w) => w.wire.designator).join(', ')}`,
    form: 'twist',
    x,
    y,
    r,
  };
}

/** Room that a jacket takes of the radius of its cable where the diameters of the cores are not stated. */
const CORES_SHARE = 0.8;

/** The wires of a twist or a cable inside its circle; cores of unknown diameter as large as they fit. */
function insideOf({ wires }: BundleMember, hull: PackedCircle): SectionWire[] {
  const diameters = wires.map(wireDiameterMm);
  const known = diameters.every((d) => d !== undefined);
  const packed = packCircles(diameters.map((d) => (known && d !== undefined ? d / 2 : 1)));
  const scale = Math.min(known ? 1 : Infinity, ((known ? 1 : CORES_SHARE) * hull.r) / packed.radius);
  return wires.map((w, i) => {
    const c = packed.circles[i] as PackedCircle;
    return discOf(w, { x: hull.x + c.x * scale, y: hull.y + c.y * scale, r: c.r * scale });
  });
}

function ringsOf(coverings: readonly CoveringUse[], laidR: number): SectionRing[] {
  const rings: SectionRing[] = [];
  let innerR = laidR;
  for (const { covering, part } of coverings) {
    if (part?.wallMm === undefined) continue;
    const outerR = innerR + coveringThicknessMm(part.wallMm, part.tapeOverlap);
    const name = [covering.designator, part.form, part.partNumber].filter(Boolean).join(' · ');
    rings.push({ id: covering.id, name, innerR, outerR });
    innerR = outerR;
  }
  return rings;
}
