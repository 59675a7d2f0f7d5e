import { describe, expect, it, test } from 'vitest';
import { buildOps, buildOrder } from '@latchwork/core/derive/build-order/build-order';
import { sortOps } from '@latchwork/core/derive/build-order/sort-ops';
import { loadingOrder } from '@latchwork/core/derive/build-order/loading-order';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Harness } from '@latchwork/core/derive/harness';
import { sidesOfSegment } from '@latchwork/core/derive/sides-of-segment';
import { countingIds } from '@latchwork/core/model/ids';
import { tiny } from '@latchwork/core/model/tiny';
import type { Project } from '@latchwork/core/model/project';
import { generateProject } from '../../../generate/harness-generator';
import { createRandom, between } from '../../../generate/harness/random';
import { workbenchParts } from '../../../generate/catalogue/catalogue';
import { demoFromFile } from '../../demos/demo-files';

/** A harness with sleeves, labels and seals put on it by chance. */
function decorated(seed: number): Project {
  const random = createRandom(seed);
  const project = generateProject({ wires: between(random, 8, 60), seed });
  const newId = countingIds(90_000_000);
  const parts = workbenchParts();
  const coverings = parts.filter((p) => p.kind === 'covering');
  const seal = parts.find((p) => p.kind === 'wire-seal');
  const label = parts.find((p) => p.kind === 'label');
  if (!seal || !label) throw new Error('the catalogue lacks a seal or a label');
  project.parts.push(...coverings, seal, label);
  for (const s of project.segments) {
    if (random() < 0.4) continue;
    const part = coverings[between(random, 0, coverings.length)];
    for (let layer = 1; part && layer <= between(random, 1, 3); layer++)
      project.coverings.push({
        id: newId(),
        part: part.id,
        from: { segment: s.id, atMm: 0 },
        to: { segment: s.id, atMm: 10 },
        layer,
      });
  }
  for (const w of project.wires)
    for (const end of [0, 1] as const) {
      if (random() < 0.3)
        project.labels.push({
          id: newId(),
          part: label.id,
          text: w.designator,
          on: { at: 'wire-end', wire: w.id, end },
        });
      const e = w.ends[end];
      if (random() < 0.3 && e.at === 'cavity') e.seal = seal.id;
    }
  return project;
}

const projects: readonly (readonly [string, () => Project])[] = [
  ...['bench-lamp', 'weather-station', 'workshop-faults'].map((n) => [n, () => demoFromFile(n)] as const),
  ...[1, 2, 3, 4, 5, 6].map((seed) => [`random ${seed}`, () => decorated(seed)] as const),
];

/** The order as it is told; or one in which needs alone decide and the last comes first wherever it may. */
const orderOf = (harness: Harness, needsAlone = false) => {
  const ops = buildOps(harness);
  const order = needsAlone
    ? sortOps(ops.map((op, i) => ({ ...op, stage: 'cut' as const, gather: String(ops.length - i) })))
    : buildOrder(harness);
  if (!order.ok) throw new Error(order.ring.join(', '));
  return new Map(order.ops.map((op, i) => [op.id, i]));
};

/** When an end is closed for what encloses several wires; Infinity where it stays open. */
function closedAt(harness: Harness, at: ReadonlyMap<string, number>, wire: string, end: 0 | 1): number {
  const e = harness.wireById.get(wire)?.wire.ends[end];
  if (e?.at === 'splice') return at.get(`splice ${e.splice}`) ?? Infinity;
  if (e?.at === 'free') return at.get(`terminal ${wire} ${end}`) ?? Infinity;
  if (e?.at !== 'cavity') return Infinity;
  return at.get(`insert ${e.connector} ${e.cavity} ${e.contact ?? `${wire} ${end}`}`) ?? Infinity;
}

describe('build order', () => {
  const both = projects.flatMap(([name, make]) => [
    [name, make, false] as const,
    [`${name}, by needs alone`, make, true] as const,
  ]);

  test.each(both)('%s: nothing is slid on after what blocks it', (_, make, needsAlone) => {
    const harness = deriveHarness(make());
    const at = orderOf(harness, needsAlone);
    const { project } = harness;
    let asked = 0;
    for (const c of project.coverings) {
      const slid = at.get(`slide ${c.id}`);
      const form = harness.parts.get(c.part);
      if (form?.kind === 'covering' && form.form === 'tape') {
        expect(slid).toBeUndefined();
        continue;
      }
      const segment = project.segments.find((s) => s.id === c.from.segment);
      const sides = segment && sidesOfSegment(segment, project.segments);
      if (!segment || !sides || slid === undefined) continue;
      const through = harness.wires.filter((w) => w.segments.some((s) => s.id === segment.id));
      // There is a side from which it comes: on it no end of a wire through it is held yet.
      const open = sides.map((nodes) =>
        through.every((w) =>
          ([0, 1] as const).every((end) => {
            const node = end === 0 ? w.from.node : w.to.node;
            return node === undefined || !nodes.has(node) || closedAt(harness, at, w.wire.id, end) > slid;
          }),
        ),
      );
      asked++;
      expect([c.id, open.includes(true)]).toEqual([c.id, true]);
    }
    for (const l of project.labels)
      if (l.on.at === 'wire-end') {
        const e = harness.wireById.get(l.on.wire)?.wire.ends[l.on.end];
        const contact = e?.at === 'cavity' ? e.contact : undefined;
        const closes = contact ? at.get(`crimp ${contact}`) : closedAt(harness, at, l.on.wire, l.on.end);
        expect(at.get(`label ${l.id}`)).toBeLessThan(closes ?? Infinity);
        asked++;
      }
    for (const w of project.wires)
      w.ends.forEach((e, end) => {
        if (e.at !== 'cavity') return;
        if (e.seal && e.contact)
          expect(at.get(`seal ${w.id} ${end}`)).toBeLessThan(at.get(`crimp ${e.contact}`) ?? -1);
        if (e.contact)
          expect(at.get(`crimp ${e.contact}`)).toBeLessThan(closedAt(harness, at, w.id, end as 0 | 1));
        asked++;
      });
    expect(asked).toBeGreaterThan(5);
  });

  test.each(projects)(
    '%s: groups are twisted before their ends are held, locks closed over loaded connectors',
    (_, make) => {
      const harness = deriveHarness(make());
      const at = orderOf(harness);
      for (const g of harness.project.groups)
        if (g.form.includes('twisted'))
          for (const w of g.wires)
            for (const end of [0, 1] as const)
              expect(at.get(`twist ${g.id}`)).toBeLessThan(closedAt(harness, at, w, end));
      for (const use of harness.connectors)
        for (const a of use.resolved.connector.accessories) {
          const lock = at.get(`lock ${use.resolved.connector.id} ${a.id}`);
          if (lock === undefined) continue;
          for (const c of use.cavities)
            for (const e of c.ends) expect(closedAt(harness, at, e.wire.wire.id, e.index)).toBeLessThan(lock);
        }
      expect([at.get('inspect'), at.get('test'), at.get('pack')]).toEqual([
        at.size - 3,
        at.size - 2,
        at.size - 1,
      ]);
    },
  );

  it('loads a body of three rows from the inside, then the lower row, then the upper one (worked by hand)', () => {
    const harness = deriveHarness(
      tiny((t) => {
        Object.assign(t.part('housing', 'H-SOCKET'), { ways: 6, rows: 3, numbering: 'row-wise' });
      }),
    );
    const use = harness.connectors.find((c) => c.resolved.connector.designator === 'X1');
    // Rows from the top: 1 2, 3 4, 5 6.
    expect(use && loadingOrder(use)).toEqual(['3', '4', '5', '6', '1', '2']);
  });

  it('puts the inner layer over a bundle before the outer one', () => {
    const project = decorated(3);
    const harness = deriveHarness(project);
    const at = orderOf(harness);
    const pairs = project.coverings.flatMap((a) =>
      project.coverings
        .filter((b) => b.from.segment === a.from.segment && b.layer > a.layer)
        .map((b) => [a, b] as const),
    );
    expect(pairs.length).toBeGreaterThan(0);
    for (const [a, b] of pairs) {
      expect(at.get(`place ${a.id}`)).toBeLessThan(at.get(`place ${b.id}`) ?? -1);
      const [slidA, slidB] = [at.get(`slide ${a.id}`), at.get(`slide ${b.id}`)];
      if (slidA !== undefined && slidB !== undefined) expect(slidA).toBeLessThan(slidB);
    }
  });
});
