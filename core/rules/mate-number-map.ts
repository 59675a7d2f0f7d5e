import { must } from '../base/assert-never';
import { cavityLayoutOf } from '../derive/cavity-layout';
import type { ResolvedMate } from '../derive/harness';
import { geometryMapOf, type MateMap } from '../derive/mate-map';
import { matingObstacles } from '../derive/mating';
import type { MatingHalf } from '../model/parts/part';
import { tiny } from '../model/tiny';
import type { Evidence, Fix, Need } from './finding';
import type { Rule } from './rule';
import { cavityList } from './shared/cavity-list';
import { fact, partFact, partNeed } from './shared/evidence';
import { mateSides, type MateSides } from './shared/mate-sides';

export const mateNumberMap: Rule<'mate'> = {
  meta: {
    id: 'mate-number-map',
    revision: 1,
    severity: 'major',
    summary:
      'Cavities of the same number meet, or a declared map says which meet, and it agrees with the faces.',
    why:
      'Two halves face each other like a mirror, and makers count rows in different ways. Who takes equal numbers for ' +
      'granted wires the supply to the far end of the row.',
    source: 'common practice: numbers are compared on the mating faces, and both stand on the drawing',
    message: '{{a}} with {{b}}: {{problem}}',
    unknown: 'Which cavities of {{a}} and {{b}} meet cannot be verified; not stated: {{needs}}',
  },
  scope: 'mate',
  check(mate, report) {
    const sides = mateSides(mate);
    // Halves of different shape have no map to speak of; mate-interface tells why.
    if (!sides || matingObstacles(sides.a, sides.b).obstacles.some((o) => o.code === 'ways')) return;
    const faces = geometryMapOf(sides.a, sides.b);
    const declared = mate.map.source === 'declared';
    if (!declared && faces.source === 'unknown')
      return report.cannotVerify({
        at: sides.at,
        data: sides.names,
        needs: [...layoutNeeds(sides.a), ...layoutNeeds(sides.b)],
        evidence: evidenceOf(sides),
      });
    const problems = declared
      ? declaredProblems(mate.map, faces, sides)
      : [...leftOut(faces, faces, sides), ...differing(faces)];
    if (problems.length === 0) return report.pass();
    report.fail({
      at: sides.at,
      data: { ...sides.names, problem: problems.join('; ') },
      evidence: [...evidenceOf(sides), ...mapFacts(mate, faces, sides)],
      fix: fixOf(mate, faces, sides),
    });
  },
  examples: () => ({
    good: [
      { name: 'equal numbers meet', project: tiny() },
      {
        name: 'numbers run against each other, and the map says so',
        project: tiny((t) => {
          t.part('header', 'HEADER').cavityOneCorner = 'top-left';
          must(t.project.mates[0], 'mate').map = pairs('1-3 2-2 3-1');
        }),
      },
      {
        name: 'the face is not known, a whole map is declared',
        project: tiny((t) => {
          delete t.part('header', 'HEADER').cavityOneCorner;
          must(t.project.mates[0], 'mate').map = pairs('1-1 2-2 3-3');
        }),
      },
      {
        name: 'a position closed as a key needs no counterpart',
        project: tiny((t) => {
          t.part('header', 'HEADER').keyPositions = ['3'];
          must(t.project.mates[0], 'mate').map = pairs('1-1 2-2');
        }),
      },
    ],
    bad: [
      {
        name: 'mirrored: both count from the left',
        project: tiny((t) => void (t.part('header', 'HEADER').cavityOneCorner = 'top-left')),
        expect: ['X1–X3'],
      },
      {
        name: 'row-wise against zig-zag',
        project: tiny((t) => {
          for (const part of [
            t.part('housing', 'H-SOCKET'),
            t.part('header', 'HEADER'),
            t.part('housing', 'H-PIN'),
          ])
            Object.assign(part, { ways: 6, rows: 2 });
          t.part('header', 'HEADER').numbering = 'zig-zag';
        }),
        expect: ['X1–X3'],
      },
      {
        name: 'the map leaves a cavity out',
        project: tiny((t) => void (must(t.project.mates[0], 'mate').map = pairs('1-1 2-2'))),
        expect: ['X1–X3'],
      },
      {
        name: 'the map uses a cavity twice',
        project: tiny((t) => {
          delete t.part('header', 'HEADER').cavityOneCorner;
          must(t.project.mates[0], 'mate').map = pairs('1-1 2-2 3-3 3-1');
        }),
        expect: ['X1–X3'],
      },
      {
        name: 'the map names a cavity that is not there',
        project: tiny((t) => void (must(t.project.mates[0], 'mate').map = pairs('1-1 2-2 3-3 4-4'))),
        expect: ['X1–X3'],
      },
      {
        name: 'the map contradicts the faces',
        project: tiny((t) => void (must(t.project.mates[0], 'mate').map = pairs('1-3 2-2 3-1'))),
        expect: ['X1–X3'],
      },
    ],
    unknown: [
      {
        name: 'corner of cavity 1 not stated',
        project: tiny((t) => void delete t.part('header', 'HEADER').cavityOneCorner),
        expect: ['X1–X3'],
      },
      {
        name: 'numbering of two rows not stated',
        project: tiny((t) => {
          for (const part of [
            t.part('housing', 'H-SOCKET'),
            t.part('header', 'HEADER'),
            t.part('housing', 'H-PIN'),
          ])
            Object.assign(part, { ways: 6, rows: 2 });
          delete t.part('housing', 'H-PIN').numbering;
        }),
        expect: ['X2–X4'],
      },
    ],
  }),
};

function declaredProblems(map: MateMap, faces: MateMap, sides: MateSides): string[] {
  const problems: string[] = [];
  for (const side of ['a', 'b'] as const) {
    const known = cavityLayoutOf(sides[side]).byCavity;
    const named = map.pairs.map((p) => p[side]);
    const absent = [...new Set(named.filter((c) => !known.has(c)))];
    const twice = [...new Set(named.filter((c, i) => named.indexOf(c) !== i))];
    if (absent.length > 0)
      problems.push(`the map names cavity ${cavityList(absent)}, which ${sides.names[side]} does not have`);
    if (twice.length > 0)
      problems.push(`the map uses ${sides.names[side]}:${cavityList(twice)} more than once`);
  }
  problems.push(...leftOut(map, faces, sides));
  if (faces.source === 'unknown') return problems;
  const against = map.pairs.filter((p) => faces.fromA.has(p.a) && faces.fromA.get(p.a) !== p.b);
  if (against.length > 0)
    problems.push(
      `the map says ${pairList(against)}, the faces say ${pairList(
        against.map((p) => ({ a: p.a, b: faces.fromA.get(p.a) ?? '' })),
      )}`,
    );
  return problems;
}

/** Cavities without a counterpart, other than those that a maker closed as a key on either half. */
function leftOut(map: MateMap, faces: MateMap, { a, b, names }: MateSides): string[] {
  const shown = faces.source === 'geometry';
  const lone = (half: MatingHalf, other: MatingHalf, partner: Partners, opposite: Partners): string[] => {
    const keys = other.keyPositions ?? [];
    const open = cavityLayoutOf(half)
      .places.map((p) => p.cavity)
      .filter((c) => !partner.has(c) && !half.keyPositions?.includes(c));
    // Where the faces are not known, as many cavities as the other half has keys may stand before one.
    if (!shown) return open.length > keys.length ? open : [];
    return open.filter((c) => !keys.includes(opposite.get(c) ?? ''));
  };
  const loneA = lone(a, b, map.fromA, faces.fromA);
  const loneB = lone(b, a, map.fromB, faces.fromB);
  return [
    ...(loneA.length > 0 ? [`${names.a}:${cavityList(loneA)} meets nothing`] : []),
    ...(loneB.length > 0 ? [`${names.b}:${cavityList(loneB)} meets nothing`] : []),
  ];
}

type Partners = ReadonlyMap<string, string>;

function differing(faces: MateMap): string[] {
  const other = faces.pairs.filter((p) => p.a !== p.b);
  return other.length > 0
    ? [`cavities of different numbers meet and no map is declared: ${pairList(other)}`]
    : [];
}

const MOST_PAIRS = 8;

function pairList(list: MateMap['pairs']): string {
  const shown = list.slice(0, MOST_PAIRS).map((p) => `${p.a} with ${p.b}`);
  return shown.join(', ') + (list.length > MOST_PAIRS ? ` and ${list.length - MOST_PAIRS} more` : '');
}

function evidenceOf({ a, b }: MateSides): Evidence[] {
  return [a, b].flatMap((half) => [
    ...partFact(half, `rows of ${half.partNumber}`, half.rows),
    ...partFact(half, `numbering of ${half.partNumber}`, half.numbering),
    ...partFact(half, `corner of cavity 1 of ${half.partNumber}`, half.cavityOneCorner),
  ]);
}

function mapFacts({ mate, map }: ResolvedMate, faces: MateMap, { names }: MateSides): Evidence[] {
  const source = `project, mate ${names.a} with ${names.b}`;
  return [
    ...(faces.source === 'geometry'
      ? fact('faces', pairList(faces.pairs), 'places on the mating faces, mirrored')
      : []),
    ...(mate.map ? fact('declared map', pairList(map.pairs), source) : []),
  ];
}

const FIELD_NAMES = { rows: 'rows', numbering: 'numbering', cavityOneCorner: 'corner of cavity 1' } as const;

const layoutNeeds = (half: MatingHalf): Need[] =>
  cavityLayoutOf(half).assumed.map((field) => partNeed(half, field, FIELD_NAMES[field]));

/** Where the faces are known and cover each other, they say what the map has to be. */
function fixOf({ mate }: ResolvedMate, faces: MateMap, sides: MateSides): Fix | undefined {
  if (faces.source !== 'geometry' || leftOut(faces, faces, sides).length > 0) return undefined;
  const map = faces.pairs.map((p) => ({ a: p.a, b: p.b }));
  return {
    label: 'Declare the map that the faces show',
    command: 'mate.set-map',
    args: { id: mate.id, map },
  };
}

const pairs = (text: string): { a: string; b: string }[] =>
  text.split(' ').map((pair) => {
    const [a = '', b = ''] = pair.split('-');
    return { a, b };
  });
