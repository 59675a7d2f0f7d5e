import * as fc from 'fast-check';
import { XmlDocument, XmlElement as ReadElement, XmlText } from 'libxml2-wasm';
import { describe, expect, it } from 'vitest';
import { type XmlElement, xml, xmlText } from '@latchwork/core/exports/xml/xml';

const textOf = (root: XmlElement): string => {
  const result = xmlText(root);
  if (!result.ok) throw new Error(result.problem);
  return result.value;
};

describe('an element tree as text', () => {
  it('keeps the order of attributes and leaves out what is undefined', () => {
    const tree = xml('a', { z: 1, b: undefined, c: true }, [
      xml('b', {}, 'text'),
      undefined,
      xml('n:c'),
      xml('d', {}, 0.5),
    ]);
    expect(textOf(tree)).toBe(
      '<?xml version="1.0" encoding="UTF-8"?>\n<a z="1" c="true">\n  <b>text</b>\n  <n:c/>\n  <d>0.5</d>\n</a>\n',
    );
  });

  it('escapes what would end a text or an attribute, and what a reader would change', () => {
    expect(textOf(xml('a', { b: '<"&>\t\n\r' }, 'x < y & "z" ]]>\r'))).toContain(
      '<a b="&lt;&quot;&amp;&gt;&#9;&#10;&#13;">x &lt; y &amp; "z" ]]&gt;&#13;</a>',
    );
  });

  it.each([
    ['a control character', '\u0001', 'U+0001'],
    ['half of a pair', 'x\ud800', 'U+D800'],
    ['a non-character', '\uffff', 'U+FFFF'],
  ])('refuses %s and says where it stands', (_, text, code) => {
    const inside = xmlText(xml('a', {}, [xml('b'), xml('b', {}, text)]));
    expect(inside).toMatchObject({ ok: false, problem: expect.stringContaining(code) as unknown });
    expect(inside).toMatchObject({ ok: false, problem: expect.stringContaining('a/b[2]') as unknown });
    const attribute = xmlText(xml('a', { name: text }));
    expect(attribute).toMatchObject({
      ok: false,
      problem: expect.stringContaining('attribute name of a') as unknown,
    });
  });

  it('takes names and numbers of ours that are none for a bug', () => {
    expect(() => xmlText(xml('a b'))).toThrow('No name');
    expect(() => xmlText(xml('a', { '<': 1 }))).toThrow('No name');
    expect(() => xml('a', {}, Number.NaN)).toThrow('No number');
  });

  // Outside: libxml2, the XML parser of the GNOME project.
  it('is read by libxml2 as what was written, whatever the text', { timeout: 20_000 }, () => {
    const name = fc.constantFrom('a', 'b', 'cbc', 'Item_1', 'x-y.z');
    const words = fc.string({ unit: 'binary', maxLength: 8 }).filter((s) => xmlText(xml('a', {}, s)).ok);
    const attributes = fc.dictionary(name, words, { maxKeys: 3 });
    const { tree } = fc.letrec<{ tree: XmlElement }>((tie) => ({
      tree: fc.oneof(
        { maxDepth: 3 },
        fc.tuple(name, attributes, words).map(([n, a, t]) => xml(n, a, t)),
        fc.tuple(name, attributes, fc.array(tie('tree'), { maxLength: 3 })).map(([n, a, c]) => xml(n, a, c)),
      ),
    }));
    fc.assert(
      fc.property(tree, (root) => {
        const document = XmlDocument.fromString(textOf(root));
        try {
          expect(readAgain(document.root)).toEqual(plainTree(root));
        } finally {
          document.dispose();
        }
      }),
      { numRuns: 60 },
    );
  });
});

type Plain = { name: string; attributes: Record<string, string>; content: string | Plain[] };

const plainTree = (e: XmlElement): Plain => ({
  name: e.name,
  attributes: Object.fromEntries(e.attributes),
  content: typeof e.content === 'string' ? e.content : e.content.length ? e.content.map(plainTree) : '',
});

function readAgain(e: ReadElement): Plain {
  const children: Plain[] = [];
  let text = '';
  for (let child = e.firstChild; child; child = child.next) {
    if (child instanceof ReadElement) children.push(readAgain(child));
    else if (child instanceof XmlText) text += child.content;
  }
  return {
    name: e.name,
    attributes: Object.fromEntries(e.attrs.map((a) => [a.name, a.value])),
    content: children.length > 0 ? children : text,
  };
}
