import { roundTo } from '../model/length-text';
import type { CutOut } from '../model/connector';
import type { PanelFit } from '../model/parts/mating-half';
import { tiny, type TinyDraft } from '../model/tiny';
import { connectorRef } from './refs';
import type { Rule } from './rule';
import { equipmentSource, fact, limitFact, limitNeed, partFact, partNeed } from './shared/evidence';
import { dropLimit } from './shared/example-route';

const PLAY = 'cut-out-tolerance';

/** Speaks of connectors in panels for which the drawn hole is stated; without it the hole is made after the record. */
export const cutOut: Rule<'connector'> = {
  meta: {
    id: 'cut-out',
    revision: 2,
    severity: 'major',
    summary:
      'The cut-out in the panel has the size, the corners and the side that its connector is made for.',
    why: 'In too small a hole or one with round corners the connector does not seat; in too large a one it falls through; from the wrong side it does not latch, and a burr on the side of the flange cuts its seal and lifts it off the panel.',
    source:
      'common practice: width and height within tolerance, corner radius at most that of the record, side of insertion, punched from the side that the connector is put in',
    message: 'The cut-out for {{connector}} is wrong: {{reasons}}',
    unknown: 'Whether the cut-out for {{connector}} is right cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check({ resolved }, report, context) {
    const { connector, part, equipment } = resolved;
    const drawn = connector.cutOut;
    if (!drawn || !part || equipment?.kind !== 'panel') return;
    const wanted = part.panel;
    const play = context.limit(PLAY);
    const from = equipmentSource(equipment);
    const size = (c: { widthMm: number; heightMm: number } | undefined): string | undefined =>
      c && `${c.widthMm} x ${c.heightMm} mm`;
    const common = {
      at: [connectorRef(resolved), { type: 'equipment' as const, id: equipment.id }],
      evidence: [
        ...fact('cut-out as drawn', size(drawn), from),
        ...fact('corner radius as drawn', drawn.cornerRadiusMm, from, 'mm'),
        ...fact('put in from', drawn.insertFrom, from),
        ...fact('punched from', drawn.punchedFrom, from),
        ...partFact(part, 'cut-out', size(wanted?.cutOut)),
        ...partFact(part, 'largest corner radius', wanted?.cutOut?.cornerRadiusMm, 'mm'),
        ...partFact(part, 'goes in from', wanted?.insertFrom),
        ...limitFact('tolerance', play, context.limitSet),
      ],
    };
    const name = { connector: connector.designator };
    const reasons = reasonsOf(drawn, wanted, play?.value ?? Infinity);
    if (reasons.length > 0) return report.fail({ ...common, data: { ...name, reasons: reasons.join('; ') } });
    const { cornerRadiusMm } = wanted?.cutOut ?? {};
    const needs = [
      ...(wanted?.cutOut ? [] : [partNeed(part, 'panel.cutOut', 'cut-out')]),
      ...(drawn.cornerRadiusMm !== undefined && wanted?.cutOut && cornerRadiusMm === undefined
        ? [partNeed(part, 'panel.cutOut.cornerRadiusMm', 'largest corner radius')]
        : []),
      ...(drawn.insertFrom && !wanted?.insertFrom
        ? [partNeed(part, 'panel.insertFrom', 'side of insertion')]
        : []),
      ...(sideOf(drawn, wanted) && !drawn.punchedFrom
        ? [
            {
              what: `side from which the hole for ${name.connector} is punched`,
              at: connectorRef(resolved),
              field: 'cutOut-punchedFrom',
            },
          ]
        : []),
      ...(play ? [] : [limitNeed(PLAY, context.limitSet)]),
    ];
    if (needs.length > 0) report.cannotVerify({ ...common, data: name, needs });
    else report.pass();
  },
  examples: () => ({
    good: [
      { name: 'no hole drawn', project: tiny() },
      { name: 'as the record has it', project: tiny((t) => inPanel(t, { widthMm: 16, heightMm: 9 })) },
      {
        name: 'wider by the tolerance, sharp corners, from the right side',
        project: tiny((t) =>
          inPanel(t, { widthMm: 16.1, heightMm: 9, cornerRadiusMm: 0, insertFrom: 'front' }),
        ),
      },
    ],
    bad: [
      {
        name: 'too wide',
        project: tiny((t) => inPanel(t, { widthMm: 16.2, heightMm: 9 })),
        expect: ['X2'],
      },
      {
        name: 'width and height exchanged',
        project: tiny((t) => inPanel(t, { widthMm: 9, heightMm: 16 })),
        expect: ['X2'],
      },
      {
        name: 'round corners',
        project: tiny((t) => inPanel(t, { widthMm: 16, heightMm: 9, cornerRadiusMm: 1.5 })),
        expect: ['X2'],
      },
      {
        name: 'punched from the rear',
        project: tiny((t) => inPanel(t, { widthMm: 16, heightMm: 9, punchedFrom: 'rear' })),
        expect: ['X2'],
      },
      {
        name: 'from the rear, where it goes in from the front',
        project: tiny((t) => inPanel(t, { widthMm: 16, heightMm: 9, insertFrom: 'rear' })),
        expect: ['X2'],
      },
    ],
    unknown: [
      {
        name: 'nobody says from which side it is punched',
        project: tiny((t) => inPanel(t, { widthMm: 16, heightMm: 9, punchedFrom: undefined })),
        expect: ['X2'],
      },
      {
        name: 'the record states no cut-out',
        project: tiny((t) => {
          inPanel(t, { widthMm: 16, heightMm: 9 });
          t.part('housing', 'H-PIN').panel = {};
        }),
        expect: ['X2'],
      },
      {
        name: 'no tolerance in the limit set',
        project: tiny((t) => {
          inPanel(t, { widthMm: 16, heightMm: 9 });
          dropLimit(t, PLAY);
        }),
        expect: ['X2'],
      },
    ],
  }),
};

function reasonsOf(drawn: CutOut, wanted: PanelFit | undefined, playMm: number): string[] {
  const out: string[] = [];
  const hole = wanted?.cutOut;
  const off = (what: string, is: number, should: number): void => {
    if (roundTo(Math.abs(is - should), 6) > playMm) out.push(`${what} ${is} mm instead of ${should} mm`);
  };
  if (hole) {
    off('width', drawn.widthMm, hole.widthMm);
    off('height', drawn.heightMm, hole.heightMm);
  }
  const [radius, most] = [drawn.cornerRadiusMm, hole?.cornerRadiusMm];
  if (radius !== undefined && most !== undefined && radius > most)
    out.push(`corners of ${radius} mm radius, at most ${most} mm`);
  if (drawn.insertFrom && wanted?.insertFrom && drawn.insertFrom !== wanted.insertFrom)
    out.push(`put in from the ${drawn.insertFrom}, made for the ${wanted.insertFrom}`);
  const side = sideOf(drawn, wanted);
  if (side && drawn.punchedFrom && drawn.punchedFrom !== side)
    out.push(
      `punched from the ${drawn.punchedFrom}, so that the burr is on the ${side}, where the connector is put in`,
    );
  return out;
}

/** The side on which the flange lies: from there the connector is put in. */
const sideOf = (drawn: CutOut, wanted: PanelFit | undefined): CutOut['insertFrom'] =>
  drawn.insertFrom ?? wanted?.insertFrom;

/** X2 in a panel with that hole, punched from the front unless said otherwise; its record asks for 16 x 9 mm, radius to 0.5 mm, from the front. */
function inPanel(
  t: TinyDraft,
  drawn: Omit<CutOut, 'punchedFrom'> & { punchedFrom?: CutOut['punchedFrom'] },
): void {
  const id = t.newId();
  t.project.equipment.push({
    kind: 'panel', id, designator: 'A3', position: { x: 130, y: 0 }, widthMm: 5, heightMm: 80, thicknessMm: 1.5, coatingsMm: 0,
  }); // prettier-ignore
  t.connector('X2').equipment = id;
  t.connector('X2').cutOut = Object.fromEntries(
    Object.entries({ punchedFrom: 'front', ...drawn }).filter(([, v]) => v !== undefined),
  ) as CutOut;
  const housing = t.part('housing', 'H-PIN');
  housing.mounting = 'panel';
  housing.panel = {
    thicknessMinMm: 1,
    thicknessMaxMm: 2,
    cutOut: { widthMm: 16, heightMm: 9, cornerRadiusMm: 0.5 },
    insertFrom: 'front',
  };
}
