import { byId } from '../../base/by-id';
import type { Call } from '../../commands/dispatch';
import { segmentLengthMm } from '../../derive/route';
import { PART_KIND_NAMES, type Part } from '../../model/parts/part';
import type { Facts, Target } from '../tool';
import { STATION_STEP_MM } from './slide';

type OnRun = Extract<Part, { kind: 'covering' | 'tie' | 'clamp' | 'grommet' | 'label' }>;

/** A covering is laid over the whole run, outside of what lies there; anything else goes to the place under the pointer. */
export function dropOnRun(
  part: OnRun,
  target: Target,
  { project, snap }: Omit<Facts, 'inBox'>,
): { readonly call: Call } | { readonly refuse: string } {
  const on = runUnder(target, project);
  const segment = on && byId(project.segments).get(on.segment);
  if (!on || !segment)
    return { refuse: `Drop a ${PART_KIND_NAMES[part.kind]} on a segment of the formboard.` };
  const lengthMm = segmentLengthMm(segment, byId(project.nodes));
  const step = snap ? STATION_STEP_MM : 1;
  const atMm = Math.min(lengthMm, Math.round((on.atMm ?? lengthMm / 2) / step) * step);
  const station = { segment: segment.id, atMm };
  switch (part.kind) {
    case 'tie':
      return { call: { id: 'tie.add', args: { part, station } } };
    case 'clamp':
    case 'grommet':
      return { call: { id: 'fixing.add', args: { part, station } } };
    case 'label': {
      const on = { at: 'station' as const, station };
      return { call: { id: 'label.add', args: { part, text: segment.designator, on } } };
    }
    case 'covering': {
      const from = { segment: segment.id, atMm: 0 };
      const to = { segment: segment.id, atMm: lengthMm };
      const under = project.coverings.filter((c) => [c.from, c.to].some((s) => s.segment === segment.id));
      const layer = 1 + Math.max(0, ...under.map((c) => c.layer));
      return { call: { id: 'covering.add', args: { part, from, to, layer } } };
    }
  }
}

/** The run under the pointer; what lies on a run stands for it. */
function runUnder(
  target: Target,
  project: Facts['project'],
): { readonly segment: string; readonly atMm?: number | undefined } | undefined {
  if (target.on === 'segment') return { segment: target.id, atMm: target.atMm };
  if (target.on === 'covering') return byId(project.coverings).get(target.id)?.from;
  if (target.on === 'tie') return byId(project.ties).get(target.id)?.station;
  return target.on === 'fixing' ? byId(project.fixings).get(target.id)?.station : undefined;
}
