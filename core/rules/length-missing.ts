import type { ResolvedEnd, ResolvedWire } from '../derive/harness';
import { endAllowance } from '../derive/wire-length';
import { roundTo } from '../model/length-text';
import { tiny, type TinyDraft } from '../model/tiny';
import type { Evidence, Need } from './finding';
import { partRef, partSource, wireRef } from './refs';
import type { Rule } from './rule';

export const lengthMissing: Rule<'wire'> = {
  meta: {
    id: 'length-missing',
    revision: 1,
    severity: 'major',
    summary: 'Every wire has a cut length, typed or from its route, with nothing of it left out.',
    why: 'Without a length nothing can be cut or ordered. A length that leaves out what lies inside a housing gives wires that pull at their contacts.',
    source: 'common practice: cut length = length between the datums plus the signed allowance of each end',
    message: 'The cut length of {{wire}} comes to {{measured}} mm',
    unknown: 'The cut length of {{wire}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'wire',
  check(wire, report) {
    const { length } = wire;
    const at = [wireRef(wire)];
    const data = { wire: wire.wire.designator };
    const evidence = evidenceOf(wire);
    if (length.cutMm === undefined || length.needs.length > 0)
      report.cannotVerify({ open: length.kind === 'unknown', at, data, evidence, needs: needsOf(wire) });
    else if (length.cutMm <= 0) report.fail({ at, data: { ...data, measured: length.cutMm }, evidence });
    else report.pass();
  },
  examples: () => ({
    good: [
      { name: 'lengths from the route', project: tiny() },
      { name: 'a twisted pair with its take-up', project: tiny((t) => twistPair(t, 25)) },
      {
        name: 'a typed length, and no route',
        project: tiny((t) => {
          for (const d of ['X1', 'X2']) delete t.connector(d).node;
          for (const w of ['W1', 'W2']) t.wire(w).lengthMm = 320;
        }),
      },
    ],
    bad: [
      {
        name: 'more taken off than the route is long',
        project: tiny((t) => {
          t.wire('W2').extraMm = -400;
        }),
        expect: ['W2'],
      },
    ],
    unknown: [
      {
        name: 'one connector is not on the formboard',
        project: tiny((t) => delete t.connector('X2').node),
        expect: ['W1', 'W2'],
      },
      {
        name: 'no segment joins the nodes',
        project: tiny((t) => {
          t.project.segments = [];
        }),
        expect: ['W1', 'W2'],
      },
      {
        name: 'a housing without a datum',
        project: tiny((t) => delete t.part('housing', 'H-PIN').datumMm),
        expect: ['W1', 'W2'],
      },
      {
        name: 'a twisted pair of unknown lay',
        project: tiny((t) => twistPair(t)),
        expect: ['W1', 'W2'],
      },
      {
        name: 'a twisted pair of wires of unknown diameter',
        project: tiny((t) => {
          twistPair(t, 25);
          delete t.part('wire', 'WIRE-22').odMm;
          delete t.part('wire', 'WIRE-22').odMaxMm;
        }),
        expect: ['W1', 'W2'],
      },
    ],
  }),
};

const twistPair = (t: TinyDraft, layMm?: number): void => {
  const wires = [t.wire('W1').id, t.wire('W2').id];
  const group = { id: t.newId(), designator: 'WG1', form: 'twisted' as const, wires };
  t.project.groups.push(layMm === undefined ? group : { ...group, layMm });
};

function evidenceOf({ length, from, to, group }: ResolvedWire): Evidence[] {
  if (length.kind === 'typed')
    return [{ label: 'cut length', value: length.cutMm ?? 0, unit: 'mm', source: 'typed' }];
  if (length.routeMm === undefined) return [];
  const allowance = (end: ResolvedEnd, mm: number): Evidence[] => {
    const { connector } = end;
    if (!connector?.part) return [];
    const label = `allowance at ${connector.connector.designator}`;
    return [{ label, value: mm, unit: 'mm', source: partSource(connector.part) }];
  };
  const takeUp: Evidence[] =
    length.takeUpMm > 0 && group
      ? [
          {
            label: 'twist take-up',
            value: roundTo(length.takeUpMm, 3),
            unit: 'mm',
            source: `lay of ${group.designator} and diameters of its wires`,
          },
        ]
      : [];
  return [
    { label: 'route', value: length.routeMm, unit: 'mm', source: 'formboard' },
    ...allowance(from, length.allowancesMm[0]),
    ...allowance(to, length.allowancesMm[1]),
    ...takeUp,
    { label: 'extra', value: length.extraMm, unit: 'mm', source: 'typed' },
  ];
}

function needsOf(wire: ResolvedWire): Need[] {
  const ends = [wire.from, wire.to];
  if (wire.length.kind === 'unknown') {
    const offBoard = ends.flatMap((e): Need[] => (e.node === undefined ? [nodeNeed(wire, e)] : []));
    if (offBoard.length > 0) return offBoard;
    return wire.length.needs.map((what) => ({
      what,
      at: wireRef(wire),
      field: wire.wire.path ? 'path' : 'lengthMm',
    }));
  }
  const ofEnds = ends.map((e) => ({ needs: endAllowance(e).needs, part: e.connector?.part }));
  const atEnds = ofEnds.flatMap(({ needs, part }) =>
    needs.map((what): Need => (part ? { what, at: partRef(part), field: 'datumMm' } : { what })),
  );
  return [...atEnds, ...twistNeeds(wire, wire.length.needs.slice(atEnds.length))];
}

/** The lay is a field of the group, an outside diameter one of the record of this wire, or of another of the group. */
function twistNeeds({ group, part, conductor }: ResolvedWire, needs: readonly string[]): Need[] {
  const ownKnown = conductor?.odMm !== undefined || conductor?.odMaxMm !== undefined;
  return needs.map((what) => {
    if (group?.layMm === undefined && group && what === `lay of ${group.designator}`)
      return { what, at: { type: 'group', id: group.id }, field: 'layMm' };
    return part && !ownKnown ? { what, at: partRef(part), field: 'odMm' } : { what };
  });
}

/** The formboard node of what the wire ends at; a typed length of the wire would do as well. */
function nodeNeed(wire: ResolvedWire, end: ResolvedEnd): Need {
  const what = (name: string): string => `formboard node of ${name}`;
  if (end.connector)
    return {
      what: what(end.connector.connector.designator),
      at: { type: 'connector', id: end.connector.connector.id },
      field: 'node',
    };
  if (end.splice)
    return { what: what(end.splice.designator), at: { type: 'splice', id: end.splice.id }, field: 'node' };
  return { what: what('its free end'), at: wireRef(wire), field: `ends[${end === wire.from ? 0 : 1}].node` };
}
