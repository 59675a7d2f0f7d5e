import type Konva from 'konva';
import { useEffect, useLayoutEffect, useRef, useState, type ReactNode } from 'react';
import { Layer, Shape, Stage } from 'react-konva';
import type { SizePx } from './camera';
import type { Look } from './draw/look';
import type { Pen } from './draw/pen';
import './sheet.css';
import type { Viewport } from './viewport';

/** One of the things that lie still on a sheet: all areas, all wires, all connectors. Drawn by one shape. */
export interface Part<Content = unknown> {
  readonly id: string;
  readonly paint: (pen: Pen, content: Content) => void;
  /** A new object whenever there is something else to draw. */
  readonly content: Content;
}

/** Ties a painter to what it paints. */
export const part = <C,>(id: string, paint: (pen: Pen, content: C) => void, content: C): Part => ({
  id,
  paint: paint as Part['paint'],
  content,
});

interface ShapeAttrs {
  readonly part: Part;
  readonly viewport: Viewport;
  readonly look: Look;
}

// Hoisted: a function made anew on each render would make Konva draw each time.
function paintBulk(context: Konva.Context, shape: Konva.Shape): void {
  const { part: p, viewport, look } = shape.attrs as ShapeAttrs;
  p.paint(viewport.bulkPen(context._context, look), p.content);
}

function paintTop(context: Konva.Context, shape: Konva.Shape): void {
  const { part: p, viewport, look } = shape.attrs as ShapeAttrs;
  p.paint(viewport.topPen(context._context, look), p.content);
}

interface Props {
  readonly viewport: Viewport;
  readonly look: Look;
  readonly parts: readonly Part[];
  readonly top: Part;
  /** The first size, and each later one, before anything is drawn in it. */
  readonly onSize: (size: SizePx) => void;
}

/** The two canvases of a sheet. They take no events: whoever lies around them listens. */
export function SheetSurface({ viewport, look, parts, top, onSize }: Props): ReactNode {
  const root = useRef<HTMLDivElement>(null);
  const bulkBox = useRef<HTMLDivElement>(null);
  const topBox = useRef<HTMLDivElement>(null);
  const bulk = useRef<Konva.Layer>(null);
  const topLayer = useRef<Konva.Layer>(null);
  const [size, setSize] = useState<SizePx | null>(null);
  const sized = useRef(onSize);
  useEffect(() => {
    sized.current = onSize;
  });

  useLayoutEffect(() => {
    const element = root.current;
    if (!element) return;
    const measure = (): void => {
      const next = { width: element.clientWidth, height: element.clientHeight };
      if (next.width === 0 || next.height === 0) return;
      viewport.setSize(next);
      sized.current(next);
      setSize(next);
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [viewport]);

  const ready = size !== null;
  useLayoutEffect(() => {
    if (!ready || !bulk.current || !topLayer.current || !bulkBox.current || !topBox.current) return;
    const detach = viewport.attach({
      bulk: bulk.current,
      bulkBox: bulkBox.current,
      top: topLayer.current,
      topBox: topBox.current,
    });
    bulk.current.batchDraw();
    topLayer.current.batchDraw();
    return detach;
  }, [ready, viewport]);

  const bulkSize = viewport.bulkSize();
  return (
    <div ref={root} className="sheet-surface" aria-hidden="true">
      {size && (
        <>
          <div ref={bulkBox} className="sheet-canvas">
            <Stage width={bulkSize.width} height={bulkSize.height} listening={false}>
              <Layer ref={bulk} listening={false}>
                {parts.map((p) => (
                  <Shape
                    key={p.id}
                    sceneFunc={paintBulk}
                    listening={false}
                    perfectDrawEnabled={false}
                    part={p}
                    content={p.content}
                    viewport={viewport}
                    look={look}
                  />
                ))}
              </Layer>
            </Stage>
          </div>
          <div ref={topBox} className="sheet-canvas">
            <Stage width={size.width} height={size.height} listening={false}>
              <Layer ref={topLayer} listening={false}>
                <Shape
                  sceneFunc={paintTop}
                  listening={false}
                  perfectDrawEnabled={false}
                  part={top}
                  content={top.content}
                  viewport={viewport}
                  look={look}
                />
              </Layer>
            </Stage>
          </div>
        </>
      )}
    </div>
  );
}
