import type { Box } from '../../base/point';
import { frameOfSheet, hasRoomBeside, type Sheet, titleBlockBox } from './sheet';

/** Where things stand on a sheet that is one picture: mm from its top left. */
export interface SheetPlan {
  readonly frame: Box;
  readonly title: Box;
  /** For the caution. */
  readonly caution: Box;
  /** For what tells the place of the sheet among others. */
  readonly strip: Box;
  /** Free for the picture. */
  readonly window: Box;
}

const CAUTION_MM = 9;
const STRIP_MM = 20;

/** Room beside the title block that the caution alone can use. */
const CAUTION_WIDTH_MM = 60;

/** Strip and caution stand beside the title block where it leaves room for them, else above it. */
export function sheetPlan(sheet: Sheet): SheetPlan {
  const frame = frameOfSheet(sheet);
  const title = titleBlockBox(frame);
  const across = (minY: number, maxY: number): Box => ({ ...frame, minY, maxY });
  if (hasRoomBeside(frame)) {
    const beside = (minY: number, maxY: number): Box => ({ ...frame, maxX: title.minX, minY, maxY });
    return {
      frame,
      title,
      caution: beside(frame.maxY - CAUTION_MM, frame.maxY),
      strip: beside(title.minY, frame.maxY - CAUTION_MM),
      window: across(frame.minY, title.minY),
    };
  }
  if (title.minX - frame.minX >= CAUTION_WIDTH_MM)
    return {
      frame,
      title,
      caution: { ...title, minX: frame.minX, maxX: title.minX },
      strip: across(title.minY - STRIP_MM, title.minY),
      window: across(frame.minY, title.minY - STRIP_MM),
    };
  const cautionTop = title.minY - CAUTION_MM;
  const stripTop = cautionTop - STRIP_MM;
  return {
    frame,
    title,
    caution: across(cautionTop, title.minY),
    strip: across(stripTop, cautionTop),
    window: across(frame.minY, stripTop),
  };
}
