import { tailProtrusionMm } from '../calc/tail-protrusion';
import { band, bandText } from '../derive/fit-band';
import type { Board } from '../model/equipment';
import type { LimitId } from '../model/limit-sets/limit-ids';
import { roundTo } from '../model/length-text';
import type { HeaderPart } from '../model/parts/header';
import type { Project } from '../model/project';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Need } from './finding';
import { connectorRef } from './refs';
import type { Rule, RuleContext } from './rule';
import {
  equipmentNeed,
  equipmentSource,
  fact,
  limitFact,
  limitNeed,
  partFact,
  partNeed,
} from './shared/evidence';

const MIN = 'tail-protrusion-min';
const MAX = 'tail-protrusion-max';

/** Speaks of through-hole headers on boards; where the termination is not stated it cannot tell whether it has to. */
export const tailLength: Rule<'connector'> = {
  meta: {
    id: 'tail-length',
    revision: 1,
    severity: 'major',
    summary:
      'The tails of a through-hole header stand out of the board by no less and no more than the limits.',
    why: 'A tail that ends in the hole makes no fillet to be seen or to hold; one that stands far out bridges or shorts.',
    source:
      'common practice: protrusion = tail - stand-off - board thickness, against the limits of the project',
    message: 'Tails of {{connector}} stand {{protrusion}} out of {{board}}, allowed are {{range}}',
    unknown:
      'How far the tails of {{connector}} stand out of {{board}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check({ resolved }, report, context) {
    const { connector, part: header, equipment: board } = resolved;
    if (header?.kind !== 'header' || board?.kind !== 'board' || header.termination === 'surface-mount')
      return;
    const min = context.limit(MIN);
    const max = context.limit(MAX);
    const { tailLengthMm, standOffMm } = header;
    const { thicknessMm } = board;
    const known = tailLengthMm !== undefined && standOffMm !== undefined && thicknessMm !== undefined;
    const out = known
      ? roundTo(tailProtrusionMm({ tailLengthMm, standOffMm, boardThicknessMm: thicknessMm }), 6)
      : undefined;
    const names = { connector: connector.designator, board: board.designator };
    const common = {
      at: [connectorRef(resolved), { type: 'equipment' as const, id: board.id }],
      evidence: [
        ...partFact(header, 'termination', header.termination),
        ...partFact(header, 'tail length', tailLengthMm, 'mm'),
        ...partFact(header, 'stand-off', standOffMm, 'mm'),
        ...fact('board thickness', thicknessMm, equipmentSource(board), 'mm'),
        ...fact('protrusion', out, 'tail - stand-off - board thickness', 'mm'),
        ...limitFact('least protrusion', min, context.limitSet),
        ...limitFact('most protrusion', max, context.limitSet),
      ],
    };
    const answer = header.termination ? band(out, out, min?.value, max?.value) : 'open';
    if (answer === 'inside') return report.pass();
    if (answer === 'open')
      return report.cannotVerify({ ...common, data: names, needs: needsOf(header, board, context) });
    const range = bandText(min?.value, max?.value, 'mm');
    report.fail({ ...common, data: { ...names, protrusion: `${out} mm`, range } });
  },
  examples: () => ({
    good: [
      { name: '1.6 mm out of a 1.6 mm board', project: tiny() },
      { name: 'exactly the least', project: tiny((t) => tail(t, 2.1)) },
      { name: 'exactly the most', project: tiny((t) => tail(t, 3.9)) },
      {
        name: 'surface-mount: there are no tails',
        project: tiny((t) => {
          t.part('header', 'HEADER').termination = 'surface-mount';
          delete t.part('header', 'HEADER').tailLengthMm;
        }),
      },
    ],
    bad: [
      { name: 'a short tail in a 3.2 mm board', project: onBoard(3.2), expect: ['X3'] },
      { name: 'a tail that ends in the hole', project: onBoard(3.5), expect: ['X3'] },
      { name: 'a tail that stands far out', project: tiny((t) => tail(t, 5)), expect: ['X3'] },
      {
        name: 'the stand-off takes what the tail has',
        project: tiny((t) => void (t.part('header', 'HEADER').standOffMm = 1.2)),
        expect: ['X3'],
      },
    ],
    unknown: [
      {
        name: 'tail length not stated',
        project: tiny((t) => void delete t.part('header', 'HEADER').tailLengthMm),
        expect: ['X3'],
      },
      {
        name: 'termination not stated',
        project: tiny((t) => void delete t.part('header', 'HEADER').termination),
        expect: ['X3'],
      },
      { name: 'board thickness not stated', project: onBoard(undefined), expect: ['X3'] },
      {
        name: 'no limit in the limit set',
        project: tiny((t) => {
          t.project.limitSet.limits = t.project.limitSet.limits.filter((l) => l.id !== MAX);
        }),
        expect: ['X3'],
      },
    ],
  }),
};

function needsOf(header: HeaderPart, board: Board, context: RuleContext): Need[] {
  const ofHeader = (field: 'termination' | 'tailLengthMm' | 'standOffMm', name: string): Need[] =>
    header[field] === undefined ? [partNeed(header, field, name)] : [];
  const limit = (id: LimitId): Need[] => (context.limit(id) ? [] : [limitNeed(id, context.limitSet)]);
  return [
    ...ofHeader('termination', 'termination'),
    ...ofHeader('tailLengthMm', 'tail length'),
    ...ofHeader('standOffMm', 'stand-off'),
    ...(board.thicknessMm === undefined ? [equipmentNeed(board, 'thicknessMm', 'thickness')] : []),
    ...limit(MIN),
    ...limit(MAX),
  ];
}

const tail = (t: TinyDraft, lengthMm: number): void =>
  void (t.part('header', 'HEADER').tailLengthMm = lengthMm);

const onBoard = (thicknessMm: number | undefined): Project =>
  tiny((t) => {
    for (const e of t.project.equipment) {
      if (e.kind !== 'board') continue;
      if (thicknessMm === undefined) delete e.thicknessMm;
      else e.thicknessMm = thicknessMm;
    }
  });
