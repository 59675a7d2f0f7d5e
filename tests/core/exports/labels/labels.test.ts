import { expect, it } from 'vitest';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { DocumentOptions } from '@latchwork/core/exports/exporter';
import { labels } from '@latchwork/core/exports/labels';
import type { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';

const inputOf = (project: Project, options: DocumentOptions = {}) => {
  const harness = deriveHarness(project);
  return { harness, check: checkHarness(harness, []), date: '2026-03-01', options };
};
const table = (edit: (t: TinyDraft) => void, options?: DocumentOptions) =>
  labels.table(inputOf(tiny(edit), options));
const rowOf = (t: ReturnType<typeof table>, object: string, end: string | null = null) =>
  t.rows.find((r) => r.object === object && r.end === end);
const onWire = (t: TinyDraft, text: string, more: object = {}): void =>
  void t.project.labels.push({
    id: t.newId(),
    text,
    on: { at: 'wire-end', wire: t.wire('W1').id, end: 0 },
    ...more,
  });
const headOf = (t: ReturnType<typeof table>, label: string) => t.head.find(([l]) => l === label)?.[1];

it('names an end without a label, and a connector that comes with the equipment', () => {
  const t = table(() => {});
  expect(rowOf(t, 'W1', '1')).toMatchObject({ text: null, remarks: 'no label', part: null, codeKind: null });
  expect(headOf(t, 'Ends and connectors without a label')).toBe('6');
  expect(rowOf(t, 'X3')?.remarks).toBe('no label; comes with the equipment');
});

it('does not take what is not stated for a fit', () => {
  const t = table((p) => onWire(p, 'W1'));
  expect(rowOf(t, 'W1', '1')).toMatchObject({ fit: null, distanceMm: null, part: null });
  expect(rowOf(t, 'W1', '1')?.remarks).toContain('distance not stated');
  expect(rowOf(t, 'W1', '1')?.remarks).toContain('label part not chosen');
});

it('tells a label that does not go round', () => {
  const t = table((p) => {
    const id = p.newId();
    p.project.parts.push({ kind: 'label', id, maker: 'Example Works (invented)', partNumber: 'L', description: 'Invented label', widthMm: 25, heightMm: 12, bundleMaxMm: 0.5 });
    onWire(p, 'W1', { part: id, datumDistanceMm: 20 });
  }); // prettier-ignore
  expect(rowOf(t, 'W1', '1')).toMatchObject({ fit: 'too small', part: 'L', widthMm: 25, distanceMm: 20 });
});

it('tells a made label that the project has left behind', () => {
  const t = table((p) => {
    p.project.labelMethod = 'identification';
    onWire(p, 'W1', { made: true });
    p.wire('W1').designator = 'W99';
  });
  expect(rowOf(t, 'W99', '1')?.remarks).toContain('no longer what the method says ("W99")');
});

it('begins at the first free label, and at 1 where the sheet has no such place', () => {
  const mark = (p: TinyDraft): void => {
    onWire(p, 'A');
    onWire(p, 'B');
    onWire(p, 'C');
  };
  const places = (options: DocumentOptions) =>
    table(mark, options).rows.flatMap((r) => (r.sheet === null ? [] : [`${r.sheet}:${r.position}`]));
  expect(places({})).toEqual(['1:1', '1:2', '1:3']);
  expect(places({ labelSheet: 'a4-60x30', labelStart: 23 })).toEqual(['1:23', '1:24', '2:1']);
  expect(places({ labelSheet: 'a4-60x30', labelStart: 25 })).toEqual(['1:1', '1:2', '1:3']);
  expect(
    headOf(table(mark, { labelSheet: 'a4-60x30', labelStart: 25 }), 'First label at position'),
  ).toContain('25 was asked for');
});

it('prints sheets without a frame, each with the baseline, the caution and a bar of 100 mm', () => {
  const paper = labels.paper?.(inputOf(tiny((p) => onWire(p, 'W1'))));
  const sheets = (paper?.blocks ?? []).flatMap((b) => (b.kind === 'sheet' ? [b] : []));
  expect(sheets).toHaveLength(1);
  expect(sheets[0]?.bare).toBe(true);
  const items = sheets[0]?.layers[0]?.drawing.items ?? [];
  const said = items.flatMap((i) => (i.kind === 'text' ? [i.text] : []));
  expect(said).toContain(paper?.baseline);
  expect(said.join()).toContain('An aid, not an authority');
  const bar = items.find((i) => i.kind === 'polyline' && i.line === 'thick');
  expect(bar?.kind === 'polyline' && Math.abs((bar.points[1]?.x ?? 0) - (bar.points[0]?.x ?? 0))).toBeCloseTo(
    100,
    9,
  );
});
