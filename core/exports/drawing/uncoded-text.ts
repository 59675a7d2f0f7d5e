import type { CodeItem } from './code-modules';
import type { DrawingItem } from './drawing';

type Box = Pick<CodeItem, 'at' | 'widthMm' | 'heightMm'>;

/** The words that stand where a text cannot be coded: a label without its code must be seen. */
export function uncodedText({ at, widthMm, heightMm }: Box): Extract<DrawingItem, { kind: 'text' }> {
  return {
    kind: 'text',
    at: { x: at.x + widthMm / 2, y: at.y + heightMm / 2 },
    text: 'no code',
    heightMm: Math.min(2, heightMm / 2, widthMm / 8),
    align: 'middle',
  };
}
