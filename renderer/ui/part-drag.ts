/** A part dragged out of the shelf: the data transfer holds its id under this type, and its number as plain text. */
export const PART_DRAG_TYPE = 'application/x-latchwork-part';

export function setDraggedPart(transfer: DataTransfer, part: { id: string; partNumber: string }): void {
  transfer.setData(PART_DRAG_TYPE, part.id);
  transfer.setData('text/plain', part.partNumber);
  transfer.effectAllowed = 'copy';
}

/** Whether a part is being dragged; its id can be read only on drop. */
export const isPartDrag = (transfer: DataTransfer | null): boolean =>
  transfer?.types.includes(PART_DRAG_TYPE) ?? false;

/** The id of the dropped part: look it up in the project's parts, then in the catalogue. */
export const droppedPartId = (transfer: DataTransfer | null): string | null =>
  transfer?.getData(PART_DRAG_TYPE) || null;
