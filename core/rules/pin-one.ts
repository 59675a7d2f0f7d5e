import { must } from '../base/assert-never';
import type { Footprint } from '../model/connector';
import type { HeaderPart } from '../model/parts/header';
import type { Corner } from '../model/parts/mating-half';
import { tiny, type TinyDraft } from '../model/tiny';
import { connectorRef } from './refs';
import type { Rule } from './rule';
import { fact, partFact, partNeed } from './shared/evidence';

/**
 * Speaks of headers of whose pads the layout states something. The pads of a vertical header lie as its mating face is
 * numbered; of a right-angle one, seen with the face towards the viewer, only left and right follow from the face. Seen
 * through the board, left and right change places.
 */
export const pinOne: Rule<'connector'> = {
  meta: {
    id: 'pin-one',
    revision: 1,
    severity: 'major',
    summary:
      'Pad 1 of the layout lies where pin 1 of the header comes through, and a right-angle header faces the edge.',
    why: 'A mirrored footprint exchanges every pair of pins, supply and return first; boards are scrapped for it. A face that looks into the board cannot be mated.',
    source: 'common practice: pin 1 in the frame of the board against side and orientation of the header',
    message: '{{connector}}: {{reasons}}',
    unknown: 'Whether the pads of {{connector}} lie as its pins cannot be verified; not stated: {{needs}}',
  },
  scope: 'connector',
  check({ resolved }, report) {
    const { connector, part, equipment } = resolved;
    const print = connector.footprint;
    if (part?.kind !== 'header' || equipment?.kind !== 'board' || !print) return;
    if (print.padOneCorner === undefined && print.facesEdge === undefined) return;
    const layout = `layout of ${equipment.designator}, typed`;
    const common = {
      at: [connectorRef(resolved), { type: 'equipment' as const, id: equipment.id }],
      evidence: [
        ...fact('pad 1', print.padOneCorner, layout),
        ...fact('pads seen from', print.seenFrom, layout),
        ...fact('faces the edge', yesNo(print.facesEdge), layout),
        ...partFact(part, 'cavity 1 on the mating face', part.cavityOneCorner),
        ...partFact(part, 'orientation', part.orientation),
      ],
    };
    const name = { connector: connector.designator };
    const reasons = [...padReasons(print, part), ...faceReasons(print, part)];
    if (reasons.length > 0) return report.fail({ ...common, data: { ...name, reasons: reasons.join('; ') } });
    const needs = [
      ...(print.padOneCorner && !part.cavityOneCorner
        ? [partNeed(part, 'cavityOneCorner', 'corner of cavity 1')]
        : []),
      ...(part.orientation ? [] : [partNeed(part, 'orientation', 'orientation')]),
      ...(print.padOneCorner && !print.seenFrom
        ? [
            {
              what: `from which side the layout shows the pads of ${connector.designator}`,
              at: connectorRef(resolved),
              field: 'footprint-seenFrom',
            },
          ]
        : []),
    ];
    if (needs.length > 0) report.cannotVerify({ ...common, data: name, needs });
    else report.pass();
  },
  examples: () => ({
    good: [
      { name: 'nothing stated of the pads', project: tiny() },
      { name: 'pad 1 where cavity 1 is', project: tiny((t) => pads(t, 'top-right', 'header-side')) },
      {
        name: 'mirrored, because seen through the board',
        project: tiny((t) => pads(t, 'top-left', 'far-side')),
      },
      {
        name: 'one row: top and bottom are one',
        project: tiny((t) => pads(t, 'bottom-right', 'header-side')),
      },
      {
        name: 'a right-angle header at the edge',
        project: tiny((t) => {
          pads(t, 'top-right', 'header-side');
          t.part('header', 'HEADER').orientation = 'right-angle';
          must(t.connector('X3').footprint, 'footprint').facesEdge = true;
        }),
      },
    ],
    bad: [
      {
        name: 'mirrored',
        project: tiny((t) => pads(t, 'top-left', 'header-side')),
        expect: ['X3'],
      },
      {
        name: 'drawn from above, though seen through the board',
        project: tiny((t) => pads(t, 'top-right', 'far-side')),
        expect: ['X3'],
      },
      {
        name: 'two rows, upside down',
        project: tiny((t) => {
          pads(t, 'bottom-right', 'header-side');
          t.part('header', 'HEADER').rows = 2;
        }),
        expect: ['X3'],
      },
      {
        name: 'a right-angle header that looks into the board',
        project: tiny((t) => {
          t.connector('X3').footprint = { facesEdge: false };
          t.part('header', 'HEADER').orientation = 'right-angle';
        }),
        expect: ['X3'],
      },
    ],
    unknown: [
      {
        name: 'from which side, is not said',
        project: tiny((t) => void (t.connector('X3').footprint = { padOneCorner: 'top-right' })),
        expect: ['X3'],
      },
      {
        name: 'the record does not say where cavity 1 is',
        project: tiny((t) => {
          pads(t, 'top-right', 'header-side');
          delete t.part('header', 'HEADER').cavityOneCorner;
        }),
        expect: ['X3'],
      },
      {
        name: 'whether it stands upright, is not said',
        project: tiny((t) => {
          pads(t, 'top-right', 'header-side');
          delete t.part('header', 'HEADER').orientation;
        }),
        expect: ['X3'],
      },
    ],
  }),
};

const sideOf = (corner: Corner): 'left' | 'right' => (corner.endsWith('left') ? 'left' : 'right');
const rowOf = (corner: Corner): 'top' | 'bottom' => (corner.startsWith('top') ? 'top' : 'bottom');
const yesNo = (b: boolean | undefined): string | undefined =>
  b === undefined ? undefined : b ? 'yes' : 'no';

function padReasons(print: Footprint, part: HeaderPart): string[] {
  const { padOneCorner: pad, seenFrom } = print;
  const pin = part.cavityOneCorner;
  if (!pad || !pin || !seenFrom) return [];
  const out: string[] = [];
  const through = seenFrom === 'far-side';
  const side = through === (sideOf(pin) === 'left') ? 'right' : 'left';
  if (sideOf(pad) !== side) out.push(`pad 1 is on the ${sideOf(pad)}, pin 1 comes through on the ${side}`);
  const rowsCount = (part.rows ?? 1) > 1 && part.orientation === 'vertical';
  if (rowsCount && rowOf(pad) !== rowOf(pin))
    out.push(`pad 1 is in the ${rowOf(pad)} row, pin 1 in the ${rowOf(pin)} one`);
  return out;
}

const faceReasons = (print: Footprint, part: HeaderPart): string[] =>
  print.facesEdge === false && part.orientation === 'right-angle'
    ? ['its face does not look over the edge']
    : [];

/** The layout of X3, whose cavity 1 is at the top right of the mating face. */
const pads = (t: TinyDraft, padOneCorner: Corner, seenFrom: 'header-side' | 'far-side'): void =>
  void (t.connector('X3').footprint = { padOneCorner, seenFrom });
