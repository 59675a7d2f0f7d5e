import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import fc from 'fast-check';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import { beforeAll, describe, expect, it } from 'vitest';
import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { codeRectangles } from '@latchwork/core/exports/drawing/code-modules';
import type { Drawing, DrawingItem } from '@latchwork/core/exports/drawing/drawing';
import type { DocumentOptions } from '@latchwork/core/exports/exporter';
import { labels } from '@latchwork/core/exports/labels';
import { drawLabel } from '@latchwork/core/exports/labels/draw-label';
import { codeWidthMm } from '@latchwork/core/exports/labels/label-code';
import { countingIds } from '@latchwork/core/model/ids';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { modulesOf } from '../../../electron/services/modules-of';
import { demoFromFile } from '../../core/demos/demo-files';

/**
 * The codes of labels, read back by a decoder that shares nothing with the encoder: ZXing-C++ (zxing-wasm, MIT) against
 * bwip-js. It sees the page at 300 dots per inch, as a printer draws it.
 */
type Code = Extract<DrawingItem, { kind: 'code' }>;

const DOTS_PER_MM = 300 / 25.4;

beforeAll(async () => {
  const file = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');
  const { buffer } = new Uint8Array(readFileSync(file));
  await prepareZXingModule({ overrides: { wasmBinary: buffer }, fireImmediately: true });
});

/** A drawing of codes in dots: white, with the dark fields of the codes in black. */
function dots({ widthMm, heightMm }: Pick<Drawing, 'widthMm' | 'heightMm'>, codes: readonly Code[]) {
  const width = Math.ceil(widthMm * DOTS_PER_MM);
  const height = Math.ceil(heightMm * DOTS_PER_MM);
  const data = new Uint8ClampedArray(width * height * 4).fill(255);
  for (const code of codes) {
    const modules = modulesOf(code.symbology, code.text);
    if (!modules) throw new Error(`no code for ${code.text}`);
    for (const r of codeRectangles(code, modules)) {
      const [x0, x1, y0, y1] = [r.x, r.x + r.width, r.y, r.y + r.height].map((v) => Math.round(v * DOTS_PER_MM)) as [number, number, number, number]; // prettier-ignore
      for (let y = y0; y < y1; y++)
        for (let x = x0; x < x1; x++) data.fill(0, (y * width + x) * 4, (y * width + x) * 4 + 3);
    }
  }
  return { data, width, height, colorSpace: 'srgb' as const };
}

async function read(size: Pick<Drawing, 'widthMm' | 'heightMm'>, codes: readonly Code[]): Promise<string[]> {
  const found = await readBarcodes(dots(size, codes) as ImageData, {
    formats: ['Code128', 'QRCode'],
    tryHarder: true,
    maxNumberOfSymbols: 255,
  });
  return found.filter((f) => f.isValid).map((f) => f.text);
}

const isCode = (i: DrawingItem): i is Code => i.kind === 'code';

/** A demo with labels by a method, and what its table and its sheets say. */
function printed(options: DocumentOptions) {
  let history = startHistory(demoFromFile('weather-station'));
  const context = { newId: countingIds(5_000_000), catalogue: [] };
  const calls: readonly Call[] = [
    { id: 'project.edit', args: { change: { labelMethod: 'remote-end' } } },
    { id: 'labels.make', args: { rewrite: true } },
  ];
  for (const call of calls) {
    const done = dispatch(history, call, context);
    if (!done.ok) throw new Error(done.problem.reason);
    history = done.value;
  }
  const harness = deriveHarness(history.project);
  const input = { harness, check: checkHarness(harness, []), date: '2026-03-01', options };
  const paper = labels.paper?.(input);
  const sheets = (paper?.blocks ?? []).flatMap((b) =>
    b.kind === 'sheet' ? b.layers.map((l) => l.drawing) : [],
  );
  return { table: labels.table(input), sheets };
}

describe('codes of all labels of the weather station', () => {
  it.each([
    ['QR on labels of the size of each part', { labelCode: 'qr', labelSheet: 'a4' }],
    ['QR on Letter', { labelCode: 'qr', labelSheet: 'letter', labelStart: 5 }],
    ['Code 128 on large labels', { labelCode: 'code-128', labelSheet: 'a4-60x30' }],
  ] as const)('%s are read back', async (_name, options) => {
    const { table, sheets } = printed(options);
    const wanted = table.rows
      .filter((r) => r.codeKind !== null && r.codeKind !== 'none')
      .map((r) => r.codeText);
    expect(wanted.length).toBeGreaterThan(90);
    const seen: string[] = [];
    for (const sheet of sheets)
      for (const code of sheet.items.filter(isCode)) {
        // One label after the other, as a hand reader meets them.
        const at = { x: 3, y: 3 };
        seen.push(
          ...(await read({ widthMm: code.widthMm + 6, heightMm: code.heightMm + 6 }, [{ ...code, at }])),
        );
      }
    expect(seen.sort()).toEqual(wanted.map(String).sort());
  });

  it('are read from the whole sheet too', async () => {
    const { table, sheets } = printed({ labelCode: 'code-128', labelSheet: 'a4-60x30' });
    const seen: string[] = [];
    for (const sheet of sheets) seen.push(...(await read(sheet, sheet.items.filter(isCode))));
    expect(seen.sort()).toEqual(
      table.rows
        .filter((r) => r.codeKind === 'Code 128')
        .map((r) => String(r.codeText))
        .sort(),
    );
  });
});

/** Signs that people write on harnesses: ASCII, Ω, umlauts, µ, degree, CJK. */
const anyText = fc
  .array(fc.constantFrom(...'ABXWZaz019 -_/:+.,#%&', 'Ω', 'ä', 'Ö', 'ß', 'é', 'µ', '°', '線'), {
    minLength: 1,
    maxLength: 40,
  })
  .map((c) => c.join(''));

describe('codes of random texts', () => {
  it('in QR are read back, and need no more fields than the label reckoned with', async () => {
    await fc.assert(
      fc.asyncProperty(anyText, async (codeText) => {
        const { items, code } = drawLabel(
          { designator: 'W1', text: 'W1', codeText, aroundMm: undefined },
          { widthMm: 60, heightMm: 30 },
          'qr',
        );
        expect(code).toBe('qr');
        const drawn = items.filter(isCode);
        expect(await read({ widthMm: 60, heightMm: 30 }, drawn)).toEqual([codeText]);
        const columns = modulesOf('qr', codeText)?.columns ?? Infinity;
        // The reckoned side is the smallest room that is not refused.
        const least = columns * 0.25;
        const room = (mm: number) => codeWidthMm('qr', codeText, { widthMm: mm, heightMm: mm });
        expect(room(least - 0.01).ok).toBe(false);
      }),
      { numRuns: 60, seed: 7 },
    );
  });

  it('in Code 128 are read back, or refused with the sign that it cannot hold', async () => {
    await fc.assert(
      fc.asyncProperty(anyText, async (codeText) => {
        const words = { designator: 'W1', text: 'W1', codeText, aroundMm: undefined };
        const { items, code, remarks } = drawLabel(words, { widthMm: 200, heightMm: 30 }, 'code-128');
        const bad = [...codeText].findIndex((c) => !/^[ -~]$/.test(c));
        expect(code).toBe(bad < 0 ? 'code-128' : 'none');
        if (bad >= 0) {
          expect(items.filter(isCode)).toEqual([]);
          expect(remarks.join()).toContain(`cannot hold "${[...codeText][bad]}", sign ${bad + 1}`);
        } else {
          expect(await read({ widthMm: 200, heightMm: 30 }, items.filter(isCode))).toEqual([codeText]);
          expect(modulesOf('code-128', codeText)?.columns).toBeLessThanOrEqual(11 * codeText.length + 55);
        }
      }),
      { numRuns: 60, seed: 7 },
    );
  });

  it('that are too long for the label are left out and told of', () => {
    const codeText = 'EX-0002/W12/1';
    const drawn = drawLabel(
      { designator: 'W12', text: 'X1:3', codeText, aroundMm: 1.5 },
      { widthMm: 25, heightMm: 12 },
      'code-128',
    );
    expect(drawn.code).toBe('none');
    expect(drawn.remarks.join()).toMatch(/no Code 128: on this size a bar would be 0\.1\d mm/);
  });
});
