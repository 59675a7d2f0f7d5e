import { tiny, type TinyDraft } from '../model/tiny';
import { connectorRef } from './refs';
import type { Rule } from './rule';
import { fact, partFact, partNeed } from './shared/evidence';

/** Speaks of connectors of which it is stated how much room is left beside the latch. */
export const mateFingerRoom: Rule<'connector'> = {
  meta: {
    id: 'mate-finger-room',
    revision: 1,
    severity: 'minor',
    summary: 'Beside the latch there is the room that a finger needs to press it.',
    why: 'A latch that no finger reaches is prised open with a screwdriver, and breaks.',
    source:
      'MIL-STD-1472 (connectors far enough apart to be grasped firmly); the room that the record of the half asks for',
    message: '{{connector}} has {{room}} mm beside its latch ({{side}}), a finger needs {{needed}} mm',
    unknown: 'Whether a finger reaches the latch of {{connector}} cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check({ resolved }, report) {
    const { connector, part } = resolved;
    const room = connector.latchRoomMm;
    if (room === undefined || !part || part.latchSide === 'none') return;
    const { latchSide, fingerRoomMm } = part;
    const common = {
      at: [connectorRef(resolved)],
      evidence: [
        ...fact('room beside the latch', room, 'typed', 'mm'),
        ...partFact(part, 'latch', latchSide),
        ...partFact(part, 'finger room', fingerRoomMm, 'mm'),
      ],
    };
    const name = { connector: connector.designator };
    if (fingerRoomMm === undefined)
      return report.cannotVerify({
        ...common,
        data: name,
        needs: [partNeed(part, 'fingerRoomMm', 'finger room')],
      });
    if (room >= fingerRoomMm) return report.pass();
    const side = latchSide ?? 'side not stated';
    report.fail({ ...common, data: { ...name, room, side, needed: fingerRoomMm } });
  },
  examples: () => ({
    good: [
      { name: 'room not stated', project: tiny() },
      { name: 'as much as the record asks for', project: tiny((t) => beside(t, 12)) },
      {
        name: 'a half without a latch',
        project: tiny((t) => {
          beside(t, 0);
          t.part('housing', 'H-SOCKET').latchSide = 'none';
        }),
      },
    ],
    bad: [{ name: '5 mm for a finger', project: tiny((t) => beside(t, 5)), expect: ['X1'] }],
    unknown: [
      {
        name: 'the record does not say how much',
        project: tiny((t) => void (t.connector('X1').latchRoomMm = 5)),
        expect: ['X1'],
      },
    ],
  }),
};

/** X1 with that much room beside a latch that wants 12 mm. */
function beside(t: TinyDraft, roomMm: number): void {
  t.connector('X1').latchRoomMm = roomMm;
  t.part('housing', 'H-SOCKET').fingerRoomMm = 12;
}
