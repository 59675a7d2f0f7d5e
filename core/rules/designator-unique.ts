import { must } from '../base/assert-never';
import { designatorCounts, NAMED_TOGETHER } from '../derive/designator-table';
import type { Project } from '../model/project';
import { tiny } from '../model/tiny';
import type { Fix, ObjectRef } from './finding';
import type { Rule } from './rule';
import { addFixing } from './shared/example-fixing';

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
  check({ project }, report) {
    for (const [i, { counts, shared }] of designatorCounts(project).entries()) {
      if (shared.size === 0) {
        report.pass();
        continue;
      }
      for (const [designator, list] of bearersOf(project, must(NAMED_TOGETHER[i], 'set'), shared)) {
        const last = must(list.at(-1), designator);
        report.fail({
          at: list.map(({ type, id }) => ({ type, id })),
          data: { designator, count: list.length, kinds: list.map((n) => n.type).join(', ') },
          evidence: [{ label: 'objects of that name', value: list.length, source: 'typed' }],
          fix: rename(last, freeName(designator, counts)),
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
      {
        name: 'a clamp named like a connector',
        project: tiny((t) => {
          addFixing(t, 'clamp', {});
          for (const f of t.project.fixings) f.designator = 'X1';
        }),
        expect: ['X1'],
      },
    ],
    unknown: [],
  }),
};

const TYPES = {
  equipment: 'equipment',
  connectors: 'connector',
  cables: 'cable',
  wires: 'wire',
  groups: 'group',
  splices: 'splice',
  fuses: 'fuse',
  coverings: 'covering',
  fixings: 'fixing',
  nodes: 'node',
  segments: 'segment',
} as const satisfies Readonly<Record<(typeof NAMED_TOGETHER)[number][number], ObjectRef['type']>>;

/** The objects that bear one of these names, by name, in the order of the set. */
function bearersOf(
  project: Project,
  set: (typeof NAMED_TOGETHER)[number],
  names: ReadonlySet<string>,
): ReadonlyMap<string, readonly Named[]> {
  const byName = new Map<string, Named[]>();
  for (const collection of set)
    for (const { id, designator } of project[collection]) {
      if (designator === undefined || !names.has(designator)) continue;
      const named = { type: TYPES[collection], id, designator };
      const same = byName.get(designator);
      if (same) same.push(named);
      else byName.set(designator, [named]);
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
  fixing: 'fixing.edit',
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
