import { compareText } from '../../../base/stable-order';
import type { ModulesOf } from '../code-modules';
import type { Drawing } from '../drawing';
import { DASH_MM } from '../stroke-of';
import { DXF_LINE_TYPES, DXF_TOLERANCE_MM, dxfEntities } from './dxf-entities';
import { dxfName, dxfString, dxfText, type Tag } from './dxf-tags';

/**
 * A drawing as DXF of release 12 (AC1009), one unit a millimetre, y upwards from the bottom of the drawing. R12 has no
 * variable for units; the first lines say them. Layers are those of the items. ASCII, lines ending in LF.
 */
export function drawingDxf(drawing: Drawing, title: string, modulesOf: ModulesOf): string {
  const { widthMm, heightMm } = drawing;
  const layers = [...new Set(drawing.items.map((i) => dxfName(i.layer ?? '0')).concat('0'))].sort(compareText);
  const tags: Tag[] = [
    [999, dxfString(title)],
    [999, `Units: millimetres, true size. Curves within ${DXF_TOLERANCE_MM} mm.`],
    [0, 'SECTION'], [2, 'HEADER'],
    [9, '$ACADVER'], [1, 'AC1009'],
    [9, '$INSBASE'], [10, 0], [20, 0], [30, 0],
    [9, '$EXTMIN'], [10, 0], [20, 0], [30, 0],
    [9, '$EXTMAX'], [10, widthMm], [20, heightMm], [30, 0],
    [9, '$LIMMIN'], [10, 0], [20, 0],
    [9, '$LIMMAX'], [10, widthMm], [20, heightMm],
    [9, '$LTSCALE'], [40, 1],
    [0, 'ENDSEC'],
    [0, 'SECTION'], [2, 'TABLES'],
    ...table('LTYPE', [lineType('CONTINUOUS', []), ...lineTypes()]),
    ...table('LAYER', layers.map((name) => [[0, 'LAYER'], [2, name], [70, 0], [62, 7], [6, 'CONTINUOUS']])),
    ...table('STYLE', [
      [[0, 'STYLE'], [2, 'STANDARD'], [70, 0], [40, 0], [41, 1], [50, 0], [71, 0], [42, 2.5], [3, 'txt'], [4, '']],
    ]),
    [0, 'ENDSEC'],
    [0, 'SECTION'], [2, 'ENTITIES'],
    ...drawing.items.flatMap((item) => dxfEntities(item, { heightMm, modulesOf })),
    [0, 'ENDSEC'],
    [0, 'EOF'],
  ];
  return dxfText(tags);
} // prettier-ignore

const table = (name: string, entries: readonly (readonly Tag[])[]): readonly Tag[] => [
  [0, 'TABLE'],
  [2, name],
  [70, entries.length],
  ...entries.flat(),
  [0, 'ENDTAB'],
];

const lineTypes = (): readonly (readonly Tag[])[] =>
  (Object.keys(DXF_LINE_TYPES) as (keyof typeof DXF_LINE_TYPES)[]).map((dash) =>
    lineType(DXF_LINE_TYPES[dash], DASH_MM[dash]),
  );

/** Dashes and gaps in turn; gaps count as negative lengths. */
const lineType = (name: string, lengths: readonly number[]): readonly Tag[] => [
  [0, 'LTYPE'],
  [2, name],
  [70, 0],
  [3, ''],
  [72, 65],
  [73, lengths.length],
  [40, lengths.reduce((sum, mm) => sum + mm, 0)],
  ...lengths.map((mm, i): Tag => [49, i % 2 === 0 ? mm : -mm]),
];
