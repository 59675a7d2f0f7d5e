import { describe, expect, it, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-react';
import { bandPath, CrossSection, type Section } from '../../../renderer/ui/cross-section';
import { unitText } from '../../../renderer/ui/unit-text';
import { WIRE_COLOURS } from '../../../renderer/ui/wire-colours';

const section: Section = {
  wires: [
    { id: 'w1', name: 'W1 · RD/BU', x: -1, y: 0, r: 1, colour: { base: 'RD', stripes: ['BU'] } },
    { id: 'w2', name: 'W2', x: 1, y: 0, r: 1, colour: null },
  ],
  hulls: [],
  rings: [{ id: 'c1', name: 'sleeve', innerR: 2, outerR: 2.5 }],
  laidR: 2,
};

describe('a cross-section', () => {
  it('draws wires in their colours with stripes, and coverings as rings', async () => {
    const screen = await render(<CrossSection section={section} label="Cut" />);
    const svg = screen.getByRole('img', { name: 'Cut' }).element();
    const [first, second] = svg.querySelectorAll<SVGGElement>('.section-wire');
    expect(first!.querySelector('title')?.textContent).toBe('W1 · RD/BU');
    const fills = [...first!.querySelectorAll<SVGElement>('circle, path')].map((e) => e.style.fill);
    const rgb = (hex: string): string => `rgb(${[1, 3, 5].map((i) => parseInt(hex.slice(i, i + 2), 16)).join(', ')})`; // prettier-ignore
    expect(fills.slice(0, 2)).toEqual([rgb(WIRE_COLOURS.RD), rgb(WIRE_COLOURS.BU)]);
    expect(second!.querySelector('.section-insulation')?.getAttribute('data-colour')).toBe('not known');
    expect(svg.querySelectorAll('.section-ring')).toHaveLength(1);
    expect(svg.textContent).toContain('⌀ 5 mm');
  });

  it('tells what the pointer is at, and which wire was pressed', async () => {
    const onHover = vi.fn();
    const onPick = vi.fn();
    const screen = await render(
      <CrossSection section={section} label="Cut" onHover={onHover} onPick={onPick} />,
    );
    const wire = screen.container.querySelector<SVGElement>('.section-wire path')!;
    await userEvent.hover(wire);
    expect(onHover).toHaveBeenLastCalledWith('W1 · RD/BU');
    await userEvent.click(wire);
    expect(onPick).toHaveBeenCalledWith('w1');
  });

  it('gives the diameter in inches where these are shown', async () => {
    const screen = await render(<CrossSection section={section} label="Cut" unit="in" />);
    expect(screen.container.textContent).toContain('⌀ 0.197 in');
  });
});

it('keeps a stripe inside the wire: its corners lie on the circle', () => {
  const path = bandPath(10, 20, 2, 0, 1);
  // The ends of the two chords, apart from the radii and flags of the arcs.
  const corners = path.replace(/A\S+ \S+ 0 0 0 /g, ' ').match(/-?[\d.]+ -?[\d.]+/g)!;
  expect(corners).toHaveLength(5);
  for (const corner of corners) {
    const [x, y] = corner.split(' ').map(Number) as [number, number];
    expect(Math.hypot(x - 10, y - 20)).toBeCloseTo(2, 9);
  }
});

it.each([
  ['mm2', 'mm²'],
  ['ohm/km', 'Ω/km'],
  ['A2s', 'A²s'],
  ['N/mm2', 'N/mm²'],
  ['g/cm3', 'g/cm³'],
  ['degC', '°C'],
  ['mm', 'mm'],
])('the unit %s is written %s', (plain, signed) => {
  expect(unitText(plain)).toBe(signed);
});
