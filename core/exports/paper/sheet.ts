import { z } from 'zod';
import type { Box } from '../../base/point';

/** Width and height of upright sheets, mm: ISO 216, and ANSI/ASME Y14.1 A and B (8.5 x 11 and 11 x 17 inches). */
const UPRIGHT_MM = {
  A4: [210, 297],
  A3: [297, 420],
  A2: [420, 594],
  A1: [594, 841],
  A0: [841, 1189],
  Letter: [215.9, 279.4],
  Tabloid: [279.4, 431.8],
} as const;

export const SheetSize = z.enum(['A4', 'A3', 'A2', 'A1', 'A0', 'Letter', 'Tabloid']);
export type SheetSize = z.infer<typeof SheetSize>;

export const Sheet = z.strictObject({ size: SheetSize, orientation: z.enum(['upright', 'landscape']) });
export type Sheet = z.infer<typeof Sheet>;

export const A4_UPRIGHT: Sheet = { size: 'A4', orientation: 'upright' };
export const A4_LANDSCAPE: Sheet = { size: 'A4', orientation: 'landscape' };

export function sheetMm({ size, orientation }: Sheet): {
  readonly widthMm: number;
  readonly heightMm: number;
} {
  const [short, long] = UPRIGHT_MM[size];
  return orientation === 'upright' ? { widthMm: short, heightMm: long } : { widthMm: long, heightMm: short };
}

/** The frame with the margins of ISO 5457: 20 mm to bind at, 10 mm all around. */
export function frameOfSheet(sheet: Sheet): Box {
  const { widthMm, heightMm } = sheetMm(sheet);
  return { minX: 20, minY: 10, maxX: widthMm - 10, maxY: heightMm - 10 };
}

/** Size of the title block (ISO 7200: 180 mm wide), bottom right in the frame. */
export const TITLE_BLOCK_MM = { width: 180, height: 29 } as const;

/** Room that is enough to set something beside the title block. */
const BESIDE_MM = 80;

export const hasRoomBeside = (frame: Box): boolean =>
  frame.maxX - frame.minX - TITLE_BLOCK_MM.width >= BESIDE_MM;

export function titleBlockBox(frame: Box): Box {
  return {
    minX: frame.maxX - TITLE_BLOCK_MM.width,
    minY: frame.maxY - TITLE_BLOCK_MM.height,
    maxX: frame.maxX,
    maxY: frame.maxY,
  };
}
