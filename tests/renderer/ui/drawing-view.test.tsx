import { afterEach, describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-react';
import { drawingSvg } from '@latchwork/core/exports/drawing/drawing-svg';
import type { Drawing } from '@latchwork/core/exports/drawing/drawing';
import { DrawingView } from '../../../renderer/ui/drawing-view';
import '../../../renderer/ui/tokens.css';
import { fakeModules, SAMPLE } from '../../core/exports/drawing/sample-drawing';

afterEach(() => {
  delete document.documentElement.dataset.theme;
});

const shown = async (drawing: Drawing, pxPerMm = 2) => {
  const screen = await render(<DrawingView drawing={drawing} label="Sample" pxPerMm={pxPerMm} />);
  return screen.getByRole('img', { name: 'Sample' }).element() as unknown as SVGSVGElement;
};
/** Boxes of figures as the browser measures them, in millimetres. */
const boxes = (svg: Element) =>
  [...svg.querySelectorAll<SVGGraphicsElement>('path')].map((p) => {
    const { x, y, width, height } = p.getBBox();
    return [x, y, width, height].map((v) => Math.round(v * 1000) / 1000);
  });

describe('a drawing in the window', () => {
  it('has the size asked for, a unit being a millimetre', async () => {
    const svg = await shown(SAMPLE);
    const { width, height } = svg.getBoundingClientRect();
    expect([Math.round(width), Math.round(height)]).toEqual([400, 200]);
    expect([svg.viewBox.baseVal.width, svg.viewBox.baseVal.height]).toEqual([200, 100]);
  });

  it('draws figures where they are, arcs clockwise, as a browser measures them', async () => {
    const [line, triangle, square, , circle, quarter, rest] = boxes(await shown(SAMPLE));
    expect(line).toEqual([10, 20, 100, 0]);
    expect(triangle).toEqual([10, 30, 20, 20]);
    expect(square).toEqual([60, 30, 10, 10]);
    expect(circle).toEqual([125, 25, 10, 10]);
    // From the right over below: a quarter of a circle around (150, 30).
    expect(quarter).toEqual([150, 30, 10, 10]);
    expect(rest).toEqual([140, 50, 20, 20]);
  });

  it('shows the same figures as the SVG file', async () => {
    const view = await shown(SAMPLE);
    const file = new DOMParser().parseFromString(drawingSvg(SAMPLE, 'Sample', fakeModules), 'image/svg+xml');
    const host = document.body.appendChild(file.documentElement);
    // The bars of the code come from another encoder in the window.
    expect(boxes(host).slice(0, 7)).toEqual(boxes(view).slice(0, 7));
    expect(host.getBoundingClientRect().width).toBeCloseTo((200 * 96) / 25.4, 1);
    host.remove();
  });

  it('is drawn in the ink of the theme, codes in black on white in every one', async () => {
    document.documentElement.dataset.theme = 'dark';
    const svg = await shown(SAMPLE);
    await expect.poll(() => svg.querySelector('.drawing-code'), { timeout: 15_000 }).not.toBeNull();
    const colour = (selector: string, what: 'stroke' | 'fill'): string =>
      getComputedStyle(svg.querySelector(selector)!)[what];
    const ink = getComputedStyle(document.documentElement).getPropertyValue('--ink').trim();
    const probe = document.createElement('i');
    probe.style.color = ink;
    document.body.append(probe);
    expect(colour('path[data-line]', 'stroke')).toBe(getComputedStyle(probe).color);
    expect(colour('.drawing-code', 'fill')).toBe('rgb(0, 0, 0)');
    expect(colour('.drawing-code-ground', 'fill')).toBe('rgb(255, 255, 255)');
    probe.remove();
  });
});
