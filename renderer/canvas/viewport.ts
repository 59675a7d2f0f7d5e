import type Konva from 'konva';
import type { Camera } from '../app/view';
import { panned, zoomedAt, type SizePx } from './camera';
import { penFor, type Pen } from './draw/pen';
import type { Look } from './draw/look';

/** After so long without movement the picture is drawn sharp again, ms. */
const IDLE_MS = 120;
/** How far a drawn picture may be stretched while the camera moves. */
const STRETCH = { least: 0.55, most: 1.8 };

/** What the camera moves: two canvases, each in a box of its own that can be shifted and scaled without drawing. */
export interface Surfaces {
  /** All that lies still; larger than the view on every side, so that it can be shifted. */
  readonly bulk: Konva.Layer;
  readonly bulkBox: HTMLElement;
  /** What is selected, moved or pointed at; as large as the view. */
  readonly top: Konva.Layer;
  readonly topBox: HTMLElement;
}

export type Viewport = ReturnType<typeof createViewport>;

/**
 * The camera over a sheet. While it moves, the canvases that are there are shifted and scaled by the compositor; they are
 * drawn anew when the view leaves what they hold, and sharp when the camera has come to rest.
 */
export function createViewport(first: Camera, onRest: (camera: Camera) => void) {
  let live = first;
  let size: SizePx = { width: 1, height: 1 };
  let surfaces: Surfaces | null = null;
  let bulkDrawn: Camera | null = null;
  let topDrawn: Camera | null = null;
  let hasty = false;
  let topVisible = false;
  let idle: ReturnType<typeof setTimeout> | undefined;
  const watchers = new Set<() => void>();

  const marginPx = (): number => (globalThis.devicePixelRatio > 1.5 ? 224 : 512);

  const place = (box: HTMLElement, drawn: Camera, offset: number): void => {
    const scale = live.pxPerMm / drawn.pxPerMm;
    const x = (drawn.x - live.x) * live.pxPerMm - offset * scale;
    const y = (drawn.y - live.y) * live.pxPerMm - offset * scale;
    const device = globalThis.devicePixelRatio || 1;
    const pixel = (v: number): number => (scale === 1 ? Math.round(v * device) / device : v);
    box.style.transform = `translate(${pixel(x)}px, ${pixel(y)}px) scale(${scale})`;
  };

  const covers = (drawn: Camera): boolean => {
    const scale = live.pxPerMm / drawn.pxPerMm;
    if (scale < STRETCH.least || scale > STRETCH.most) return false;
    const slack = marginPx() / drawn.pxPerMm;
    return (
      live.x >= drawn.x - slack &&
      live.y >= drawn.y - slack &&
      live.x + size.width / live.pxPerMm <= drawn.x + size.width / drawn.pxPerMm + slack &&
      live.y + size.height / live.pxPerMm <= drawn.y + size.height / drawn.pxPerMm + slack
    );
  };

  /** A picture shifted by whole pixels is as sharp as a new one, as long as enough of it is left around the view. */
  const isSharp = (drawn: Camera): boolean => {
    if (drawn.pxPerMm !== live.pxPerMm) return false;
    const [x, y] = [(drawn.x - live.x) * live.pxPerMm, (drawn.y - live.y) * live.pxPerMm];
    const device = globalThis.devicePixelRatio || 1;
    const whole = (v: number): boolean => Math.abs(v * device - Math.round(v * device)) < 0.02;
    return whole(x) && whole(y) && Math.max(Math.abs(x), Math.abs(y)) < marginPx() * 0.75;
  };

  const rest = (): void => {
    idle = undefined;
    const stale = hasty || !bulkDrawn || !isSharp(bulkDrawn);
    hasty = false;
    if (stale) surfaces?.bulk.batchDraw();
    if (topDrawn !== live && topVisible) surfaces?.top.batchDraw();
    onRest(live);
  };

  /** Shows another place at once: what comes next is drawn sharp, in the frame in which new content is drawn too. */
  const jump = (camera: Camera): void => {
    live = camera;
    hasty = false;
    clearTimeout(idle);
    idle = surfaces ? setTimeout(rest, 0) : undefined;
    surfaces?.bulk.batchDraw();
    surfaces?.top.batchDraw();
    for (const watch of watchers) watch();
  };

  const move = (camera: Camera): void => {
    live = camera;
    if (!surfaces) return;
    if (bulkDrawn && covers(bulkDrawn)) place(surfaces.bulkBox, bulkDrawn, marginPx());
    else {
      hasty = bulkDrawn !== null;
      surfaces.bulk.draw();
    }
    if (topDrawn) place(surfaces.topBox, topDrawn, 0);
    for (const watch of watchers) watch();
    clearTimeout(idle);
    idle = setTimeout(rest, IDLE_MS);
  };

  return {
    camera: () => live,
    size: () => size,
    /** Size of the canvas that holds the still picture, px. */
    bulkSize: (): SizePx => ({
      width: size.width + 2 * marginPx(),
      height: size.height + 2 * marginPx(),
    }),
    setSize(next: SizePx): void {
      size = next;
      bulkDrawn = null;
    },
    /** Hands over the canvases; returns how to take them back. */
    attach(given: Surfaces): () => void {
      surfaces = given;
      given.topBox.style.visibility = topVisible ? 'visible' : 'hidden';
      // Whoever draws a layer, for whatever reason, draws it through the camera as it is now.
      given.bulk.on('beforeDraw.viewport', () => {
        bulkDrawn = live;
        place(given.bulkBox, live, marginPx());
      });
      given.top.on('beforeDraw.viewport', () => {
        topDrawn = live;
        place(given.topBox, live, 0);
      });
      return () => {
        given.bulk.off('beforeDraw.viewport');
        given.top.off('beforeDraw.viewport');
        clearTimeout(idle);
        surfaces = null;
      };
    },
    moveTo: jump,
    panBy: (x: number, y: number): void => move(panned(live, { x, y })),
    zoomAt: (at: { x: number; y: number }, factor: number): void => move(zoomedAt(live, at, factor)),
    /** Called on every movement, for what floats over the sheet. */
    watch(listener: () => void): () => void {
      watchers.add(listener);
      return () => watchers.delete(listener);
    },
    drawTop: (): void => void surfaces?.top.batchDraw(),
    showTop(visible: boolean): void {
      if (visible && !topVisible && topDrawn !== live) surfaces?.top.batchDraw();
      topVisible = visible;
      if (surfaces) surfaces.topBox.style.visibility = visible ? 'visible' : 'hidden';
    },
    bulkPen(ctx: CanvasRenderingContext2D, look: Look): Pen {
      const slack = marginPx() / live.pxPerMm;
      const camera = { ...live, x: live.x - slack, y: live.y - slack };
      return penFor(ctx, camera, this.bulkSize(), look, hasty);
    },
    topPen: (ctx: CanvasRenderingContext2D, look: Look): Pen => penFor(ctx, live, size, look),
    /** Resolves when the camera rests and the picture is sharp. */
    async settled(): Promise<void> {
      const frame = (): Promise<void> => new Promise((done) => requestAnimationFrame(() => done()));
      do {
        await frame();
      } while (idle !== undefined);
      await frame();
    },
  };
}
