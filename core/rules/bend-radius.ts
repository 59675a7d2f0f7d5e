import { bendRadius as bendRadiusCalc } from '../calc/bend-radius';
import { bundleMembers, thickestMm } from '../derive/bundle';
import type { SegmentUse } from '../derive/harness';
import { bendsOf } from '../derive/segment-bends';
import { roundTo } from '../model/length-text';
import { tiny } from '../model/tiny';
import type { Evidence } from './finding';
import { segmentRef } from './refs';
import type { Rule } from './rule';
import { bundleFact, diameterNeeds, shownMm } from './shared/bundle-words';
import { fact, limitFact, limitNeed } from './shared/evidence';
import { addCovering, dropLimit, editSegment } from './shared/example-route';

const LIMIT = 'bend-radius-factor';

/**
 * Speaks of segments whose tightest installed bend is stated, else of those that are drawn with corners, which must leave
 * room for an arc that is wide enough. How branches leave a node on the flat formboard says nothing about the installed bend.
 */
export const bendRadius: Rule<'segment'> = {
  meta: {
    id: 'bend-radius',
    revision: 1,
    severity: 'major',
    summary: 'Every bend is at least as wide as the bundle and each of its wires and cables need.',
    why: 'In a tight bend the outer insulation is stretched and the inner one creased, strands work-harden and shields open; a cable loses its impedance.',
    source:
      'inside radius = factor x outside diameter: NASA-STD-8739.4 7.3.21, SAE AS50881, IPC/WHMA-A-620 table 14-1; the most sensitive member decides',
    message:
      'The bend in {{segment}} has {{measured}} mm inside radius, {{needed}} mm are needed ({{governs}})',
    unknown: 'Whether {{segment}} bends wide enough cannot be verified; not stated: {{needs}}',
  },
  scope: 'segment',
  check(use, report, context) {
    const { segment } = use;
    const bends = bendsOf(use);
    if (use.wires.length === 0 || (segment.bendRadiusMm === undefined && bends.length === 0)) return;
    const limit = context.limit(LIMIT);
    const at = [segmentRef(use)];
    const data = { segment: segment.designator };
    const evidence = [
      ...bundleFact(use),
      ...limitFact('least radius, in diameters of the bundle', limit, context.limitSet),
    ];
    const cases = casesOf(use);
    if (!limit || !cases) {
      const needs = [...(limit ? [] : [limitNeed(LIMIT, context.limitSet)]), ...diameterNeeds(use)];
      return report.cannotVerify({ at, data, evidence, needs });
    }
    const judged = cases.map((c) => ({ ...c, ...neededMm(use, c.diameterMm, limit.value) }));
    const worst = judged.reduce((a, b) => (b.radiusMm - b.leastMm < a.radiusMm - a.leastMm ? b : a));
    if (roundTo(worst.radiusMm, 6) >= roundTo(worst.leastMm, 6)) return report.pass();
    const [measured, needed] = [shownMm(Math.max(0, worst.radiusMm)), shownMm(worst.leastMm)];
    report.fail({
      at,
      data: { ...data, measured, needed, governs: worst.governs },
      evidence: [
        ...evidence,
        ...worst.evidence,
        ...fact('outside diameter at the bend', shownMm(worst.diameterMm), 'bundle with its coverings', 'mm'),
        ...fact('radius needed', needed, `calculated, ${worst.governs} decides`, 'mm'),
      ],
    });
  },
  examples: () => ({
    good: [
      { name: 'a straight segment', project: tiny() },
      // 2.4 mm bundle, 5 diameters: 12 mm; a right angle between runs of 150 mm has room for 150 mm.
      {
        name: 'a corner with room for a wide arc',
        project: tiny((t) => editSegment(t, { via: [{ x: 150, y: 150 }] })),
      },
      { name: 'exactly the radius', project: tiny((t) => editSegment(t, { bendRadiusMm: 12 })) },
    ],
    bad: [
      {
        name: 'stated tighter than five diameters',
        project: tiny((t) => editSegment(t, { bendRadiusMm: 11.9 })),
        expect: ['S1'],
      },
      {
        name: 'two corners 20 mm apart',
        project: tiny((t) =>
          editSegment(t, {
            via: [
              { x: 140, y: 0 },
              { x: 140, y: 20 },
              { x: 300, y: 20 },
            ],
          }),
        ),
        expect: ['S1'],
      },
      {
        name: 'the covering makes the bundle thicker',
        project: tiny((t) => {
          editSegment(t, { bendRadiusMm: 12 });
          addCovering(t, { innerMaxMm: 4, wallMm: 0.5 });
        }),
        expect: ['S1'],
      },
      {
        name: 'a wire that asks for more than the bundle',
        project: tiny((t) => {
          editSegment(t, { bendRadiusMm: 12 });
          t.part('wire', 'WIRE-22').bendFactor = 15;
        }),
        expect: ['S1'],
      },
    ],
    unknown: [
      {
        name: 'a wire without its diameter',
        project: tiny((t) => {
          editSegment(t, { bendRadiusMm: 12 });
          delete t.part('wire', 'WIRE-22').odMm;
        }),
        expect: ['S1'],
      },
      {
        name: 'no limit in the limit set',
        project: tiny((t) => {
          editSegment(t, { bendRadiusMm: 12 });
          dropLimit(t, LIMIT);
        }),
        expect: ['S1'],
      },
    ],
  }),
};

interface BendCase {
  readonly radiusMm: number;
  readonly diameterMm: number;
  readonly evidence: readonly Evidence[];
}

/** Inside radius and diameter of each bend; undefined where a diameter is not known. */
function casesOf(use: SegmentUse): readonly BendCase[] | undefined {
  const stated = use.segment.bendRadiusMm;
  if (stated !== undefined) {
    const diameterMm = thickestMm(use);
    if (diameterMm === undefined) return undefined;
    return [{ radiusMm: stated, diameterMm, evidence: fact('inside radius', stated, 'typed', 'mm') }];
  }
  const cases = bendsOf(use).flatMap((b): BendCase[] => {
    const diameterMm = thickestMm(use, b.atMm, b.atMm);
    if (diameterMm === undefined) return [];
    const evidence = [
      ...fact('corner', Math.round(b.turnDeg), 'formboard', 'degrees'),
      ...fact('room for a radius to the centre of', shownMm(b.radiusMm), 'formboard', 'mm'),
    ];
    return [{ radiusMm: b.radiusMm - diameterMm / 2, diameterMm, evidence }];
  });
  return cases.length === bendsOf(use).length ? cases : undefined;
}

function neededMm(
  use: SegmentUse,
  bundleDiameterMm: number,
  factor: number,
): { readonly leastMm: number; readonly governs: string } {
  const members = bundleMembers(use.wires).flatMap((m) =>
    m.bendFactor === undefined || m.diameterMm === undefined
      ? []
      : [{ name: m.wires[0]?.wire.designator ?? 'bundle', diameterMm: m.diameterMm, factor: m.bendFactor }],
  );
  const input = bendRadiusCalc.inputs.safeParse({
    bundleDiameterMm,
    bundleFactor: factor,
    members: members.map(({ diameterMm, factor }) => ({ diameterMm, factor })),
  });
  const found = input.success ? bendRadiusCalc.run(input.data) : undefined;
  if (!found?.ok) return { leastMm: factor * bundleDiameterMm, governs: 'bundle' };
  const member = /^member (\d+)$/.exec(found.value.governs);
  return {
    leastMm: found.value.leastMm,
    governs: member ? (members[Number(member[1]) - 1]?.name ?? 'bundle') : 'bundle',
  };
}
