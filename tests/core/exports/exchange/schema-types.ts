import { readFileSync } from 'node:fs';
import { find, readTree, walk, type Tree } from './xml-tree';

/** What a schema says of a type: its base, and of each element the type or, for a reference, the types that it may name. */
interface SchemaType {
  readonly base: string | undefined;
  readonly elements: ReadonlyMap<
    string,
    { readonly type: string; readonly targets: readonly string[] | undefined }
  >;
}
export type SchemaTypes = ReadonlyMap<string, SchemaType>;

const local = (name: string | undefined): string | undefined => name?.split(':').at(-1);

/** The types of a schema of `tests/files/standards`. Its references carry their target beside them. */
export function schemaTypes(path: string): SchemaTypes {
  const root = readTree(readFileSync(new URL(`../../../files/standards/${path}`, import.meta.url), 'utf8'));
  const out = new Map<string, SchemaType>();
  for (const type of root.children) {
    const name = type.attributes.get('name');
    if (name === undefined || type.name === 'simpleType') continue;
    const parts = [...walk(type)];
    out.set(type.name === 'element' ? `root ${name}` : name, {
      base: local(parts.find((p) => p.name === 'extension')?.attributes.get('base')),
      elements: new Map(
        parts
          .filter((p) => p.name === 'element' && p !== type)
          .map((e) => [
            e.attributes.get('name') ?? '',
            { type: local(e.attributes.get('type')) ?? '', targets: targetsOf(e) },
          ]),
      ),
    });
  }
  return out;
}

/** VEC: `mt:relationship element-type`. KBL: the words "ref to A, B" in the documentation. */
function targetsOf(element: Tree): readonly string[] | undefined {
  if (!element.attributes.get('type')?.includes('IDREF')) return undefined;
  for (const e of walk(element)) {
    const target = e.name === 'relationship' ? local(e.attributes.get('element-type')) : undefined;
    if (target !== undefined) return [target];
    const words = e.name === 'documentation' ? /ref to (.*)/s.exec(e.text)?.[1] : undefined;
    // One of the lists has lost the comma in front of its last name.
    if (words)
      return words
        .replace('occurrenceNode', 'occurrence, Node')
        .split(/[\s,]+/)
        .filter((w) => w);
  }
  return [];
}

/** Elements that name an id which is not there, or one of a type that the schema does not allow at that place. */
export function referenceErrors(
  types: SchemaTypes,
  root: Tree,
): { readonly errors: string[]; readonly count: number } {
  const typed = new Map<Tree, string>();
  const byId = new Map<string, Tree>();
  const errors: string[] = [];
  let count = 0;
  const elementOf = (type: string, name: string) => {
    for (let t: string | undefined = type; t !== undefined; t = types.get(t)?.base) {
      const found = types.get(t)?.elements.get(name);
      if (found) return found;
    }
    return undefined;
  };
  const isA = (type: string | undefined, target: string): boolean => {
    for (let t = type; t !== undefined; t = types.get(t)?.base) if (t === target) return true;
    return false;
  };
  for (const e of walk(root)) {
    const declared = e.parent ? elementOf(typed.get(e.parent) ?? '', e.name)?.type : e.name;
    typed.set(e, e.type ?? declared ?? '');
    if (e.id !== undefined) byId.set(e.id, e);
  }
  for (const e of walk(root)) {
    const targets = e.parent && elementOf(typed.get(e.parent) ?? '', e.name)?.targets;
    if (!targets) continue;
    for (const id of e.text.split(' ')) {
      count++;
      const target = byId.get(id);
      const place = `${typed.get(e.parent as Tree) ?? ''} ${e.parent?.id ?? ''}/${e.name}`;
      if (!target) errors.push(`${place} names ${id}, which is not there`);
      else if (!targets.some((t) => isA(typed.get(target), t)))
        errors.push(`${place} names a ${typed.get(target) ?? '?'}, allowed: ${targets.join(', ')}`);
    }
  }
  return { errors, count };
}

/** Names that stand twice in one parent, among elements of one name and type. */
export function nameErrors(root: Tree, names: readonly string[]): string[] {
  const errors: string[] = [];
  for (const parent of walk(root)) {
    const seen = new Set<string>();
    for (const child of parent.children)
      for (const name of names) {
        const text = find(child, name)?.text;
        if (text === undefined) continue;
        const key = `${child.name} ${child.type ?? ''} ${name} ${text}`;
        if (seen.has(key)) errors.push(`${parent.name} ${parent.id ?? ''}: ${key}`);
        seen.add(key);
      }
  }
  return errors;
}
