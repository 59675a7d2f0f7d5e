import { ok, problem, type Result } from '../../base/result';

/** An element: its attributes in the order given, and text or elements inside. No mixture of the two. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: readonly (readonly [string, string])[];
  readonly content: string | readonly XmlElement[];
}

type AttributeValue = string | number | boolean | undefined;
type Content = string | number | readonly (XmlElement | undefined)[];

/** An element from attributes in the order given and its content; attributes and children that are undefined are left out. */
export const xml = (
  name: string,
  attributes: Readonly<Record<string, AttributeValue>> = {},
  content: Content = [],
): XmlElement => ({
  name,
  attributes: Object.entries(attributes).flatMap(([key, value]) =>
    value === undefined ? [] : [[key, plain(value)] as const],
  ),
  content:
    typeof content === 'string' || typeof content === 'number'
      ? plain(content)
      : content.filter((child) => child !== undefined),
});

/**
 * The tree as an XML 1.0 document in UTF-8, two spaces a level, lines ending in LF: the same tree, the same bytes. Characters
 * that XML 1.0 cannot carry even as references (control characters, halves of surrogate pairs) are a problem, in words, with
 * the element they stand in. Throws on a name that is none and on a number that is not finite: those are ours.
 */
export function xmlText(root: XmlElement): Result<string, string> {
  const bad = firstUnfit(root, root.name);
  if (bad !== undefined) return problem(bad);
  const out = ['<?xml version="1.0" encoding="UTF-8"?>\n'];
  write(root, '', out);
  return ok(out.join(''));
}

function write(element: XmlElement, indent: string, out: string[]): void {
  const { name, attributes, content } = element;
  const inner = attributes.map(([key, value]) => ` ${key}="${escaped(value, true)}"`).join('');
  if (content.length === 0) out.push(`${indent}<${name}${inner}/>\n`);
  else if (typeof content === 'string')
    out.push(`${indent}<${name}${inner}>${escaped(content, false)}</${name}>\n`);
  else {
    out.push(`${indent}<${name}${inner}>\n`);
    for (const child of content) write(child, `${indent}  `, out);
    out.push(`${indent}</${name}>\n`);
  }
}

const REFERENCES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  '\t': '&#9;',
  '\n': '&#10;',
  '\r': '&#13;',
};

/** A reader turns tab and line feed of an attribute into blanks, and a carriage return anywhere into a line feed. */
const escaped = (text: string, inAttribute: boolean): string =>
  text.replace(inAttribute ? /[&<>"\t\n\r]/g : /[&<>\r]/g, (c) => REFERENCES[c] ?? c);

function plain(value: string | number | boolean): string {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`No number for XML: ${value}`);
  return String(value);
}

/** Names as we write them: ASCII, with at most one prefix. */
const NAME = /^(?:[A-Za-z_][\w.-]*:)?[A-Za-z_][\w.-]*$/;

/** The complement of the production Char of XML 1.0; halves of pairs are found because the pattern reads whole characters. */
const UNFIT = /[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/u;

function firstUnfit(element: XmlElement, path: string): string | undefined {
  if (!NAME.test(element.name)) throw new Error(`No name for an XML element: ${element.name}`);
  for (const [key, value] of element.attributes) {
    if (!NAME.test(key)) throw new Error(`No name for an XML attribute: ${key}`);
    const found = unfitIn(value, `attribute ${key} of ${path}`);
    if (found !== undefined) return found;
  }
  if (typeof element.content === 'string') return unfitIn(element.content, path);
  const seen = new Map<string, number>();
  for (const child of element.content) {
    const number = (seen.get(child.name) ?? 0) + 1;
    seen.set(child.name, number);
    const found = firstUnfit(child, `${path}/${child.name}[${number}]`);
    if (found !== undefined) return found;
  }
  return undefined;
}

function unfitIn(text: string, where: string): string | undefined {
  const found = UNFIT.exec(text)?.[0];
  if (found === undefined) return undefined;
  const code = (found.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
  return `XML cannot carry the character U+${code} of "${text.replace(UNFIT, '\u{fffd}').slice(0, 60)}" (${where}).`;
}
