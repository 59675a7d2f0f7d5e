import { compareNatural } from '../../base/stable-order';
import type { Harness } from '../../derive/harness';
import { roundTo } from '../../model/length-text';
import { PART_KIND_NAMES, type Part } from '../../model/parts/part';
import type { ObjectRef } from '../../rules/finding';
import { partRef } from '../../rules/refs';
import { harnessLines } from './harness-lines';
import type { Supply, Unit } from './part-lines';

/** One place in which a part stands, or another record that names it. */
export interface PartUse {
  readonly part: Part;
  readonly colour: string | null;
  /** "contact", or "alternate of" another part. */
  readonly use: string;
  readonly where: string;
  /** Null: not known, or nothing is used. */
  readonly quantity: number | null;
  readonly unit: Unit | null;
  readonly supply: Supply | null;
  readonly object: ObjectRef;
  readonly remark: string | null;
}

/** Every use of every part of a harness: by part as the parts list has them, then by designator. */
export function usesOf(harness: Harness): readonly PartUse[] {
  const used = harnessLines(harness).flatMap((line): PartUse[] => {
    const { part } = line;
    if (!part) return [];
    const uses = [...line.uses].sort((a, b) => compareNatural(a.designator, b.designator));
    return uses.map((u) => ({
      part,
      colour: line.colour || null,
      use: PART_KIND_NAMES[line.kind],
      where: u.designator,
      quantity: u.amount === undefined ? null : line.unit === 'm' ? roundTo(u.amount / 1000, 3) : u.amount,
      unit: line.unit,
      supply: line.supply,
      object: u.object,
      remark: u.remark ?? (u.amount === undefined ? 'length not known' : null),
    }));
  });
  return [...used, ...namesAsAlternate(harness)];
}

/** Records of the project that stand in for others: they would be hit by a change too. */
function namesAsAlternate({ project }: Harness): readonly PartUse[] {
  return project.parts.flatMap((part) =>
    project.parts
      .filter((other) => other.alternates?.includes(part.partNumber) || other.replacedBy === part.partNumber)
      .map((other) => ({
        part,
        colour: null,
        use: other.alternates?.includes(part.partNumber) ? 'alternate of' : 'replaces',
        where: other.partNumber,
        quantity: null,
        unit: null,
        supply: null,
        object: partRef(other),
        remark: null,
      })),
  );
}
