import { useEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { Box } from '@latchwork/core/base/point';
import type { ObjectRef } from '@latchwork/core/rules/finding';
import type { AppStore } from '../app/store';
import type { Camera } from '../app/view';
import { fitted, viewBox, zoomedAt, type SizePx } from './camera';
import { createViewport, type Viewport } from './viewport';

const FIRST: Camera = { x: -20, y: -20, pxPerMm: 3 };
/** As near as "show me" goes, px per mm. */
const REVEAL_PX_PER_MM = 5;
const STEP = 1.25;

type CameraField = 'diagramCamera' | 'formboardCamera';

export interface SheetBoxes {
  /** Around everything; null for an empty sheet. */
  all(): Box | null;
  ofRefs(refs: readonly ObjectRef[]): Box | null;
  ofKeys(keys: ReadonlySet<string>): Box | null;
}

// Requests are counted; a sheet that is opened later must not answer an old one twice.
const answered = new WeakMap<AppStore, { reveal: number; zoom: number }>();

/** The camera of a sheet: kept in the view, fitted to a newly opened document, moved on request. */
export function useSheet(
  store: AppStore,
  field: CameraField,
  boxes: SheetBoxes,
): { readonly viewport: Viewport; readonly onSize: (size: SizePx) => void } {
  const [viewport] = useState(() =>
    createViewport(store.getState().view[field] ?? FIRST, (camera) => {
      if (store.getState().view[field] !== camera) store.getState().setView({ [field]: camera });
    }),
  );
  const document = useStore(store, (s) => s.document.id);
  const kept = useStore(store, (s) => s.view[field]);
  const reveal = useStore(store, (s) => s.view.reveal);
  const zoom = useStore(store, (s) => s.view.zoom);
  const [sized, setSized] = useState(false);
  const shown = useRef<string | null>(store.getState().view[field] ? document : null);
  const latest = useRef(boxes);
  useEffect(() => {
    latest.current = boxes;
  });

  // A document that is opened comes into view as a whole.
  useEffect(() => {
    if (!sized || shown.current === document) return;
    shown.current = document;
    // Unless whoever opened it said where to look.
    const said = store.getState().view[field];
    if (said && said !== viewport.camera()) return viewport.moveTo(said);
    const all = latest.current.all();
    viewport.moveTo(all ? fitted(all, viewport.size()) : FIRST);
  }, [sized, document, viewport, store, field]);

  useEffect(() => {
    if (kept && kept !== viewport.camera()) viewport.moveTo(kept);
  }, [kept, viewport]);

  useEffect(() => {
    const done = answered.get(store) ?? { reveal: 0, zoom: 0 };
    if (!sized || !reveal || reveal.count <= done.reveal) return;
    answered.set(store, { ...done, reveal: reveal.count });
    const box = latest.current.ofRefs(reveal.refs);
    if (box) viewport.moveTo(showing(box, viewport));
  }, [reveal, sized, store, viewport]);

  useEffect(() => {
    const done = answered.get(store) ?? { reveal: 0, zoom: 0 };
    if (!sized || !zoom || zoom.count <= done.zoom) return;
    answered.set(store, { ...done, zoom: zoom.count });
    const { width, height } = viewport.size();
    const middle = { x: width / 2, y: height / 2 };
    if (zoom.to === 'in' || zoom.to === 'out')
      return viewport.moveTo(zoomedAt(viewport.camera(), middle, zoom.to === 'in' ? STEP : 1 / STEP));
    const { selection } = store.getState().view;
    const box = zoom.to === 'selection' ? latest.current.ofKeys(selection) : latest.current.all();
    if (box) viewport.moveTo(fitted(box, { width, height }));
  }, [zoom, sized, store, viewport]);

  return { viewport, onSize: () => setSized(true) };
}

/** The camera with the box in the middle; as near as now or nearer, if the box fits. */
function showing(box: Box, viewport: Viewport): Camera {
  const size = viewport.size();
  const now = viewport.camera();
  const fit = fitted(box, size, Math.max(REVEAL_PX_PER_MM, now.pxPerMm));
  const view = viewBox(fit, size);
  const pxPerMm = Math.min(fit.pxPerMm, Math.max(now.pxPerMm, REVEAL_PX_PER_MM));
  return {
    x: (view.minX + view.maxX) / 2 - size.width / 2 / pxPerMm,
    y: (view.minY + view.maxY) / 2 - size.height / 2 / pxPerMm,
    pxPerMm,
  };
}
