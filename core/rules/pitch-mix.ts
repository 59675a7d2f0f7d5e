import { pitchErrorMm } from '../calc/pitch-error';
import type { ResolvedConnector } from '../derive/harness';
import { roundTo } from '../model/length-text';
import { tiny } from '../model/tiny';
import type { Evidence } from './finding';
import { connectorRef } from './refs';
import type { Report, Rule, RuleContext } from './rule';
import { fact, limitFact, limitNeed, partFact } from './shared/evidence';
import { dropLimit } from './shared/example-route';
import { mateSides } from './shared/mate-sides';

const LIMIT = 'pitch-error-max';

/**
 * Speaks of pitches that differ: of two halves, and of a header and the footprint that the board provides for it, where
 * that is stated. That halves of unlike pitch are not meant for each other is `mate-interface`; this one says how far off
 * the last contact is.
 */
export const pitchMix: Rule<'mate'> = {
  meta: {
    id: 'pitch-mix',
    revision: 1,
    severity: 'major',
    summary: 'What two unlike pitches add up to over the row is within the play of the contacts.',
    why: '2.50 and 2.54 mm, or 1.25 and 1.27 mm, look alike and go together for a few ways; over twelve ways the last contact is 0.44 mm off and bends, or the header does not enter its holes.',
    source: 'plain geometry: (ways - 1) x difference of the pitches',
    message:
      '{{a}} has a pitch of {{pitchA}} mm, {{b}} of {{pitchB}} mm: {{measured}} mm off over {{ways}} ways',
    unknown: 'Whether the pitches of {{a}} and {{b}} go together cannot be verified; not stated: {{needs}}',
  },
  scope: 'mate',
  check(mate, report, context) {
    const sides = mateSides(mate);
    if (sides)
      compare(report, context, {
        at: sides.at,
        ways: Math.min(columns(sides.a), columns(sides.b)),
        a: sides.names.a,
        b: sides.names.b,
        pitchA: sides.a.pitchMm,
        pitchB: sides.b.pitchMm,
        evidence: [
          ...partFact(sides.a, `pitch of ${sides.names.a}`, sides.a.pitchMm, 'mm'),
          ...partFact(sides.b, `pitch of ${sides.names.b}`, sides.b.pitchMm, 'mm'),
        ],
      });
    for (const { resolved } of [mate.a, mate.b]) checkFootprint(resolved, report, context);
  },
  examples: () => ({
    good: [
      { name: 'halves of one pitch', project: tiny() },
      {
        name: 'a footprint of the same pitch',
        project: tiny((t) => void (t.connector('X3').footprint = { pitchMm: 3 })),
      },
      {
        name: 'little enough over three ways',
        project: tiny((t) => void (t.connector('X3').footprint = { pitchMm: 2.95 })),
      },
    ],
    bad: [
      {
        // Three ways: 2 x 0.1 mm.
        name: 'halves of 3.0 and 3.1 mm',
        project: tiny((t) => void (t.part('header', 'HEADER').pitchMm = 3.1)),
        expect: ['X1–X3'],
      },
      {
        // Twelve ways: 11 x 0.04 = 0.44 mm.
        name: 'a header of 2.50 mm on a footprint of 2.54 mm, twelve ways',
        project: tiny((t) => {
          for (const h of ['H-SOCKET', 'H-PIN'])
            Object.assign(t.part('housing', h), { ways: 12, pitchMm: 2.5 });
          Object.assign(t.part('header', 'HEADER'), { ways: 12, pitchMm: 2.5 });
          t.connector('X3').footprint = { pitchMm: 2.54 };
        }),
        expect: ['X3'],
      },
    ],
    unknown: [
      {
        name: 'pitches that differ, and no limit',
        project: tiny((t) => {
          t.part('header', 'HEADER').pitchMm = 3.1;
          dropLimit(t, LIMIT);
        }),
        expect: ['X1–X3'],
      },
    ],
  }),
};

/** Positions in a row, along which the pitches add up. */
const columns = (half: { readonly ways: number; readonly rows?: number | undefined }): number =>
  Math.ceil(half.ways / (half.rows ?? 1));

function checkFootprint(resolved: ResolvedConnector, report: Report, context: RuleContext): void {
  const { connector, part } = resolved;
  const pitchB = connector.footprint?.pitchMm;
  if (part?.kind !== 'header' || pitchB === undefined) return;
  compare(report, context, {
    at: [connectorRef(resolved)],
    ways: columns(part),
    a: connector.designator,
    b: `its footprint`,
    pitchA: part.pitchMm,
    pitchB,
    evidence: [
      ...partFact(part, `pitch of ${connector.designator}`, part.pitchMm, 'mm'),
      ...fact('pitch of the footprint', pitchB, 'typed', 'mm'),
    ],
  });
}

interface Pair {
  readonly at: Parameters<Report['fail']>[0]['at'];
  readonly ways: number;
  readonly a: string;
  readonly b: string;
  readonly pitchA: number | undefined;
  readonly pitchB: number | undefined;
  readonly evidence: readonly Evidence[];
}

function compare(report: Report, context: RuleContext, pair: Pair): void {
  const { at, ways, a, b, pitchA, pitchB } = pair;
  // A pitch that is not stated is for the rule about the interface.
  if (pitchA === undefined || pitchB === undefined || ways < 2) return;
  const measured = roundTo(pitchErrorMm(ways, pitchA, pitchB), 4);
  if (measured === 0) return report.pass();
  const limit = context.limit(LIMIT);
  const evidence = [
    ...pair.evidence,
    ...fact('ways in a row', ways, 'smaller half'),
    ...fact('off from first to last', measured, '(ways - 1) x difference', 'mm'),
    ...limitFact('most it may be', limit, context.limitSet),
  ];
  if (!limit)
    report.cannotVerify({ at, data: { a, b }, evidence, needs: [limitNeed(LIMIT, context.limitSet)] });
  else if (measured <= limit.value) report.pass();
  else report.fail({ at, data: { a, b, pitchA, pitchB, measured, ways }, evidence });
}
