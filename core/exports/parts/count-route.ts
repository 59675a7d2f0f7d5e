import { carrierName, labelCarrier } from '../../derive/label-carrier';
import { byId } from '../../base/by-id';
import type { Harness } from '../../derive/harness';
import { partOfKind } from '../../model/parts/part';
import type { ObjectRef } from '../../rules/finding';
import { coveringNeed } from './covering-length';
import type { PartLines } from './part-lines';

/** What lies on the way and marks it: splices, coverings, ties, clamps, grommets, labels, fuses. */
export function countRoute(harness: Harness, lines: PartLines): void {
  const { project, parts } = harness;
  const pieces = { colour: null, supply: 'harness', unit: 'pcs' } as const;
  const part = (id: string | undefined) => (id === undefined ? undefined : parts.get(id));
  const segments = byId(project.segments);
  const segmentAt = (id: string): { designator: string; object: ObjectRef } => ({
    designator: segments.get(id)?.designator ?? id,
    object: { type: 'segment', id },
  });

  for (const s of project.splices)
    lines.add(
      { ...pieces, kind: 'splice', part: part(s.part) },
      { amount: 1, designator: s.designator, object: { type: 'splice', id: s.id } },
    );
  for (const c of project.coverings) {
    const record = part(c.part);
    const need = coveringNeed(harness, c, partOfKind(record, 'covering'));
    const at = segmentAt(c.from.segment);
    lines.add(
      { kind: 'covering', part: record, colour: null, supply: 'harness', unit: 'm' },
      {
        amount: need.lengthMm,
        ...at,
        designator: c.designator ?? at.designator,
        remark: need.remark,
      },
    );
  }
  for (const t of project.ties)
    lines.add({ ...pieces, kind: 'tie', part: part(t.part) }, { amount: 1, ...segmentAt(t.station.segment) });
  for (const f of project.fixings) {
    const record = part(f.part);
    const at = segmentAt(f.station.segment);
    lines.add(
      { ...pieces, kind: record?.kind === 'grommet' ? 'grommet' : 'clamp', part: record },
      { amount: 1, ...at, designator: f.designator ?? at.designator },
    );
  }
  for (const l of project.labels)
    lines.add(
      { ...pieces, kind: 'label', part: part(l.part) },
      { amount: 1, designator: carrierName(project, l.on), object: labelCarrier(l.on) },
    );
  for (const f of project.fuses)
    lines.add(
      { ...pieces, kind: 'fuse', part: part(f.part) },
      { amount: 1, designator: f.designator, object: { type: 'wire', id: f.wire } },
    );
}
