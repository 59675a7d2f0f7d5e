import { describe, expect, test } from 'vitest';
import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import { countingIds } from '@latchwork/core/model/ids';
import type { Part } from '@latchwork/core/model/parts/part';
import type { Project } from '@latchwork/core/model/project';
import { tiny } from '@latchwork/core/model/tiny';

function after(project: Project, call: Call, catalogue: readonly Part[] = []): Project {
  const result = dispatch(startHistory(project), call, { newId: countingIds(50_000), catalogue });
  if (!result.ok) throw new Error(result.problem.reason);
  return result.value.project;
}

function refusal(project: Project, call: Call): string {
  const result = dispatch(startHistory(project), call, { newId: countingIds(50_000), catalogue: [] });
  return result.ok ? 'not refused' : result.problem.reason;
}

const connector = (p: Project, d: string): string => p.connectors.find((c) => c.designator === d)!.id;
const at = (p: Project, d: string, cavity: string) => ({
  at: 'cavity' as const,
  connector: connector(p, d),
  cavity,
});
const newest = (p: Project) => p.wires.at(-1)!;
const contactNumber = (p: Project, end: 0 | 1, wire = newest(p)): string | undefined => {
  const e = wire.ends[end];
  const contact = e.at === 'cavity' ? p.contacts.find((c) => c.id === e.contact) : undefined;
  return p.parts.find((x) => x.id === contact?.part)?.partNumber;
};

describe('a new wire', () => {
  const p = tiny();
  const made = after(p, { id: 'wire.add', args: { from: at(p, 'X1', '3'), to: at(p, 'X2', '3') } });

  test('gets the contact that fits at each end, with its strip length', () => {
    expect([contactNumber(made, 0), contactNumber(made, 1)]).toEqual(['C-SOCKET', 'C-PIN']);
    expect(newest(made).ends.map((e) => e.stripLengthMm)).toEqual([2.5, 2.5]);
  });

  test('takes the wire used last, a colour that neither connector has, and the next designator', () => {
    expect(newest(made).part).toBe(p.wires[0]!.part);
    expect(newest(made).colour).toEqual({ base: 'BU' });
    expect(newest(made).designator).toBe('W3');
  });

  test('takes the declaration of its cavities back: they are wired now', () => {
    expect(made.connectors.find((c) => c.designator === 'X1')!.cavities).toEqual([]);
  });

  test('takes the signal that the mated header declares', () => {
    const q = tiny((t) => {
      t.connector('X3').cavities.push({ cavity: '3', signal: t.project.signals[0]!.id });
    });
    const wired = after(q, { id: 'wire.add', args: { from: at(q, 'X1', '3'), to: at(q, 'X2', '3') } });
    expect(newest(wired).signal).toBe(q.signals[0]!.id);
  });

  test('prefers the finish of the header that its contact will meet', () => {
    const q = tiny((t) => {
      t.part('header', 'HEADER').finish = 'gold';
    });
    const wired = after(q, { id: 'wire.add', args: { from: at(q, 'X1', '3'), to: at(q, 'X2', '3') } });
    expect(contactNumber(wired, 0)).toBe('C-SOCKET-AU');
  });

  test('is drawn without a contact where none fits', () => {
    const thin = p.parts.find((x) => x.partNumber === 'WIRE-26')!;
    if (thin.kind !== 'wire') throw new Error('not a wire');
    const wired = after(p, {
      id: 'wire.add',
      args: { from: at(p, 'X1', '3'), to: at(p, 'X2', '3'), part: thin },
    });
    expect([contactNumber(wired, 0), contactNumber(wired, 1)]).toEqual([undefined, undefined]);
  });

  test('chooses from the catalogue when the project has nothing, and embeds what it chose', () => {
    const bare: Project = {
      ...p,
      wires: [],
      contacts: [],
      groups: [],
      parts: p.parts.filter((x) => x.kind !== 'wire' && x.kind !== 'contact'),
    };
    const wired = after(
      bare,
      { id: 'wire.add', args: { from: at(p, 'X1', '3'), to: at(p, 'X2', '3') } },
      p.parts,
    );
    expect([contactNumber(wired, 0), contactNumber(wired, 1)]).toEqual(['C-SOCKET', 'C-PIN']);
    expect(wired.parts.map((x) => x.partNumber)).toContain('WIRE-22');
  });

  test('turns connectors without wires so that their first one leaves towards the other', () => {
    const q = { ...p, wires: [] };
    const turned = after(q, { id: 'wire.add', args: { from: at(p, 'X1', '1'), to: at(p, 'X2', '1') } });
    expect(turned.connectors.slice(0, 2).map((c) => c.exit)).toEqual(['right', 'left']);
    // One that has wires stays as the user left it.
    expect(made.connectors.map((c) => c.exit)).toEqual(p.connectors.map((c) => c.exit));
  });

  test.each([
    ['in a header', 'X3', '1', /is a header/],
    ['in a cavity that the part does not have', 'X2', '9', /no cavity 9/],
    ['where it begins', 'X1', '3', /two different ends/],
  ])('cannot end %s', (_name, designator, cavity, reason) => {
    expect(
      refusal(p, { id: 'wire.add', args: { from: at(p, 'X1', '3'), to: at(p, designator, cavity) } }),
    ).toMatch(reason);
  });
});

describe('moving a wire end', () => {
  test('takes the crimped contact along within the same housing part', () => {
    const p = tiny();
    const contact = p.wires[0]!.ends[0];
    const q = after(p, { id: 'wire.move-end', args: { id: p.wires[0]!.id, end: 0, to: at(p, 'X1', '3') } });
    expect(q.wires[0]!.ends[0]).toEqual({ ...contact, cavity: '3' });
    expect(q.contacts).toHaveLength(4);
  });

  test('prepares the end anew for another housing, and drops the old contact', () => {
    const p = tiny();
    const q = after(p, { id: 'wire.move-end', args: { id: p.wires[0]!.id, end: 0, to: at(p, 'X2', '3') } });
    expect(contactNumber(q, 0, q.wires[0]!)).toBe('C-PIN');
    expect(q.contacts).toHaveLength(4);
  });
});

describe('deleting', () => {
  test('a connector takes its wires, their contacts, its mate and its labels', () => {
    const p = tiny();
    const q = after(p, { id: 'objects.remove', args: { ids: [connector(p, 'X1')] } });
    expect(q.wires).toEqual([]);
    expect(q.contacts).toEqual([]);
    expect(q.mates).toHaveLength(1);
  });

  test('a node leaves its connectors without a place and takes its segments', () => {
    const p = tiny();
    const q = after(p, { id: 'objects.remove', args: { ids: [p.nodes[0]!.id] } });
    expect(q.segments).toEqual([]);
    expect(q.connectors.find((c) => c.designator === 'X1')).not.toHaveProperty('node');
  });

  test('part records and decisions are not deleted', () => {
    const p = tiny();
    expect(refusal(p, { id: 'objects.remove', args: { ids: [p.parts[0]!.id] } })).toMatch(/part record/);
  });
});

test('mating what cannot mate is refused with the reasons, unless the user insists', () => {
  const p = { ...tiny(), mates: [] };
  const pair = { a: connector(p, 'X1'), b: connector(p, 'X4') };
  expect(refusal(p, { id: 'mate.add', args: pair })).toMatch(/cannot mate/);
  expect(after(p, { id: 'mate.add', args: { ...pair, insist: true } }).mates).toHaveLength(1);
});

test('a pasted pair has new designators, its own contacts, and the signals of the project', async () => {
  const { copyObjects } = await import('@latchwork/core/commands/clip');
  const p = tiny();
  const clip = copyObjects(p, new Set([connector(p, 'X1'), connector(p, 'X2')]));
  const q = after(p, { id: 'objects.paste', args: { clip, offset: { x: 0, y: 100 } } });
  expect(q.connectors.map((c) => c.designator)).toEqual(['X1', 'X2', 'X3', 'X4', 'X5', 'X6']);
  expect(q.wires.map((w) => w.designator)).toEqual(['W1', 'W2', 'W3', 'W4']);
  expect(q.contacts).toHaveLength(8);
  expect(q.signals).toHaveLength(2);
  expect(new Set(q.contacts.map((c) => c.id)).size).toBe(8);
});
