import { byId } from '../base/by-id';
import { thickestMm } from '../derive/bundle';
import { partIn, type Harness, type SegmentUse } from '../derive/harness';
import type { Part } from '../model/parts/part';
import { tiny } from '../model/tiny';
import type { Station } from '../model/topology';
import type { ObjectRef } from './finding';
import { partRef, segmentRef } from './refs';
import type { Report, Rule } from './rule';
import { diameterNeeds } from './shared/bundle-words';
import { partFact, partNeed } from './shared/evidence';
import { addFixing, addStationLabel } from './shared/example-fixing';
import { judgeBundle } from './shared/judge-bundle';

/**
 * Speaks of clamps and grommets, and of labels that are wrapped around the harness, each held against the bundle with its
 * coverings at its station. A segment without wires is no bundle yet. Ties and coverings: `bundle-fit`.
 */
export const fixingFit: Rule<'project'> = {
  meta: {
    id: 'fixing-fit',
    revision: 1,
    severity: 'major',
    summary: 'Every clamp, grommet and label on the harness takes the bundle where it sits.',
    why: 'A clamp that is too small crushes insulation or does not close; in one that is too large, or in a wide grommet, the harness rubs until it is bare. A label that is too short does not stick to itself.',
    source:
      'common practice: outside diameter with all coverings at the station; packing of unequal circles, loosened as laid by hand',
    message: 'The bundle in {{segment}} is {{measured}} at {{what}}, which takes {{limit}}',
    unknown: 'Whether {{what}} takes the bundle in {{segment}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check(harness, report) {
    for (const { part, station, name, ref } of aroundHarness(harness)) {
      const segment = byId(harness.project.segments).placeOf(station.segment);
      const use = segment === undefined ? undefined : harness.segments[segment];
      if (use && use.wires.length > 0) judge(use, { part, station, name, ref }, report);
    }
  },
  examples: () => ({
    good: [
      { name: 'nothing holds the harness', project: tiny() },
      {
        name: 'two wires of 1.2 mm, side by side 2.4 mm, in a clamp for 2 to 4 mm',
        project: tiny((t) => addFixing(t, 'clamp', { bundleMinMm: 2, bundleMaxMm: 4 })),
      },
      {
        name: 'exactly as wide as the grommet',
        project: tiny((t) => addFixing(t, 'grommet', { boreMaxMm: 2.4 })),
      },
      { name: 'a label that goes around', project: tiny((t) => addStationLabel(t, { bundleMaxMm: 6 })) },
    ],
    bad: [
      {
        name: 'a clamp that is too small',
        project: tiny((t) => addFixing(t, 'clamp', { bundleMinMm: 1, bundleMaxMm: 2 })),
        expect: ['S1'],
      },
      {
        name: 'a clamp in which the bundle slides',
        project: tiny((t) => addFixing(t, 'clamp', { bundleMinMm: 3, bundleMaxMm: 6 })),
        expect: ['S1'],
      },
      {
        name: 'a grommet that is too narrow',
        project: tiny((t) => addFixing(t, 'grommet', { boreMinMm: 1, boreMaxMm: 2 })),
        expect: ['S1'],
      },
      {
        name: 'a label that is too short',
        project: tiny((t) => addStationLabel(t, { bundleMaxMm: 2 })),
        expect: ['S1'],
      },
    ],
    unknown: [
      {
        name: 'a clamp that does not state what it takes',
        project: tiny((t) => addFixing(t, 'clamp', {})),
        expect: ['S1'],
      },
      {
        name: 'a wire without its diameter in a grommet',
        project: tiny((t) => {
          delete t.part('wire', 'WIRE-22').odMm;
          addFixing(t, 'grommet', { boreMaxMm: 4 });
        }),
        expect: ['S1'],
      },
    ],
  }),
};

type Around = Extract<Part, { kind: 'clamp' | 'grommet' | 'label' }>;

interface OnHarness {
  readonly part: Around;
  readonly station: Station;
  readonly name: string;
  readonly ref: ObjectRef;
}

function aroundHarness({ project }: Harness): readonly OnHarness[] {
  const fixings = project.fixings.flatMap(({ id: fixing, part: id, designator, station }): OnHarness[] => {
    const part = partIn(project, id);
    if (part?.kind !== 'clamp' && part?.kind !== 'grommet') return [];
    const name = `the ${part.kind} ${part.partNumber}${designator ? ` (${designator})` : ''}`;
    return [{ part, station, name, ref: { type: 'fixing', id: fixing } }];
  });
  const labels = project.labels.flatMap(({ id: label, part: id, text, on }): OnHarness[] => {
    const part = partIn(project, id);
    if (part?.kind !== 'label' || on.at !== 'station') return [];
    const ref = { type: 'label', id: label } as const;
    return [{ part, station: on.station, name: `the label "${text}"`, ref }];
  });
  return [...fixings, ...labels];
}

function judge(use: SegmentUse, { part, station, name: what, ref }: OnHarness, report: Report): void {
  const atMm = Math.min(station.atMm, use.lengthMm);
  const diameterMm = thickestMm(use, atMm, atMm);
  const [min, max] =
    part.kind === 'grommet'
      ? [part.boreMinMm, part.boreMaxMm]
      : [part.kind === 'clamp' ? part.bundleMinMm : undefined, part.bundleMaxMm];
  const field = part.kind === 'grommet' ? 'boreMaxMm' : 'bundleMaxMm';
  judgeBundle(report, {
    use,
    at: [segmentRef(use), ref, partRef(part)],
    what,
    diametersMm: diameterMm === undefined ? undefined : [diameterMm],
    min,
    max,
    evidence: [
      ...partFact(part, 'thinnest bundle', min, 'mm'),
      ...partFact(part, 'thickest bundle', max, 'mm'),
    ],
    needs: [...diameterNeeds(use), ...(max === undefined ? [partNeed(part, field, 'thickest bundle')] : [])],
  });
}
