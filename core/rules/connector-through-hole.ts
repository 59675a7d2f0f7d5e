import { memoByIdentity } from '../base/memo-by-identity';
import { thickestMm } from '../derive/bundle';
import type { ConnectorUse, Harness, SegmentUse } from '../derive/harness';
import { sidesOfSegment } from '../derive/sides-of-segment';
import type { MatingHalf } from '../model/parts/part';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Evidence, Need } from './finding';
import { connectorRef, segmentRef } from './refs';
import type { Report, Rule } from './rule';
import { diameterNeeds, shownMm } from './shared/bundle-words';
import { fact, partFact, partNeed } from './shared/evidence';
import { editSegment } from './shared/example-route';

/**
 * Speaks of segments that state the hole they run through. The harness is threaded with one end first: all connectors on one
 * side of the segment pass the hole, with the diagonal of their bodies, and the bundle lies in it. Where another way joins
 * the two ends of the segment no side can be threaded.
 */
export const connectorThroughHole: Rule<'project'> = {
  meta: {
    id: 'connector-through-hole',
    revision: 1,
    severity: 'major',
    summary: 'One end of the harness, connectors and all, passes each hole that it is threaded through.',
    why: 'A finished harness whose connectors are larger than the hole is cut apart on the assembly line, or the sheet is.',
    source:
      'mission-assurance practice (no trapped harness); common practice: diagonal of the housing, bundle with its coverings',
    message: '{{segment}} runs through a hole of {{hole}} mm: {{problem}}',
    unknown: 'Whether the harness passes the hole of {{segment}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check(harness, report) {
    for (const use of withHole(harness.segments)) checkHole(harness, use, use.segment.holeMm ?? 0, report);
  },
  examples: () => ({
    good: [
      { name: 'no hole', project: tiny() },
      // sqrt(16 x 16 + 12 x 12) = 20
      { name: 'the diagonal of one end just passes', project: tiny((t) => hole(t, 20)) },
      {
        name: 'the other end is of no concern then',
        project: tiny((t) => {
          hole(t, 20);
          t.part('housing', 'H-PIN').body = { widthMm: 60, heightMm: 30 };
        }),
      },
    ],
    bad: [
      {
        name: 'neither end passes',
        project: tiny((t) => {
          hole(t, 19);
          t.part('housing', 'H-PIN').body = { widthMm: 30, heightMm: 12 };
        }),
        expect: ['S1'],
      },
      {
        name: 'the bundle is thicker than the hole',
        project: tiny((t) => editSegment(t, { holeMm: 2 })),
        expect: ['S1'],
      },
      {
        name: 'a closed loop',
        project: tiny((t) => {
          hole(t, 40);
          const first = t.project.segments[0];
          if (first) t.project.segments.push({ id: t.newId(), designator: 'S2', from: first.from, to: first.to, lengthMm: 900 }); // prettier-ignore
        }),
        expect: ['S1'],
      },
    ],
    unknown: [
      {
        name: 'no body size is stated',
        project: tiny((t) => editSegment(t, { holeMm: 30 })),
        expect: ['S1'],
      },
      {
        name: 'a wire without its diameter',
        project: tiny((t) => {
          hole(t, 30);
          delete t.part('wire', 'WIRE-22').odMm;
        }),
        expect: ['S1'],
      },
    ],
  }),
};

const withHole = memoByIdentity((segments: readonly SegmentUse[]): readonly SegmentUse[] =>
  segments.filter((s) => s.segment.holeMm !== undefined),
);

function checkHole(harness: Harness, use: SegmentUse, holeMm: number, report: Report): void {
  const { designator } = use.segment;
  const bundleMm = use.wires.length > 0 ? thickestMm(use) : 0;
  const sides = sidesOfSegment(use.segment, harness.project.segments)?.map((nodes) => sideOf(harness, nodes, holeMm)); // prettier-ignore
  const tooLarge = sides?.map((s) => s.tooLarge) ?? [];
  const evidence: Evidence[] = [
    ...fact('hole', holeMm, 'typed', 'mm'),
    ...fact('bundle with coverings', bundleMm && shownMm(bundleMm), 'packed circles and walls', 'mm'),
    ...(sides ?? []).flatMap((s) => s.evidence),
  ];
  const at = [segmentRef(use), ...tooLarge.flat().map(connectorRef)];
  const fail = (problem: string): void =>
    report.fail({ at, data: { segment: designator, hole: holeMm, problem }, evidence });
  if (bundleMm !== undefined && bundleMm > holeMm + 1e-9)
    return fail(`the bundle is ${shownMm(bundleMm)} mm thick`);
  if (!sides) return fail('another way joins its two ends, so neither can be threaded');
  if (tooLarge.length > 0 && tooLarge.every((list) => list.length > 0))
    return fail(`neither end passes: ${namesOf(tooLarge.flat())} are larger`);
  const passes = sides.some((s) => s.tooLarge.length === 0 && s.needs.length === 0);
  const needs = [
    ...(bundleMm === undefined ? diameterNeeds(use) : []),
    ...(passes ? [] : sides.filter((s) => s.tooLarge.length === 0).flatMap((s) => s.needs)),
  ];
  const seen = new Set<string>();
  const once = needs.filter((n) => !seen.has(n.what) && seen.add(n.what));
  if (once.length > 0)
    report.cannotVerify({ at: [segmentRef(use)], data: { segment: designator }, evidence, needs: once });
  else report.pass();
}

interface Side {
  readonly tooLarge: readonly ConnectorUse[];
  readonly needs: readonly Need[];
  readonly evidence: readonly Evidence[];
}

/** What of the harness sits at those nodes, against the hole. */
function sideOf(harness: Harness, nodes: ReadonlySet<string>, holeMm: number): Side {
  const tooLarge: ConnectorUse[] = [];
  const needs: Need[] = [];
  const evidence: Evidence[] = [];
  for (const use of harness.connectors) {
    const { connector, part } = use.resolved;
    if (connector.supply !== 'harness' || !part || !nodes.has(connector.node ?? '')) continue;
    const diagonal = diagonalMm(part);
    evidence.push(...partFact(part, `diagonal of ${connector.designator}`, diagonal, 'mm'));
    if (diagonal === undefined) needs.push(partNeed(part, 'body', `width and height of the body`));
    else if (diagonal > holeMm + 1e-9) tooLarge.push(use);
  }
  return { tooLarge, needs, evidence };
}

function diagonalMm({ body }: MatingHalf): number | undefined {
  if (body?.widthMm === undefined || body.heightMm === undefined) return undefined;
  return shownMm(Math.hypot(body.widthMm, body.heightMm));
}

const namesOf = (uses: readonly ConnectorUse[]): string =>
  uses.map((u) => u.resolved.connector.designator).join(', ');

/** The segment through a hole of that size; the housing of X1 is 16 x 12 mm, that of X2 larger. */
function hole(t: TinyDraft, holeMm: number): void {
  editSegment(t, { holeMm });
  t.part('housing', 'H-SOCKET').body = { widthMm: 16, heightMm: 12 };
  t.part('housing', 'H-PIN').body = { widthMm: 18, heightMm: 12 };
}
