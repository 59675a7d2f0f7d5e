import type { DrawingItem } from '../drawing/drawing';
import { textItem } from '../drawing/items';
import type { TextLook } from '../drawing/text-width';
import { textWidthMm } from '../drawing/text-width';
import { wrapText } from '../drawing/wrap-text';
import { codeWidthMm, type LabelCode } from './label-code';

/** What one label says. */
export interface LabelWords {
  /** Designator of what carries it. */
  readonly designator: string;
  readonly text: string;
  readonly codeText: string;
  /** Diameter that it goes round, where known. */
  readonly aroundMm: number | undefined;
}

export interface Size {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A label as it is printed, its top left at the origin. */
export interface DrawnLabel {
  readonly items: readonly DrawingItem[];
  /** Height of the smallest capitals on it. */
  readonly textMm: number;
  readonly code: LabelCode;
  readonly remarks: readonly string[];
}

const INSET_MM = 0.8;
const LAYER = 'labels';

/** Capitals below this are hard to read; common practice. */
const LEAST_TEXT_MM = 1;
/** A row of text with accents above and descenders below it, in heights of capitals. */
const ROW = 1.75;
const BASE = 1.35;

/**
 * The label with its designator large, its text below and its code. A text that is too long is set smaller until it fits,
 * and told of where it is hard to read; nothing is cut off. A code that could not be read is left out and told of.
 */
export function drawLabel(words: LabelWords, size: Size, code: LabelCode): DrawnLabel {
  const inner = { x: INSET_MM, y: INSET_MM, w: size.widthMm - 2 * INSET_MM, h: size.heightMm - 2 * INSET_MM };
  const remarks: string[] = [];
  const items: DrawingItem[] = [];
  let room: Room = inner;
  let drawn: LabelCode = 'none';
  if (code !== 'none') {
    const placed = placeCode(words, inner, code);
    if (placed.ok) {
      ({ room } = placed);
      items.push(placed.item);
      drawn = code;
      if (hidden(words, placed.item)) remarks.push('code to be read flat');
    } else remarks.push(placed.why);
  }
  const set = (drawn === 'none' ? repeated(words, room) : undefined) ?? stacked(words, room);
  if (set.textMm < LEAST_TEXT_MM)
    remarks.push(`text hard to read: capitals of ${set.textMm} mm, too long for the label`);
  return { items: [...items, ...set.items], textMm: set.textMm, code: drawn, remarks };
}

interface Room {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

type CodeDrawn = Extract<DrawingItem, { kind: 'code' }>;

/** A QR code stands at the left, bars stand below the text. */
function placeCode(
  { codeText: text }: LabelWords,
  { x, y, w, h }: Room,
  symbology: Exclude<LabelCode, 'none'>,
): { ok: true; item: CodeDrawn; room: Room } | { ok: false; why: string } {
  const qr = symbology === 'qr';
  const most = qr ? { widthMm: w * 0.6, heightMm: h } : { widthMm: w, heightMm: Math.min(10, h * 0.5) };
  const width = codeWidthMm(symbology, text, most);
  if (!width.ok) return { ok: false, why: width.problem };
  const side = width.value;
  const common = { kind: 'code' as const, symbology, text, widthMm: side, layer: LAYER };
  return qr
    ? {
        ok: true,
        item: { ...common, at: { x, y: y + (h - side) / 2 }, heightMm: side },
        room: { x: x + side, y, w: w - side, h },
      }
    : {
        ok: true,
        item: { ...common, at: { x: x + (w - side) / 2, y: y + h - most.heightMm }, heightMm: most.heightMm },
        room: { x, y, w, h: h - most.heightMm - 0.3 },
      };
}

/** Wrapped, more than half of the code would lie out of sight. */
const hidden = ({ aroundMm }: LabelWords, item: CodeDrawn): boolean =>
  aroundMm !== undefined && (Math.PI * aroundMm) / 2 < item.heightMm;

interface SetText {
  readonly items: readonly DrawingItem[];
  readonly textMm: number;
}

interface Line {
  readonly text: string;
  readonly heightMm: number;
  readonly look: TextLook;
}

/** Steps of 0.1 mm from large to small. */
const SIZES = Array.from({ length: 80 }, (_, i) => (80 - i) / 10);

/** The designator with the text below it, as large as the room allows; only the text where that names the designator. */
function stacked({ designator, text }: LabelWords, { x, y, w, h }: Room): SetText {
  const both = !text.split(/[\s/:,]+/).includes(designator);
  const lines = (s: number): Line[] =>
    both
      ? [{ text: designator, heightMm: s, look: 'strong' }, ...rows(text, s * 0.7, w, 'text')]
      : rows(text, s, w, 'strong');
  const fits = (ls: readonly Line[]): boolean =>
    ls.reduce((sum, l) => sum + l.heightMm * ROW, 0) <= h &&
    ls.every((l) => textWidthMm(l.text, l.heightMm, l.look) <= w);
  let chosen = lines(0.1);
  for (const s of SIZES) {
    const tried = lines(s);
    if (!fits(tried)) continue;
    chosen = tried;
    break;
  }
  const tall = chosen.reduce((sum, l) => sum + l.heightMm * ROW, 0);
  let top = y + (h - tall) / 2;
  const items = chosen.map((l): DrawingItem => {
    const item = lineText(l, x + w / 2, top);
    top += l.heightMm * ROW;
    return item;
  });
  return { items, textMm: Math.round(Math.min(...chosen.map((l) => l.heightMm)) * 100) / 100 };
}

const rows = (text: string, heightMm: number, w: number, look: 'text' | 'strong'): Line[] =>
  wrapText(text, heightMm, w, look).map((t) => ({ text: t, heightMm, look }));

const lineText = ({ text, heightMm, look }: Line, middle: number, top: number): DrawingItem =>
  textItem(text, { x: middle, y: top + heightMm * BASE }, heightMm, {
    align: 'middle',
    layer: LAYER,
    ...(look === 'strong' ? { look } : {}),
  });

/** Round a thin wire: the same line again and again, so that one faces whoever looks, whichever way it lies. */
function repeated({ designator, text, aroundMm }: LabelWords, { x, y, w, h }: Room): SetText | undefined {
  if (aroundMm === undefined) return undefined;
  const pitch = Math.max((Math.PI * aroundMm) / 2, LEAST_TEXT_MM * ROW);
  const count = Math.floor(h / pitch);
  if (count < 2) return undefined;
  const line = text.split(/[\s/:,]+/).includes(designator) ? text : `${designator}  ${text}`;
  const heightMm = SIZES.find((s) => s * ROW <= pitch && textWidthMm(line, s, 'strong') <= w);
  if (heightMm === undefined || heightMm < LEAST_TEXT_MM) return undefined;
  const top = y + (h - count * pitch) / 2;
  const items = Array.from({ length: count }, (_, i) =>
    lineText(
      { text: line, heightMm, look: 'strong' },
      x + w / 2,
      top + i * pitch + (pitch - heightMm * ROW) / 2,
    ),
  );
  return { items, textMm: heightMm };
}
