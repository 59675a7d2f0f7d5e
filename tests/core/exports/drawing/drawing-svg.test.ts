import { XmlDocument, type XmlElement } from 'libxml2-wasm';
import { describe, expect, it } from 'vitest';
import { drawingSvg } from '@latchwork/core/exports/drawing/drawing-svg';
import { fakeModules, SAMPLE } from './sample-drawing';

const NS = { s: 'http://www.w3.org/2000/svg' };

/** What an XML reader sees. */
function read(text: string) {
  const document = XmlDocument.fromString(text);
  const all = (xpath: string) =>
    document.find(xpath, NS).map((e) => ({
      text: e.content,
      at: (name: string) => (e as XmlElement).attr(name)?.value,
    }));
  return { all, root: all('/s:svg')[0]! };
}

describe('a drawing as SVG', () => {
  const text = drawingSvg(SAMPLE, 'Board "1" & <more>', fakeModules);
  const svg = read(text);

  it('has its true size in millimetres, and a millimetre as its unit', () => {
    expect([svg.root.at('width'), svg.root.at('height'), svg.root.at('viewBox')]).toEqual([
      '200mm',
      '100mm',
      '0 0 200 100',
    ]);
  });

  it('keeps every text as it was entered, layers too, and holds no script', () => {
    expect(svg.all('//s:title')[0]!.text).toBe('Board "1" & <more>');
    expect(svg.all('//s:text').map((t) => t.text)).toEqual(['a < b & "c" 100 %% µ', 'turned']);
    expect(svg.all('//s:g').map((g) => g.at('data-layer'))).toEqual(['wires', undefined, 'names & <notes>', undefined]); // prettier-ignore
    expect(svg.all('//s:script | //@onload | //@href')).toEqual([]);
  });

  it('tells lines apart by width and dashes', () => {
    const [solid, dashed, filled] = svg.all('//s:path');
    expect([solid!.at('d'), solid!.at('stroke-width')]).toEqual(['M10 20L110 20', '0.5']);
    expect(dashed!.at('stroke-dasharray')).toBe('2.5 1.25');
    expect([filled!.at('fill'), filled!.at('stroke')]).toEqual(['#000000', undefined]);
  });

  it('turns and aligns text, its capitals as high as asked', () => {
    const [left, turned] = svg.all('//s:text');
    // The capitals of the font are 0.668 of its size (read from the font file).
    expect(Number(left!.at('font-size')) * 0.668).toBeCloseTo(3, 3);
    expect([turned!.at('transform'), turned!.at('text-anchor')]).toEqual(['rotate(-90 180 80)', 'end']);
  });

  it('draws codes as bars with their quiet zones inside the box', () => {
    // 10 + 4 + 10 modules on 40 mm: bars of 2 and 1 modules.
    const d = svg.all('//s:path').at(-1)!.at('d');
    expect(d).toBe('M136.6667 85h3.3333v10h-3.3333ZM141.6667 85h1.6667v10h-1.6667Z');
  });

  it('says where a text cannot be coded', () => {
    const item = { kind: 'code', symbology: 'qr', text: '?', at: { x: 0, y: 0 }, widthMm: 20, heightMm: 20 } as const; // prettier-ignore
    const { all } = read(drawingSvg({ widthMm: 20, heightMm: 20, items: [item] }, 'x', fakeModules));
    expect(all('//s:text').map((t) => t.text)).toEqual(['no code']);
  });

  it('writes what XML cannot carry by its number', () => {
    const item = { kind: 'text', text: 'bell \u0007', at: { x: 0, y: 9 }, heightMm: 3 } as const;
    const { all } = read(drawingSvg({ widthMm: 20, heightMm: 20, items: [item] }, 'x', fakeModules));
    expect(all('//s:text')[0]!.text).toBe('bell [U+0007]');
  });

  it('gives the same text for the same drawing', () => {
    expect(drawingSvg(structuredClone(SAMPLE), 'Board "1" & <more>', fakeModules)).toBe(text);
  });
});
