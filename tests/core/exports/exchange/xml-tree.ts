import { XmlDocument, XmlElement } from 'libxml2-wasm';

/** An element as libxml2 read it: nothing of ours is used to read what we wrote. */
export interface Tree {
  readonly name: string;
  readonly type: string | undefined;
  readonly id: string | undefined;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly Tree[];
  /** Of an element without children. */
  readonly text: string;
  readonly parent: Tree | undefined;
}

export function readTree(text: string): Tree {
  const document = XmlDocument.fromString(text);
  try {
    return treeOf(document.root, undefined);
  } finally {
    document.dispose();
  }
}

function treeOf(element: XmlElement, parent: Tree | undefined): Tree {
  const attributes = new Map(element.attrs.map((a) => [a.name, a.content] as const));
  const children: Tree[] = [];
  const tree: Tree = {
    name: element.name,
    type: attributes.get('type')?.split(':').at(-1),
    id: attributes.get('id'),
    attributes,
    children,
    text: element.firstChild instanceof XmlElement ? '' : element.content,
    parent,
  };
  for (let c = element.firstChild; c; c = c.next) if (c instanceof XmlElement) children.push(treeOf(c, tree));
  return tree;
}

/** The element and all below it. */
export function* walk(tree: Tree): Generator<Tree> {
  yield tree;
  for (const c of tree.children) yield* walk(c);
}

export const find = (tree: Tree | undefined, name: string, type?: string): Tree | undefined =>
  tree?.children.find((c) => c.name === name && (type === undefined || c.type === type));
export const findAll = (tree: Tree | undefined, name: string, type?: string): readonly Tree[] =>
  tree?.children.filter((c) => c.name === name && (type === undefined || c.type === type)) ?? [];
export const textOf = (tree: Tree | undefined, name: string): string | undefined => find(tree, name)?.text;
export const refsOf = (tree: Tree | undefined, name: string): readonly string[] =>
  textOf(tree, name)?.split(' ') ?? [];
