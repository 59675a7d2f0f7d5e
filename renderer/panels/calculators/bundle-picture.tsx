import type { CalcReport } from '@latchwork/core/calc/calc-report';
import { coveringThicknessMm } from '@latchwork/core/calc/covering-thickness';
import type { PackedCircle } from '@latchwork/core/calc/packing/pack-circles';
import { useApp } from '../../app/store';
import { CrossSection, type SectionRing } from '../../ui/cross-section';

/** The cross-section of a bundle that was typed in: wires without names, coverings without parts. */
export function BundlePicture({ report }: { report: CalcReport }) {
  const unit = useApp((s) => s.view.lengthUnit);
  const result = (key: string): unknown => report.results.find((r) => r.key === key)?.value;
  const input = (key: string): unknown => report.inputs.find((i) => i.key === key)?.value;
  const circles = result('circles') as readonly PackedCircle[];
  const laidR = (result('laidMm') as number) / 2;
  const coverings = input('coverings') as readonly { wallMm: number; overlap?: number }[];
  const rings: SectionRing[] = [];
  for (const [i, c] of coverings.entries()) {
    const innerR = rings.at(-1)?.outerR ?? laidR;
    const outerR = innerR + coveringThicknessMm(c.wallMm, c.overlap);
    rings.push({ id: `covering ${i}`, name: `Covering ${i + 1}: ${c.wallMm} mm`, innerR, outerR });
  }
  const wires = circles.map((c, i) => ({
    ...c,
    id: `wire ${i}`,
    name: `Wire ${i + 1}: ${2 * c.r} mm`,
  }));
  return (
    <CrossSection
      section={{ wires, hulls: [], rings, laidR }}
      label={`Cross-section of ${circles.length} wires`}
      unit={unit}
    />
  );
}
