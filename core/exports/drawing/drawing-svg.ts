import { must } from '../../base/assert-never';
import { xml, type XmlElement, xmlText } from '../xml/xml';
import { codeRectangles, type ModulesOf } from './code-modules';
import type { Drawing, DrawingItem } from './drawing';
import { figurePath, rectanglesPath, svgNumber } from './figure-path';
import { DASH_MM, FILL_COLOURS, lineMmOf, lineOf } from './stroke-of';
import { CAPITALS } from './text-width';
import { uncodedText } from './uncoded-text';

export const TEXT_FAMILIES = {
  text: "'Atkinson Hyperlegible Next', sans-serif",
  code: "'Atkinson Hyperlegible Mono', monospace",
} as const;

const INK = FILL_COLOURS.ink;

/**
 * A drawing as an SVG file at true size: width and height in mm, one unit of the view box a millimetre. No scripts, no
 * links; every text is escaped. Items that follow each other on one layer stand in a group that names it.
 */
export function drawingSvg(drawing: Drawing, title: string, modulesOf: ModulesOf): string {
  const { widthMm, heightMm } = drawing;
  const groups: { layer: string | undefined; items: XmlElement[] }[] = [];
  for (const item of drawing.items) {
    const last = groups.at(-1);
    const element = elementOf(item, modulesOf);
    if (last && last.layer === item.layer) last.items.push(element);
    else groups.push({ layer: item.layer, items: [element] });
  }
  const written = xmlText(
    xml(
      'svg',
      {
        'xmlns': 'http://www.w3.org/2000/svg',
        'width': `${svgNumber(widthMm)}mm`,
        'height': `${svgNumber(heightMm)}mm`,
        'viewBox': `0 0 ${svgNumber(widthMm)} ${svgNumber(heightMm)}`,
        'fill': 'none',
        'stroke-linejoin': 'round',
      },
      [
        xml('title', {}, fit(title)),
        ...groups.map(({ layer, items }) =>
          xml('g', { 'data-layer': layer === undefined ? undefined : fit(layer) }, items),
        ),
      ],
    ),
  );
  // Every text was made fit for XML, so there is no problem to tell.
  return must(written.ok ? written.value : undefined, 'SVG text');
} // prettier-ignore

function elementOf(item: DrawingItem, modulesOf: ModulesOf): XmlElement {
  if (item.kind === 'text') return textElement(item);
  if (item.kind === 'code') {
    const code = modulesOf(item.symbology, item.text);
    return code ? xml('path', { d: rectanglesPath(codeRectangles(item, code)), fill: INK }) : uncoded(item);
  }
  const line = lineOf(item);
  return xml('path', {
    'd': figurePath(item),
    'fill': item.fill && FILL_COLOURS[item.fill],
    'stroke': line === null ? undefined : INK,
    'stroke-width': line === null ? undefined : svgNumber(lineMmOf(item)),
    'stroke-dasharray': item.dash && DASH_MM[item.dash].join(' '),
  }); // prettier-ignore
}

const ANCHORS = { left: undefined, middle: 'middle', right: 'end' } as const;

function textElement(item: Extract<DrawingItem, { kind: 'text' }>): XmlElement {
  const [x, y] = [svgNumber(item.at.x), svgNumber(item.at.y)];
  return xml(
    'text',
    {
      x,
      y,
      'transform': item.angleDeg ? `rotate(${svgNumber(item.angleDeg)} ${x} ${y})` : undefined,
      'font-family': TEXT_FAMILIES[item.look === 'code' ? 'code' : 'text'],
      'font-size': svgNumber(item.heightMm / CAPITALS),
      'font-weight': item.look === 'strong' ? 700 : undefined,
      'text-anchor': ANCHORS[item.align ?? 'left'],
      'fill': INK,
    },
    fit(item.text),
  ); // prettier-ignore
}

/** What cannot be coded is framed and said. */
const uncoded = ({ at, widthMm, heightMm }: Extract<DrawingItem, { kind: 'code' }>): XmlElement =>
  xml('g', {}, [
    xml('path', {
      'd': rectanglesPath([{ x: at.x, y: at.y, width: widthMm, height: heightMm }]),
      'stroke': INK,
      'stroke-width': 0.13,
    }),
    textElement(uncodedText({ at, widthMm, heightMm })),
  ]); // prettier-ignore

/** Characters that XML cannot carry are written by their numbers, as on paper. */
const fit = (text: string): string =>
  text.replace(
    /[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu,
    (c) => `[U+${(c.codePointAt(0) as number).toString(16).toUpperCase().padStart(4, '0')}]`,
  );
