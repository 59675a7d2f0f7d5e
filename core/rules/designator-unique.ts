import type { Harness } from '../derive/harness';
import { tiny } from '../model/tiny';
import type { Fix, ObjectRef } from './finding';
import type { Rule } from './rule';

/** An object that bears a designator. */
interface Named {
  readonly type: ObjectRef['type'];
  readonly id: string;
  readonly designator: string;
}

/**
 * Two sets: what is built in, and the nodes and segments of the formboard, which are never seen beside the others.
 * Letters count as they are written: x1 and X1 differ for a reader of the drawing too.
 */
export const designatorUnique: Rule<'project'> = {
  meta: {
    id: 'designator-unique',
    revision: 1,
    severity: 'major',
    summary: 'No two objects bear the same designator.',
    why: 'A person at the formboard takes the first X1 that comes to hand. Tables, labels and test programs name ends by designator, so two of the same name are wired, printed and tested as one.',
    source: 'IEC 81346-1 and ASME Y14.44: a complete reference designation occurs once in a set',
    message: '{{designator}} is the name of {{count}} objects: {{kinds}}',
    unknown: 'Whether designators are unique cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check(harness, report) {
    for (const set of setsOf(harness.project)) {
      if (isUnique(set)) {
        report.pass();
        continue;
      }
      const byName = namesIn(set);
      for (const [designator, list] of byName) {
        const last = list.at(-1);
        if (!last || list.length < 2) continue;
        report.fail({
          at: list.map(({ type, id }) => ({ type, id })),
          data: { designator, count: list.length, kinds: list.map((n) => n.type).join(', ') },
          evidence: [{ label: 'objects of that name', value: list.length, source: 'typed' }],
          fix: rename(last, freeName(designator, byName)),
        });
      }
    }
  },
  examples: () => ({
    good: [
      { name: 'every name once', project: tiny() },
      {
        name: 'a node may be named like a connector',
        project: tiny((t) => {
          t.project.nodes.forEach((n, i) => (n.designator = `X${i + 1}`));
        }),
      },
    ],
    bad: [
      {
        name: 'two connectors of one name',
        project: tiny((t) => {
          t.connector('X2').designator = 'X1';
        }),
        expect: ['X1'],
      },
      {
        name: 'a wire named like a piece of equipment, a segment like a node',
        project: tiny((t) => {
          t.wire('W2').designator = 'A1';
          t.project.segments.forEach((s) => (s.designator = 'N1'));
        }),
        expect: ['A1', 'N1'],
      },
    ],
    unknown: [],
  }),
};

interface NamedList {
  readonly type: ObjectRef['type'];
  readonly list: readonly { readonly id: string; readonly designator?: string | undefined }[];
}

const setsOf = (project: Harness['project']): readonly (readonly NamedList[])[] => [
  [
    { type: 'equipment', list: project.equipment },
    { type: 'connector', list: project.connectors },
    { type: 'cable', list: project.cables },
    { type: 'wire', list: project.wires },
    { type: 'group', list: project.groups },
    { type: 'splice', list: project.splices },
    { type: 'fuse', list: project.fuses },
    { type: 'covering', list: project.coverings },
  ],
  [
    { type: 'node', list: project.nodes },
    { type: 'segment', list: project.segments },
  ],
];

/** Asked after every edit, so it makes nothing but one set of names. */
function isUnique(set: readonly NamedList[]): boolean {
  const seen = new Set<string>();
  let count = 0;
  for (const { list } of set)
    for (const { designator } of list) {
      if (designator === undefined) continue;
      seen.add(designator);
      if (seen.size < ++count) return false;
    }
  return true;
}

function namesIn(set: readonly NamedList[]): ReadonlyMap<string, readonly Named[]> {
  const byName = new Map<string, Named[]>();
  for (const { type, list } of set)
    for (const { id, designator } of list) {
      if (designator === undefined) continue;
      const same = byName.get(designator);
      if (same) same.push({ type, id, designator });
      else byName.set(designator, [{ type, id, designator }]);
    }
  return byName;
}

/** The lowest number behind the same letters that nobody bears. */
function freeName(designator: string, used: ReadonlyMap<string, unknown>): string {
  const letters = designator.replace(/\d+$/, '') || 'X';
  let n = 1;
  while (used.has(`${letters}${n}`)) n++;
  return `${letters}${n}`;
}

/** Commands that take several objects at once, and those that take one; cables and fuses have none. */
const EDIT_MANY: Partial<Record<Named['type'], string>> = { connector: 'connector.edit', wire: 'wire.edit' };
const EDIT_ONE: Partial<Record<Named['type'], string>> = {
  equipment: 'equipment.edit',
  group: 'group.edit',
  splice: 'splice.edit',
  covering: 'covering.edit',
  node: 'node.edit',
  segment: 'segment.edit',
};

function rename(object: Named, designator: string): Fix | undefined {
  const label = `Rename the last one to ${designator}`;
  const change = { designator };
  const many = EDIT_MANY[object.type];
  if (many) return { label, command: many, args: { ids: [object.id], change } };
  const one = EDIT_ONE[object.type];
  return one ? { label, command: one, args: { id: object.id, change } } : undefined;
}
