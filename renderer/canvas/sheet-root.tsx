import { useEffect, useRef, type KeyboardEvent, type PointerEvent, type ReactNode } from 'react';
import { droppedPartId, isPartDrag } from '../ui/part-drag';
import type { Interaction } from './interaction';
import type { Viewport } from './viewport';

/** Zoom per pixel of the wheel. */
const WHEEL = 0.0016;
const PINCH = 0.01;

interface Props {
  readonly label: string;
  readonly hint: string;
  readonly viewport: Viewport;
  readonly interaction: Interaction;
  readonly cursor: string;
  readonly onKey: (event: KeyboardEvent) => void;
  readonly onDoubleClick?: (screen: { x: number; y: number }, alt: boolean) => void;
  /** Anything else that is let go over the sheet; answers whether it was taken. */
  readonly onDropOther?: (transfer: DataTransfer, screen: { x: number; y: number }) => boolean;
  readonly children: ReactNode;
}

/** Takes pointer, wheel, keys and dropped parts for a sheet, in pixels from its corner. */
export function SheetRoot(props: Props): ReactNode {
  const { label, hint, viewport, interaction, cursor, onKey, onDoubleClick, onDropOther, children } = props;
  const root = useRef<HTMLDivElement>(null);
  const space = useRef(false);

  const pointOf = (e: { clientX: number; clientY: number }): { x: number; y: number } => {
    const box = root.current?.getBoundingClientRect();
    return { x: e.clientX - (box?.left ?? 0), y: e.clientY - (box?.top ?? 0) };
  };

  useEffect(() => {
    const element = root.current;
    if (!element) return;
    // React listens to the wheel passively; the page must not scroll or zoom instead.
    const wheel = (e: WheelEvent): void => {
      e.preventDefault();
      const unit = e.deltaMode === 1 ? 16 : e.deltaMode === 2 ? 400 : 1;
      const box = element.getBoundingClientRect();
      const at = { x: e.clientX - box.left, y: e.clientY - box.top };
      if (e.shiftKey) viewport.panBy(-(e.deltaX || e.deltaY) * unit, 0);
      else viewport.zoomAt(at, Math.exp(-e.deltaY * unit * (e.ctrlKey ? PINCH : WHEEL)));
    };
    element.addEventListener('wheel', wheel, { passive: false });
    return () => element.removeEventListener('wheel', wheel);
  }, [viewport]);

  const pass = (on: 'down' | 'move' | 'up', e: PointerEvent, hold = false): boolean =>
    interaction.pointer({
      on,
      screen: pointOf(e),
      alt: e.altKey,
      add: e.shiftKey || e.ctrlKey || e.metaKey,
      shift: e.shiftKey,
      hold,
    });

  return (
    <div
      ref={root}
      className="sheet-root"
      role="application"
      aria-label={label}
      aria-roledescription="drawing sheet"
      aria-description={hint}
      tabIndex={0}
      data-cursor={cursor}
      onPointerDown={(e) => {
        if (e.button > 1 || isControl(e.target)) return;
        root.current?.focus({ preventScroll: true });
        if (pass('down', e, e.button === 1 || space.current)) root.current?.setPointerCapture(e.pointerId);
      }}
      onPointerMove={(e) => {
        if (!isControl(e.target)) pass('move', e);
        else interaction.leave();
      }}
      onPointerUp={(e) => {
        if (e.button <= 1 && !isControl(e.target)) pass('up', e);
      }}
      onPointerCancel={() => void interaction.cancel()}
      onPointerLeave={() => interaction.leave()}
      onMouseDown={(e) => {
        // The middle button would start the browser's own scrolling.
        if (e.button === 1) e.preventDefault();
      }}
      onDoubleClick={(e) => {
        if (!isControl(e.target)) onDoubleClick?.(pointOf(e), e.altKey);
      }}
      onKeyDown={(e) => {
        if (isControl(e.target)) return;
        if (e.key === ' ') {
          space.current = true;
          e.preventDefault();
        } else onKey(e);
      }}
      onKeyUp={(e) => {
        if (e.key === ' ') space.current = false;
      }}
      onBlur={() => {
        space.current = false;
      }}
      onDragOver={(e) => {
        if (!isPartDrag(e.dataTransfer) && !onDropOther) return;
        e.preventDefault();
        e.dataTransfer.dropEffect = 'copy';
      }}
      onDrop={(e) => {
        const id = droppedPartId(e.dataTransfer);
        if (id) interaction.drop(id, pointOf(e), false);
        else if (!onDropOther?.(e.dataTransfer, pointOf(e))) return;
        e.preventDefault();
        root.current?.focus({ preventScroll: true });
      }}
    >
      {children}
    </div>
  );
}

/** Buttons and fields that float over the sheet keep their own events. */
const isControl = (target: EventTarget): boolean =>
  target instanceof Element && target.closest('.sheet-float, .sheet-outline') !== null;
