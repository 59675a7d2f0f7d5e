import type { Drawing } from '@latchwork/core/exports/drawing/drawing';
import { drawingSvg } from '@latchwork/core/exports/drawing/drawing-svg';
import { drawingDxf } from '@latchwork/core/exports/drawing/dxf/drawing-dxf';
import { modulesOf } from './modules-of';

export const DRAWING_FORMATS = ['svg', 'dxf'] as const;
export type DrawingFormat = (typeof DRAWING_FORMATS)[number];

/** A drawing as the bytes of a file, at true size. */
export function drawingBytes(drawing: Drawing, title: string, format: DrawingFormat): Uint8Array {
  const write = format === 'svg' ? drawingSvg : drawingDxf;
  return Buffer.from(write(drawing, title, modulesOf), 'utf8');
}
