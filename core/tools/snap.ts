import type { Point } from '../base/point';

/** Spacing of the drawing grid, mm. */
export const GRID_MM = 5;

const onGrid = (mm: number): number => Math.round(mm / GRID_MM) * GRID_MM;

/** The nearest grid point, or the point itself where snapping is off. */
export const snapped = (p: Point, on: boolean): Point => (on ? { x: onGrid(p.x), y: onGrid(p.y) } : p);
