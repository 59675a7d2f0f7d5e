import { describe, expect, it } from 'vitest';
import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { changeNote } from '@latchwork/core/exports/compare/change-note';
import {
  areaSummary,
  compareProjects,
  isSame,
  notComparable,
} from '@latchwork/core/exports/compare/compare-projects';
import { compareTable } from '@latchwork/core/exports/compare/compare-table';
import { tableChange } from '@latchwork/core/exports/compare/document-changes';
import { firstArticleChecks } from '@latchwork/core/exports/compare/first-article';
import type { DocumentInput } from '@latchwork/core/exports/exporter';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { Paper } from '@latchwork/core/exports/paper/paper';
import { Table } from '@latchwork/core/exports/table';
import { baselineOf } from '@latchwork/core/model/baseline';
import { countingIds } from '@latchwork/core/model/ids';
import type { Project } from '@latchwork/core/model/project';
import { tiny } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import { weatherStation } from '../../generate/demos/weather-station/weather-station';

function inputOf(project: Project): DocumentInput {
  const check = checkHarness(deriveHarness(project), RULES);
  return { harness: check.harness, check, date: '2026-03-01' };
}

function edited(project: Project, ...calls: Call[]): Project {
  const context = { newId: countingIds(90_000), catalogue: [] };
  return calls.reduce((history, call) => {
    const done = dispatch(history, call, context);
    if (!done.ok) throw new Error(`${call.id}: ${done.problem.reason}`);
    return done.value;
  }, startHistory(project)).project;
}

const station = weatherStation();
const named = (designator: string) => station.wires.find((w) => w.designator === designator)!;

const compared = (before: Project, after: Project, exporters = EXPORTERS) =>
  compareProjects(inputOf(before), inputOf(after), exporters);

const told = (c: ReturnType<typeof compared>, ...areas: string[]): string[] =>
  c.rows
    .filter((r) => areas.includes(r.area))
    .map(
      (r) =>
        `${r.what} ${r.subject}${r.field ? `, ${r.field}` : ''}${r.before || r.after ? `: ${r.before} → ${r.after}` : ''}`,
    );

describe('two states of the weather station', { timeout: 60_000 }, () => {
  it('that are the same have no change, in no document', () => {
    const c = compared(station, weatherStation());
    expect([c.rows, c.documents, isSame(station, weatherStation())]).toEqual([[], [], true]);
  });

  it('tell of a colour that changed, the parts that changes, and nothing else', () => {
    const wire = named('W1');
    const colour = { base: 'VT' } as const;
    expect(wire.colour).not.toEqual(colour);
    const after: Project = {
      ...station,
      wires: station.wires.map((w) => (w === wire ? { ...w, colour } : w)),
    };
    const c = compared(station, after);
    expect(told(c, 'Wires')).toEqual([expect.stringMatching(/^changed wire W1, colour, base: .* → VT$/)]);
    expect([...new Set(c.rows.map((r) => r.area))]).not.toContain('Nets');
    expect([...new Set(c.rows.map((r) => r.area))]).not.toContain('Cut lengths');
    // One line of wire less in the old colour, one more in the new.
    expect(told(c, 'Parts list')).toHaveLength(2);
    expect(c.documents.map((d) => d.exporter.id)).toEqual(
      expect.arrayContaining(['connection-table', 'cut-list', 'pinouts', 'parts-list']),
    );
    expect(c.documents.map((d) => d.exporter.id)).not.toContain('cut-outs');
    const connection = c.documents.find((d) => d.exporter.id === 'connection-table');
    expect(connection).toMatchObject({ added: 0, removed: 0, changed: 1 });
    expect(firstArticleChecks(c)).toContainEqual(
      expect.objectContaining({ subject: 'wire W1', check: expect.stringContaining('colour at both ends') }),
    );
  });

  it('tell of a wire that went and the net that it parted', () => {
    const wire = named('W1');
    const after = edited(station, { id: 'objects.remove', args: { ids: [wire.id] } });
    const c = compared(station, after);
    expect(told(c, 'Wires')).toContain('removed wire W1');
    expect(told(c, 'Nets').length).toBeGreaterThan(0);
    const gone = c.rows.find((r) => r.subject === 'wire W1');
    expect([gone?.objects, gone?.gone]).toEqual([[], [{ type: 'wire', id: wire.id }]]);
    // The other way round it came: added and removed change places.
    const back = compared(after, station);
    expect(told(back, 'Wires')).toContain('added wire W1');
    const counts = (x: typeof c, what: string) =>
      x.rows.filter((r) => r.what === what && r.area !== 'Documents').length;
    expect([counts(c, 'added'), counts(c, 'removed')]).toEqual([
      counts(back, 'removed'),
      counts(back, 'added'),
    ]);
    // A wire more: its two crimps are measured again.
    expect(
      firstArticleChecks(back)
        .filter((x) => x.subject === 'wire W1')
        .map((x) => x.check)
        .join('; '),
    ).toMatch(/crimp height and pull-out force at X22:1 \(AL3-P2024-01\); joint of splice \w+/);
  });

  it('tell of a connector that went with its wires', () => {
    const connector = station.connectors.find((x) => x.designator === 'X1')!;
    const after = edited(station, { id: 'objects.remove', args: { ids: [connector.id] } });
    const c = compared(station, after);
    expect(told(c, 'Connectors')).toContain('removed connector X1');
    const wiresGone = station.wires
      .filter((w) => !after.wires.some((x) => x.id === w.id))
      .map((w) => `removed wire ${w.designator}`);
    for (const text of wiresGone) expect(told(c, 'Wires')).toContain(text);
    // What the comparison says is gone is what is gone.
    expect(c.rows.filter((r) => r.area === 'Connectors' && r.what === 'removed')).toHaveLength(
      station.connectors.length - after.connectors.length,
    );
  });
});

describe('the nets of a small harness', () => {
  it('go by who is connected to whom, not by names', () => {
    const renamed = tiny((t) => void (t.project.signals[0]!.name = 'OTHER'));
    expect(told(compared(tiny(), renamed, []), 'Nets')).toEqual([]);
    const moved = tiny((t) => void t.project.wires.splice(0, 1));
    expect(told(compared(tiny(), moved, []), 'Nets')).toEqual([
      // X1 mates with X3 and X2 with X4: without the wire two pairs of halves are left.
      'changed net SUP, points: X1:1, X2:1, X3:1, X4:1 → X1:1, X3:1',
      'changed net SUP, points: X1:1, X2:1, X3:1, X4:1 → X2:1, X4:1',
    ]);
  });
});

describe('reports', () => {
  const before = tiny((t) => void (t.project.titleBlock.identificationNumber = 'H-1'));
  const after = edited(before, {
    id: 'project.add-revision',
    args: {
      revision: { revision: 'B', date: '2026-03-01', author: 'A. Example', description: 'Longer lead' },
    },
  });
  const longer: Project = {
    ...after,
    wires: after.wires.map((w, i) => (i === 0 ? { ...w, lengthMm: 777 } : w)),
  };
  const c = compared(before, longer);

  it('the table names both states by their baselines and fits its schema', () => {
    const table = Table.parse(compareTable(c));
    const head = Object.fromEntries(table.head);
    expect(head['From']).toContain(baselineOf(before));
    expect(head['To']).toContain(baselineOf(longer));
    expect(table.rows).toContainEqual(
      expect.objectContaining({ area: 'Cut lengths', subject: 'wire W1', after: '777 mm' }),
    );
    expect(table.objects).toHaveLength(table.rows.length);
    expect(Object.fromEntries(areaSummary(c))).toMatchObject({ 'Cut lengths': '1 changed' });
  });

  it('the change note gives the reason, the documents, what to inspect again, and boxes to fill in', () => {
    const paper = Paper.parse(changeNote(c));
    const text = JSON.stringify(paper.blocks);
    for (const heading of [
      'Reason',
      'Documents touched',
      'Effectivity',
      'Stock and work in progress',
      'First article to be repeated for',
      'Approvals',
    ])
      expect(paper.blocks).toContainEqual({ kind: 'heading', text: heading });
    expect(text).toContain('Longer lead');
    expect(text).toContain('Cut list');
    expect(text).toMatch(/"text":"wire W1".*cut length/);
    expect(paper.baseline).toBe(baselineOf(longer));
    expect(paper.cautions.length).toBeGreaterThan(4);
    expect(paper.blocks.filter((b) => b.kind === 'drawing' && b.form).length).toBeGreaterThanOrEqual(4);
  });
});

describe('different projects', () => {
  it('are not compared as states of one', () => {
    expect(notComparable(tiny(), station)).toMatch(/are different projects/);
    expect(notComparable(station, weatherStation())).toBeNull();
  });
});

describe('rows of a table', () => {
  const table = (rows: Record<string, string | number>[], ids?: string[]): Table => ({
    id: 't',
    title: 'T',
    head: [['Revision', 'A']],
    columns: [
      { key: 'k', title: 'K' },
      { key: 'v', title: 'V' },
    ],
    rows,
    objects: rows.map((_, i) => (ids ? [{ type: 'wire', id: ids[i]! }] : [])),
  });
  it.each([
    [
      'moved',
      [
        { k: 'a', v: 1 },
        { k: 'b', v: 2 },
      ],
      [
        { k: 'b', v: 2 },
        { k: 'a', v: 1 },
      ],
      [0, 0, 0],
    ],
    ['changed', [{ k: 'a', v: 1 }], [{ k: 'a', v: 2 }], [0, 0, 1]],
    [
      'added',
      [{ k: 'a', v: 1 }],
      [
        { k: 'a', v: 1 },
        { k: 'b', v: 1 },
      ],
      [1, 0, 0],
    ],
    [
      'twice the same, once gone',
      [
        { k: 'a', v: 1 },
        { k: 'a', v: 1 },
      ],
      [{ k: 'a', v: 1 }],
      [0, 1, 0],
    ],
  ])('%s', (_name, before, after, [added, removed, changed]) => {
    expect(tableChange(table(before), table(after))).toEqual({ added, removed, changed, head: [] });
  });
  it('that only count on are the same rows', () => {
    const numbered = (names: string[]) => table(names.map((v, i) => ({ k: i + 1, v })));
    expect(tableChange(numbered(['b', 'c']), numbered(['a', 'b', 'c']))).toMatchObject({
      added: 1,
      changed: 0,
    });
  });
  it('go by their objects where they name any', () => {
    expect(
      tableChange(table([{ k: 'old', v: 1 }], ['w1']), table([{ k: 'new', v: 1 }], ['w1'])),
    ).toMatchObject({ changed: 1 });
    expect(
      tableChange(table([{ k: 'old', v: 1 }], ['w1']), table([{ k: 'new', v: 1 }], ['w2'])),
    ).toMatchObject({ added: 1, removed: 1 });
  });
});
