import { diametersAlong, thickestMm } from '../derive/bundle';
import type { CoveringUse, SegmentUse, TieUse } from '../derive/harness';
import { tiny } from '../model/tiny';
import { partRef, segmentRef } from './refs';
import type { Report, Rule } from './rule';
import { diameterNeeds } from './shared/bundle-words';
import { partFact, partNeed } from './shared/evidence';
import { addCovering, addTies } from './shared/example-route';
import { judgeBundle } from './shared/judge-bundle';

/**
 * Speaks of coverings with an inside and of ties, each held against what lies under it. A least diameter counts where the
 * record states one; tape goes around anything. A segment without wires is no bundle yet.
 */
export const bundleFit: Rule<'segment'> = {
  meta: {
    id: 'bundle-fit',
    revision: 1,
    severity: 'major',
    summary: 'The bundle goes into every covering and tie on it, and is held by it.',
    why: 'A bundle that is too thick splits a sleeve or cannot be pulled in; in one that is too wide it slides and wears. A tie that does not reach around holds nothing.',
    source:
      'common practice: outside diameter with all coverings underneath; packing of unequal circles, loosened as laid by hand',
    message: 'The bundle in {{segment}} is {{measured}} under {{what}}, which takes {{limit}}',
    unknown: 'Whether {{what}} fits the bundle in {{segment}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'segment',
  check(use, report) {
    if (use.wires.length === 0) return;
    for (const c of use.coverings) if (c.part && c.part.form !== 'tape') checkCovering(use, c, report);
    const byPart = new Map<string, TieUse[]>();
    for (const t of use.ties) if (t.part) byPart.set(t.part.id, [...(byPart.get(t.part.id) ?? []), t]);
    for (const ties of byPart.values()) checkTies(use, ties, report);
  },
  examples: () => ({
    good: [
      { name: 'nothing on the wires', project: tiny() },
      {
        name: 'two wires of 1.2 mm, side by side 2.4 mm, in a sleeve for 2 to 4 mm',
        project: tiny((t) => addCovering(t, { innerMinMm: 2, innerMaxMm: 4 })),
      },
      {
        name: 'exactly as wide as the tube inside',
        project: tiny((t) => addCovering(t, { form: 'tube', innerMaxMm: 2.4 })),
      },
      {
        name: 'tape has no inside',
        project: tiny((t) => addCovering(t, { form: 'tape', wallMm: 0.2 })),
      },
      { name: 'a tie that reaches around', project: tiny((t) => addTies(t, [50, 150])) },
    ],
    bad: [
      {
        name: 'a tube of 2 mm',
        project: tiny((t) => addCovering(t, { form: 'tube', innerMaxMm: 2 })),
        expect: ['S1'],
      },
      {
        name: 'heat-shrink that does not shrink to the bundle',
        project: tiny((t) => addCovering(t, { form: 'heat-shrink', innerMinMm: 3, innerMaxMm: 6 })),
        expect: ['S1'],
      },
      {
        name: 'the sleeve underneath makes it too thick',
        project: tiny((t) => {
          addCovering(t, { innerMaxMm: 4, wallMm: 0.5 });
          addCovering(t, { form: 'tube', innerMaxMm: 3 }, { layer: 2, fromMm: 100, toMm: 200 });
        }),
        expect: ['S1'],
      },
      {
        name: 'ties too short, told once',
        project: tiny((t) => addTies(t, [50, 150], { bundleMaxMm: 2 })),
        expect: ['S1'],
      },
    ],
    unknown: [
      {
        name: 'a sleeve without its inside diameter',
        project: tiny((t) => addCovering(t, {})),
        expect: ['S1'],
      },
      {
        name: 'a wire without its diameter',
        project: tiny((t) => {
          delete t.part('wire', 'WIRE-22').odMm;
          addCovering(t, { innerMaxMm: 4 });
        }),
        expect: ['S1'],
      },
      {
        name: 'no wall of the covering underneath',
        project: tiny((t) => {
          addCovering(t, { innerMaxMm: 4 });
          addCovering(t, { innerMaxMm: 6 }, { layer: 2 });
        }),
        expect: ['S1'],
      },
      {
        name: 'a tie that does not state how far it reaches',
        project: tiny((t) => {
          addTies(t, [50]);
          delete t.part('tie', 'TIE').bundleMaxMm;
        }),
        expect: ['S1'],
      },
    ],
  }),
};

function checkCovering(use: SegmentUse, { covering, part, fromMm, toMm }: CoveringUse, report: Report): void {
  if (!part || toMm <= fromMm) return;
  const { layer } = covering;
  const under = diametersAlong(use, fromMm, toMm, layer)?.map((d) => d.diameterMm);
  judgeBundle(report, {
    use,
    at: [segmentRef(use), { type: 'covering', id: covering.id }],
    what: `${part.partNumber}${covering.designator ? ` (${covering.designator})` : ''}`,
    diametersMm: under,
    min: part.innerMinMm,
    max: part.innerMaxMm,
    evidence: [
      ...partFact(part, 'smallest inside diameter', part.innerMinMm, 'mm'),
      ...partFact(part, 'largest inside diameter', part.innerMaxMm, 'mm'),
    ],
    needs: [
      ...diameterNeeds(use, layer),
      ...(part.innerMaxMm === undefined ? [partNeed(part, 'innerMaxMm', 'largest inside diameter')] : []),
    ],
  });
}

/** Ties of one part on one segment are told together: the one at the worst place decides. */
function checkTies(use: SegmentUse, ties: readonly TieUse[], report: Report): void {
  const part = ties[0]?.part;
  if (!part) return;
  const diameters = ties.map((t) => thickestMm(use, t.atMm, t.atMm));
  const known = diameters.filter((d) => d !== undefined);
  judgeBundle(report, {
    use,
    at: [segmentRef(use), partRef(part)],
    what: `the tie ${part.partNumber}`,
    diametersMm: known.length === ties.length ? known : undefined,
    min: part.bundleMinMm,
    max: part.bundleMaxMm,
    evidence: [
      ...partFact(part, 'thinnest bundle', part.bundleMinMm, 'mm'),
      ...partFact(part, 'thickest bundle', part.bundleMaxMm, 'mm'),
    ],
    needs: [
      ...diameterNeeds(use),
      ...(part.bundleMaxMm === undefined ? [partNeed(part, 'bundleMaxMm', 'thickest bundle')] : []),
    ],
  });
}
