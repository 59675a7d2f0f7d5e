import { barModules, fieldModules, type ModulesOf } from '@latchwork/core/exports/drawing/code-modules';
import type { Drawing } from '@latchwork/core/exports/drawing/drawing';

/** One of every item, at places that are easy to find again. */
export const SAMPLE: Drawing = {
  widthMm: 200,
  heightMm: 100,
  items: [
    { kind: 'polyline', points: [{ x: 10, y: 20 }, { x: 110, y: 20 }], line: 'thick', layer: 'wires' },
    { kind: 'polyline', points: [{ x: 10, y: 30 }, { x: 30, y: 30 }, { x: 30, y: 50 }], closed: true, dash: 'dashed', layer: 'wires' },
    { kind: 'polyline', points: [{ x: 60, y: 30 }, { x: 70, y: 30 }, { x: 70, y: 40 }, { x: 60, y: 40 }], closed: true, fill: 'ink' },
    { kind: 'curve', points: [{ x: 10, y: 60 }, { x: 60, y: 60 }, { x: 60, y: 90 }, { x: 110, y: 90 }] },
    { kind: 'circle', at: { x: 130, y: 30 }, radiusMm: 5, fill: 'light', line: 'thin' },
    { kind: 'arc', at: { x: 150, y: 30 }, radiusMm: 10, fromDeg: 0, toDeg: 90 },
    { kind: 'arc', at: { x: 150, y: 60 }, radiusMm: 10, fromDeg: 90, toDeg: 0 },
    { kind: 'text', at: { x: 10, y: 95 }, text: 'a < b & "c" 100 %% µ', heightMm: 3, layer: 'names & <notes>' },
    { kind: 'text', at: { x: 180, y: 80 }, text: 'turned', heightMm: 2.5, align: 'right', angleDeg: -90, look: 'code' },
    { kind: 'code', symbology: 'code-128', text: 'W1', at: { x: 120, y: 85 }, widthMm: 40, heightMm: 10 },
  ],
}; // prettier-ignore

/** Stands in for an encoder: bars 2 1 1 for a bar code, a square of two fields for a QR code; "?" cannot be said. */
export const fakeModules: ModulesOf = (symbology, text) =>
  text === '?' ? null : symbology === 'qr' ? fieldModules([1, 1, 0, 1], 2) : barModules([2, 1, 1]);
