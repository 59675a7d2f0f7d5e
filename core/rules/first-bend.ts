import { firstTie } from '../calc/first-tie';
import { bundleOf } from '../derive/bundle';
import type { ResolvedConnector, SegmentUse } from '../derive/harness';
import { bendsOf } from '../derive/segment-bends';
import { roundTo } from '../model/length-text';
import { tiny } from '../model/tiny';
import { connectorRef, segmentRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { bundleFact, shownMm } from './shared/bundle-words';
import { fact, limitFact, limitNeed, partFact } from './shared/evidence';
import { addTies, dropLimit, editSegment } from './shared/example-route';

const LIMIT = 'first-bend-straight';

/**
 * Speaks of ties and drawn corners on a segment that ends at a connector of the harness: the first of them counted from that
 * end. The node stands for the rear of the housing, the corner for the middle of its arc.
 */
export const firstBend: Rule<'segment'> = {
  meta: {
    id: 'first-bend',
    revision: 1,
    severity: 'major',
    summary: 'Wires run straight out of a housing before the first tie or bend.',
    why: 'A tie or bend right behind a housing pulls contacts askew in their cavities; they mate hard, lose contact force, or back out.',
    source:
      'common practice; NASA-STD-8739.4 warns of sharp bends at connectors. The length is a limit of the project',
    message:
      'In {{segment}} {{what}} is {{measured}} mm behind {{connector}}, {{needed}} mm should be straight',
    unknown:
      'Whether {{segment}} leaves {{connector}} straight for long enough cannot be verified; not stated: {{needs}}',
  },
  scope: 'segment',
  check(use, report, context) {
    if (use.wires.length === 0) return;
    for (const c of use.fromConnectors) checkEnd(use, c, (mm) => mm, report, context);
    for (const c of use.toConnectors) checkEnd(use, c, (mm) => use.lengthMm - mm, report, context);
  },
  examples: () => ({
    good: [
      { name: 'no tie and no bend', project: tiny() },
      { name: 'exactly 25 mm at both ends', project: tiny((t) => addTies(t, [25, 275])) },
      {
        name: 'a corner far from both ends',
        project: tiny((t) => editSegment(t, { via: [{ x: 150, y: 60 }] })),
      },
      {
        name: 'a half that comes with its equipment is no affair of the harness',
        project: tiny((t) => {
          t.connector('X2').supply = 'equipment';
          addTies(t, [290]);
        }),
      },
    ],
    bad: [
      { name: 'a tie 10 mm behind X1', project: tiny((t) => addTies(t, [10, 150])), expect: ['S1'] },
      { name: 'ties close to both', project: tiny((t) => addTies(t, [24.9, 280])), expect: ['S1', 'S1'] },
      {
        name: 'a corner 15 mm behind X2',
        project: tiny((t) => editSegment(t, { via: [{ x: 300, y: 15 }] })),
        expect: ['S1'],
      },
    ],
    unknown: [
      {
        name: 'no limit in the limit set',
        project: tiny((t) => {
          dropLimit(t, LIMIT);
          addTies(t, [100]);
        }),
        expect: ['S1', 'S1'],
      },
    ],
  }),
};

function checkEnd(
  use: SegmentUse,
  connector: ResolvedConnector,
  distanceMm: (atMm: number) => number,
  report: Report,
  context: RuleContext,
): void {
  if (connector.connector.supply !== 'harness') return;
  const stops = [
    ...use.ties.map((t) => ({ what: 'the first tie', mm: distanceMm(t.atMm) })),
    ...bendsOf(use).map((b) => ({ what: 'the first bend', mm: distanceMm(b.atMm) })),
  ];
  if (stops.length === 0) return;
  const first = stops.reduce((a, b) => (b.mm < a.mm ? b : a));
  const limit = context.limit(LIMIT);
  const at = [segmentRef(use), connectorRef(connector)];
  const data = { segment: use.segment.designator, connector: connector.connector.designator };
  if (!limit)
    return report.cannotVerify({ open: true, at, data, needs: [limitNeed(LIMIT, context.limitSet)] });
  const faceWidthMm = faceMm(connector);
  const needed = neededMm(use, faceWidthMm, limit.value);
  if (roundTo(first.mm, 6) >= roundTo(needed, 6)) return report.pass();
  report.fail({
    at,
    data: { ...data, what: first.what, measured: shownMm(first.mm), needed: shownMm(needed) },
    evidence: [
      ...fact(`${first.what} from the rear of ${data.connector}`, shownMm(first.mm), 'formboard', 'mm'),
      ...limitFact('least straight length', limit, context.limitSet),
      ...bundleFact(use),
      ...(connector.part
        ? partFact(connector.part, 'width of the wire-entry face, about', faceWidthMm, 'mm')
        : []),
    ],
  });
}

/** Ways of a row times the pitch; zero where it is not known, so that the limit alone decides. */
function faceMm({ part }: ResolvedConnector): number {
  return part?.pitchMm === undefined ? 0 : roundTo(Math.ceil(part.ways / (part.rows ?? 1)) * part.pitchMm, 3);
}

/** The limit, or more where the face is so wide that its outermost wires would be pulled aside. */
function neededMm(use: SegmentUse, faceWidthMm: number, leastMm: number): number {
  const input = firstTie.inputs.safeParse({ diameterMm: bundleOf(use)?.laidMm, faceWidthMm, leastMm });
  const found = input.success ? firstTie.run(input.data) : undefined;
  return found?.ok ? found.value.straightMm : leastMm;
}
