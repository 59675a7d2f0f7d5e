import type { ResolvedConnector } from '../derive/harness';
import { band, bandText } from '../derive/fit-band';
import type { Board } from '../model/equipment';
import type { BoardLock, HeaderPart } from '../model/parts/header';
import { tiny, type TinyDraft } from '../model/tiny';
import type { z } from 'zod';
import type { Need } from './finding';
import { connectorRef } from './refs';
import type { Rule } from './rule';
import { equipmentNeed, equipmentSource, fact, partFact, partNeed } from './shared/evidence';

type Lock = z.infer<typeof BoardLock>;

/**
 * Speaks of headers with locks or pegs on boards: the board's thickness always, its holes where the footprint states them.
 */
export const boardLock: Rule<'connector'> = {
  meta: {
    id: 'board-lock',
    revision: 1,
    severity: 'major',
    summary: 'Board locks and pegs of a header suit the thickness and the holes of the board.',
    why: 'A lock in a board that is too thick does not snap, in a thin one it is loose: the solder joints carry every pull on the connector. A peg in a hole of the wrong size or plating does not go in, or does not hold.',
    source: 'common practice: ranges of hole and board thickness that the header states',
    message: 'The board locks of {{connector}} want {{what}} {{limit}}, {{board}} has {{measured}}',
    unknown:
      'Whether the board locks of {{connector}} suit {{board}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check({ resolved }, report) {
    const { part: header, equipment: board } = resolved;
    if (header?.kind !== 'header' || board?.kind !== 'board') return;
    for (const lock of header.boardLocks ?? []) {
      const faults = faultsOf(resolved, board, lock);
      const first = faults[0];
      const needs = needsOf(resolved, header, board, lock);
      const at = [connectorRef(resolved), { type: 'equipment' as const, id: board.id }];
      const data = { connector: resolved.connector.designator, board: board.designator };
      const evidence = evidenceOf(resolved, header, board, lock);
      if (first) {
        const [what, limit, measured] = ['what', 'limit', 'measured'].map((k) =>
          faults.map((f) => f[k as keyof Fault]).join(', '),
        ) as [string, string, string];
        report.fail({ at, data: { ...data, what, limit, measured }, evidence });
      } else if (needs.length > 0) report.cannotVerify({ at, data, evidence, needs });
      else report.pass();
      // Locks of a header are alike; a second finding at the same place would tell nothing new.
      if (first || needs.length > 0) return;
    }
  },
  examples: () => ({
    good: [
      { name: 'a header without locks', project: tiny() },
      { name: 'a board of 1.6 mm for 1.2 to 2 mm', project: tiny((t) => lock(t)) },
      {
        name: 'a hole of the right size, not plated',
        project: tiny((t) => {
          lock(t);
          t.connector('X3').footprint = { lockHoleMm: 3, lockHolePlated: false };
        }),
      },
    ],
    bad: [
      {
        name: 'a board that is too thick',
        project: tiny((t) => {
          lock(t);
          const board = t.project.equipment[0];
          if (board?.kind === 'board') board.thicknessMm = 2.4;
          t.part('header', 'HEADER').tailLengthMm = 4;
        }),
        expect: ['X3'],
      },
      {
        name: 'a hole that is too small',
        project: tiny((t) => {
          lock(t);
          t.connector('X3').footprint = { lockHoleMm: 2.5 };
        }),
        expect: ['X3'],
      },
      {
        name: 'a plated hole for a plastic peg',
        project: tiny((t) => {
          lock(t);
          t.connector('X3').footprint = { lockHoleMm: 3, lockHolePlated: true };
        }),
        expect: ['X3'],
      },
    ],
    unknown: [
      {
        name: 'board thickness not stated',
        project: tiny((t) => {
          lock(t);
          const board = t.project.equipment[0];
          if (board?.kind === 'board') delete board.thicknessMm;
        }),
        expect: ['X3'],
      },
      {
        name: 'a lock that does not say for which boards',
        project: tiny((t) => void (t.part('header', 'HEADER').boardLocks = [{ material: 'metal' }])),
        expect: ['X3'],
      },
    ],
  }),
};

interface Fault {
  readonly what: string;
  readonly limit: string;
  readonly measured: string;
}

function faultsOf({ connector }: ResolvedConnector, board: Board, lock: Lock): Fault[] {
  const { lockHoleMm: hole, lockHolePlated: plated } = connector.footprint ?? {};
  const out: Fault[] = [];
  if (band(board.thicknessMm, board.thicknessMm, lock.boardMinMm, lock.boardMaxMm) === 'outside')
    out.push({
      what: 'a board of',
      limit: bandText(lock.boardMinMm, lock.boardMaxMm, 'mm'),
      measured: `${board.thicknessMm ?? '?'} mm`,
    });
  if (band(hole, hole, lock.holeMinMm, lock.holeMaxMm) === 'outside')
    out.push({
      what: 'holes of',
      limit: bandText(lock.holeMinMm, lock.holeMaxMm, 'mm'),
      measured: `holes of ${hole ?? '?'} mm`,
    });
  if (plated !== undefined && lock.plated !== undefined && plated !== lock.plated)
    out.push({
      what: 'holes that are',
      limit: lock.plated ? 'plated' : 'not plated',
      measured: plated ? 'plated ones' : 'ones without plating',
    });
  return out;
}

/** The thickness must be known on both sides; a hole that is stated needs its range. */
function needsOf({ connector }: ResolvedConnector, header: HeaderPart, board: Board, lock: Lock): Need[] {
  const hole = connector.footprint?.lockHoleMm;
  const ofLock = (missing: boolean, what: string): Need[] =>
    missing ? [partNeed(header, 'boardLocks', what)] : [];
  return [
    ...(board.thicknessMm === undefined ? [equipmentNeed(board, 'thicknessMm', 'thickness')] : []),
    ...ofLock(
      lock.boardMinMm === undefined || lock.boardMaxMm === undefined,
      'board thickness range of the locks',
    ),
    ...ofLock(
      hole !== undefined && (lock.holeMinMm === undefined || lock.holeMaxMm === undefined),
      'hole range of the locks',
    ),
    ...ofLock(
      connector.footprint?.lockHolePlated !== undefined && lock.plated === undefined,
      'plating of the lock holes',
    ),
  ];
}

function evidenceOf({ connector }: ResolvedConnector, header: HeaderPart, board: Board, lock: Lock) {
  const { lockHoleMm, lockHolePlated } = connector.footprint ?? {};
  const yes = (v: boolean | undefined): string | undefined => (v === undefined ? v : v ? 'yes' : 'no');
  return [
    ...partFact(header, 'lock material', lock.material),
    ...partFact(header, 'thinnest board', lock.boardMinMm, 'mm'),
    ...partFact(header, 'thickest board', lock.boardMaxMm, 'mm'),
    ...partFact(header, 'smallest hole', lock.holeMinMm, 'mm'),
    ...partFact(header, 'largest hole', lock.holeMaxMm, 'mm'),
    ...partFact(header, 'plated hole', yes(lock.plated)),
    ...fact('board thickness', board.thicknessMm, equipmentSource(board), 'mm'),
    ...fact('hole of the footprint', lockHoleMm, 'typed', 'mm'),
    ...fact('hole of the footprint is plated', yes(lockHolePlated), 'typed'),
  ];
}

/** Gives the header of the tiny project a plastic lock. */
function lock(t: TinyDraft): void {
  t.part('header', 'HEADER').boardLocks = [
    { material: 'plastic', holeMinMm: 2.95, holeMaxMm: 3.05, boardMinMm: 1.2, boardMaxMm: 2, plated: false },
  ];
}
