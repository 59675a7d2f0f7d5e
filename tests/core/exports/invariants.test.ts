import { describe, expect, test } from 'vitest';
import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Harness } from '@latchwork/core/derive/harness';
import { connectionTable } from '@latchwork/core/exports/connection-table';
import { crimpSheets } from '@latchwork/core/exports/crimp-sheets';
import { cutList } from '@latchwork/core/exports/cut-list';
import { withBaseline } from '@latchwork/core/exports/document-head';
import type { DocumentInput, Exporter } from '@latchwork/core/exports/exporter';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { labels } from '@latchwork/core/exports/labels';
import { partsList } from '@latchwork/core/exports/parts-list';
import { pinouts } from '@latchwork/core/exports/pinouts';
import { testTable } from '@latchwork/core/exports/test-table';
import { baselineOf } from '@latchwork/core/model/baseline';
import { countingIds } from '@latchwork/core/model/ids';
import type { Project } from '@latchwork/core/model/project';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { generateProject } from '../../generate/harness-generator';
import { demoFromFile } from '../demos/demo-files';

/** Documents of one project must agree with each other, whatever the project. */
const projects: readonly (readonly [string, () => Project])[] = [
  ...['bench-lamp', 'weather-station', 'workshop-faults'].map((n) => [n, () => demoFromFile(n)] as const),
  ...([[20, 1], [41, 2], [80, 3]] as const).map(
    ([wires, seed]) => [`random ${seed}, ${wires} wires`, () => generateProject({ wires, seed })] as const,
  ),
]; // prettier-ignore

const inputs = new Map<string, DocumentInput>();
function inputOf(name: string, make: () => Project): DocumentInput {
  let input = inputs.get(name);
  if (!input) {
    const harness = deriveHarness(make());
    inputs.set(
      name,
      (input = { harness, check: checkHarness(harness, []), date: '2026-03-01', options: { quantity: 7 } }),
    );
  }
  return input;
}
const rowsOf = (exporter: Exporter, input: DocumentInput) => exporter.table(input).rows;
const byObject = (exporter: Exporter, input: DocumentInput) => {
  const { rows, objects } = exporter.table(input);
  return new Map(rows.map((r, i) => [objects[i]?.[0]?.id, r]));
};
const designators = (input: DocumentInput): string[] =>
  input.harness.project.wires.map((w) => w.designator).sort();

describe('V1: wires', () => {
  test.each(projects)(
    '%s: as many in the connection table and in the cut list as in the model',
    (name, make) => {
      const input = inputOf(name, make);
      expect(
        rowsOf(connectionTable, input)
          .map((r) => String(r.wire))
          .sort(),
      ).toEqual(designators(input));
      const cut = rowsOf(cutList, input);
      expect(cut.flatMap((r) => String(r.wires).split(', ')).sort()).toEqual(designators(input));
      for (const r of cut) {
        expect(r.quantity).toBe(String(r.wires).split(', ').length);
        expect(r.orderQuantity).toBe(7 * Number(r.quantity));
      }
    },
  );

  test.each(projects)('%s: with the same length, colour and strips in both', (name, make) => {
    const input = inputOf(name, make);
    const drawn = byObject(connectionTable, input);
    const cut = cutList.table(input);
    // By object: a faulty project may call two wires the same.
    cut.rows.forEach((r, line) =>
      cut.objects[line]?.forEach(({ id: wire }, i) => {
        const row = drawn.get(wire);
        expect([wire, r.lengthMm, r.colour, r.wirePart]).toEqual([
          wire,
          row?.lengthMm,
          row?.colour,
          row?.wirePart,
        ]);
        const ends = [row?.fromStripMm, row?.toStripMm];
        const atA = String(r.endA).split(', ')[i];
        const from = row?.fromCavity === null ? (row.from ?? 'free end') : `${row?.from}:${row?.fromCavity}`;
        expect([wire, r.stripAMm, r.stripBMm]).toEqual([
          wire,
          ...(atA === from ? ends : [...ends].reverse()),
        ]);
      }),
    );
  });
});

describe('V2: contacts', () => {
  test.each(projects)(
    '%s: those of the crimp sheets and the spare ones make the number of the parts list',
    (name, make) => {
      const input = inputOf(name, make);
      const counted = new Map<string, number>();
      const add = (part: unknown, n: number): void =>
        void counted.set(String(part), (counted.get(String(part)) ?? 0) + n);
      for (const r of rowsOf(crimpSheets, input)) if (r.kind === 'contact') add(r.part, Number(r.quantity));
      for (const use of input.harness.connectors)
        if (use.resolved.connector.supply === 'harness')
          for (const c of use.cavities)
            if (c.spare && c.ends.every((e) => e.end.contact?.id !== c.entry?.contact))
              add(c.spare.partNumber, 1);
      const listed = rowsOf(partsList, input).filter(
        (r) => r.kind === 'contact' && r.partNumber !== null && r.suppliedWith === 'harness',
      );
      expect([...counted].sort()).toEqual(listed.map((r) => [r.partNumber, r.quantity]).sort());
    },
  );
});

describe('V3: cavities', () => {
  test.each(projects)('%s: every cavity of every housing once, in exactly one state', (name, make) => {
    const input = inputOf(name, make);
    const rows = rowsOf(pinouts, input);
    const STATES = ['wired', 'plugged', 'spare contact', 'empty by intent', 'blocked', 'undeclared'];
    for (const use of input.harness.connectors) {
      const { connector, part } = use.resolved;
      if (connector.supply !== 'harness' || !part) continue;
      const here = rows.filter((r) => r.connector === connector.designator);
      const cavities = here.map((r) => String(r.cavity));
      expect([connector.designator, new Set(cavities).size]).toEqual([connector.designator, cavities.length]);
      for (let n = 1; n <= part.ways; n++) expect(cavities).toContain(String(n));
      for (const r of here) {
        expect(STATES).toContain(r.state);
        expect([r.connector, r.cavity, r.state === 'wired']).toEqual([
          r.connector,
          r.cavity,
          r.wire !== null,
        ]);
        if (r.state === 'undeclared') expect(r.remarks).toContain('state not declared');
      }
    }
  });
});

/** Classes of points that rows join, each as a sorted text; points without a name are told apart by `key`. */
function classes(pairs: readonly (readonly [string, string])[]): string[] {
  const up = new Map<string, string>();
  const root = (a: string): string => {
    let at = a;
    while (up.get(at) !== undefined && up.get(at) !== at) at = up.get(at) as string;
    return at;
  };
  for (const [a, b] of pairs) {
    for (const p of [a, b]) if (!up.has(p)) up.set(p, p);
    up.set(root(a), root(b));
  }
  const groups = new Map<string, string[]>();
  for (const p of up.keys()) groups.set(root(p), [...(groups.get(root(p)) ?? []), p]);
  return [...groups.values()]
    .map((g) =>
      g
        .filter((p) => !p.startsWith('splice '))
        .sort()
        .join(' '),
    )
    .filter((text) => text !== '')
    .sort();
}

function pointsOfConnectionTable(input: DocumentInput): string[] {
  const splices = new Set(input.harness.project.splices.map((s) => s.designator));
  return classes(
    rowsOf(connectionTable, input).map((r): [string, string] => {
      const end = (place: unknown, cavity: unknown, side: string): string =>
        cavity !== null
          ? `${String(place)}:${String(cavity)}`
          : splices.has(String(place))
            ? `splice ${String(place)}`
            : ((place as string | null) ?? `free end ${side} of ${String(r.wire)}`);
      return [end(r.from, r.fromCavity, 'A'), end(r.to, r.toCavity, 'B')];
    }),
  );
}

describe('V4: nets', () => {
  test.each(projects)('%s: the test table joins the same points as the connection table', (name, make) => {
    const input = inputOf(name, make);
    const rows = rowsOf(testTable, input);
    const pairs = rows.flatMap((r): [string, string][] =>
      r.test === 'continuity' && r.expected === 'joined'
        ? [[String(r.from), String(r.to)]]
        : r.test === 'isolation'
          ? [[String(r.from), String(r.from)]]
          : [],
    );
    const tested = classes(pairs);
    expect(tested).toEqual(pointsOfConnectionTable(input));
    expect(tested.length).toBeGreaterThan(2);
  });
});

/** With labels of ends by a method, beside those that the project has. */
function labelled(make: () => Project, labelMethod: NonNullable<Project['labelMethod']>): DocumentInput {
  let history = startHistory(make());
  const calls: readonly Call[] = [
    { id: 'project.edit', args: { change: { labelMethod } } },
    { id: 'labels.make', args: { rewrite: true } },
  ];
  for (const call of calls) {
    const done = dispatch(history, call, { newId: countingIds(7_000_000), catalogue: [] });
    if (!done.ok) throw new Error(done.problem.reason);
    history = done.value;
  }
  const harness = deriveHarness(history.project);
  return { harness, check: checkHarness(harness, []), date: '2026-03-01' };
}

describe('V5: labels', () => {
  const methods = ['identification', 'local-end', 'remote-end', 'both-ends', 'signal'] as const;
  const cases = projects.flatMap(([name, make]) => [
    [name, 'as it is', () => inputOf(name, make)] as const,
    ...methods.map((m) => [name, m, () => labelled(make, m)] as const),
  ]);

  test.each(cases)(
    '%s, %s: every wire end, cable end and connector has a row, and every label one',
    (_name, _method, input) => {
      const { harness } = input();
      const { project } = harness;
      const table = labels.table(input());
      const rows = table.rows.map((r, i) => ({
        ...r,
        on: table.objects[i]?.at(-1)?.id ?? '',
        label: table.objects[i]?.[0],
      }));
      const ends = new Set(rows.map((r) => `${r.on} ${String((r as { end?: unknown }).end ?? '')}`));
      for (const w of project.wires) for (const end of [1, 2]) expect(ends).toContain(`${w.id} ${end}`);
      for (const c of project.cables) for (const end of [1, 2]) expect(ends).toContain(`${c.id} ${end}`);
      for (const c of project.connectors) expect(ends).toContain(`${c.id} `);
      const told = rows.flatMap((r) => (r.label?.type === 'label' ? [r.label.id] : []));
      expect([...told].sort()).toEqual(project.labels.map((l) => l.id).sort());
      for (const [i, r] of table.rows.entries()) {
        const has = table.objects[i]?.[0]?.type === 'label';
        expect([r.object, r.text !== null]).toEqual([r.object, has]);
        if (!has) expect(r.remarks).toContain('no label');
        if (has && r.method !== 'by hand') expect([r.object, r.text]).toEqual([r.object, r.byMethod]);
      }
    },
  );

  test.each(cases)('%s, %s: rows with a part make the number of the parts list', (_name, _method, input) => {
    const counted = new Map<string, number>();
    for (const r of rowsOf(labels, input()))
      if (r.part !== null) counted.set(String(r.part), (counted.get(String(r.part)) ?? 0) + 1);
    const listed = rowsOf(partsList, input()).filter((r) => r.kind === 'label' && r.partNumber !== null);
    expect([...counted].sort()).toEqual(listed.map((r) => [r.partNumber, r.quantity]).sort());
  });
});

describe('V6: baseline', () => {
  test.each(projects)('%s: every document carries the same hash', (name, make) => {
    const input = inputOf(name, make);
    const baseline = baselineOf(input.harness.project);
    expect(baseline).toMatch(/^[0-9a-f]{64}$/);
    for (const e of EXPORTERS) {
      const head = withBaseline(e.table(input), baseline).head;
      expect([
        e.id,
        head.filter(([label]) => label.startsWith('Baseline')).map(([, value]) => value),
      ]).toEqual([e.id, [baseline]]);
      if (e.paper) expect([e.id, e.paper(input).baseline]).toEqual([e.id, baseline]);
    }
  });

  test('a project that differs in one wire has another one', () => {
    const project = demoFromFile('bench-lamp');
    const [first, ...rest] = project.wires;
    if (!first) throw new Error('no wire');
    const changed = { ...project, wires: [{ ...first, note: 'changed' }, ...rest] };
    expect(baselineOf(changed)).not.toBe(baselineOf(project));
  });
});

describe('V8: lengths', () => {
  test.each(projects)(
    '%s: segments of the path, allowances, take-up and extra make the cut length, rounded up',
    (name, make) => {
      const input = inputOf(name, make);
      const { harness } = input;
      const runs = new Map(harness.project.segments.map((s) => [s.designator, s]));
      let asked = 0;
      for (const [id, r] of byObject(connectionTable, input)) {
        const wire = harness.wireById.get(id ?? '');
        if (r.lengthKind !== 'routed' || !wire) continue;
        const path = String(r.path ?? '')
          .split(' ')
          .filter((t) => t !== '');
        const routeMm = path.reduce((sum, s) => sum + lengthOf(harness, runs.get(s)), 0);
        const [a, b] = wire.length.allowancesMm;
        const exact = routeMm + a + b + wire.length.takeUpMm + wire.length.extraMm;
        expect([r.wire, Number(r.lengthMm) - exact >= -1e-6, Number(r.lengthMm) - exact < 1]).toEqual([
          r.wire,
          true,
          true,
        ]);
        asked++;
      }
      expect(asked).toBeGreaterThan(0);
    },
  );
});

function lengthOf(harness: Harness, segment: Project['segments'][number] | undefined): number {
  if (!segment) throw new Error('a path with a segment that does not exist');
  return harness.router.lengthMmOf(segment);
}
