import { tiny, type TinyDraft } from '../model/tiny';
import { connectorRef } from './refs';
import type { Rule } from './rule';
import { fact, limitFact, limitNeed, partFact, partNeed } from './shared/evidence';
import { dropLimit } from './shared/example-route';

const BEND = 'first-bend-straight';

/** Speaks of connectors whose free room on the mating axis is stated, from the mating face of the other half. */
export const mateClearance: Rule<'connector'> = {
  meta: {
    id: 'mate-clearance',
    revision: 1,
    severity: 'major',
    summary:
      'On the mating axis there is room for the body, for drawing it back, and for the wires behind it.',
    why: 'Without the room the connector cannot be mated or drawn off in place, or its wires are bent at the crimps each time.',
    source: 'common practice: body length + travel until it is clear + straight length of the wires',
    message: '{{connector}} has {{room}} mm on its mating axis and needs {{needed}} mm',
    unknown: 'Whether {{connector}} can be mated in its place cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check({ resolved }, report, context) {
    const { connector, part } = resolved;
    const room = connector.mateRoomMm;
    if (room === undefined || !part) return;
    const lengthMm = part.body?.lengthMm;
    const travelMm = part.mateTravelMm;
    const bend = context.limit(BEND);
    const common = {
      at: [connectorRef(resolved)],
      evidence: [
        ...fact('free room on the mating axis', room, 'typed', 'mm'),
        ...partFact(part, 'length of the body', lengthMm, 'mm'),
        ...partFact(part, 'travel', travelMm, 'mm'),
        ...limitFact('straight wires behind it', bend, context.limitSet),
      ],
    };
    const needed = (lengthMm ?? 0) + (travelMm ?? 0) + (bend?.value ?? 0);
    const name = { connector: connector.designator };
    // What is known can be too much already.
    if (room < needed - 1e-9)
      return report.fail({ ...common, data: { ...name, room, needed: Number(needed.toFixed(2)) } });
    const needs = [
      ...(lengthMm === undefined ? [partNeed(part, 'body.lengthMm', 'length of the body')] : []),
      ...(travelMm === undefined ? [partNeed(part, 'mateTravelMm', 'mating travel')] : []),
      ...(bend ? [] : [limitNeed(BEND, context.limitSet)]),
    ];
    if (needs.length > 0) report.cannotVerify({ ...common, data: name, needs });
    else report.pass();
  },
  examples: () => ({
    good: [
      { name: 'room not stated', project: tiny() },
      // 12 + 6 + 25 mm
      { name: 'exactly the room it needs', project: tiny((t) => inRoom(t, 43)) },
    ],
    bad: [
      { name: 'room for the body, not for the wires', project: tiny((t) => inRoom(t, 20)), expect: ['X1'] },
      {
        name: 'too little even without the travel, which is not stated',
        project: tiny((t) => {
          inRoom(t, 30);
          delete t.part('housing', 'H-SOCKET').mateTravelMm;
        }),
        expect: ['X1'],
      },
    ],
    unknown: [
      {
        name: 'the record states no length',
        project: tiny((t) => {
          inRoom(t, 43);
          delete t.part('housing', 'H-SOCKET').body;
        }),
        expect: ['X1'],
      },
      {
        name: 'no limit in the limit set',
        project: tiny((t) => {
          inRoom(t, 43);
          dropLimit(t, BEND);
        }),
        expect: ['X1'],
      },
    ],
  }),
};

/** X1 with that much room; its body is 12 mm long and draws back 6 mm. */
function inRoom(t: TinyDraft, roomMm: number): void {
  t.connector('X1').mateRoomMm = roomMm;
  t.part('housing', 'H-SOCKET').body = { lengthMm: 12 };
  t.part('housing', 'H-SOCKET').mateTravelMm = 6;
}
