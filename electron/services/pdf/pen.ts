import PDFDocument from 'pdfkit';
import type { Face, Fonts } from './fonts';
import { setLines, type Piece, type Run } from './set-lines';
import { spell } from './spell';

/** Points in a millimetre. */
export const MM = 72 / 25.4;

export const INK = '#000000';
export const SECOND_INK = '#444444';
export const THIN_LINE = 0.5;
export const HAIR_LINE = 0.25;

/** What is needed of a font to know its letters; pdfkit's own types leave it open. */
interface OpenFont {
  readonly font: { hasGlyphForCodePoint(code: number): boolean };
}

export type SetLine = readonly Piece<Face>[];

/** A document with the fonts of papers, and text that is set line by line. All measures are in points. */
export class Pen {
  readonly doc: PDFKit.PDFDocument;
  readonly bytes: Promise<Uint8Array>;
  private readonly known: Readonly<Record<Face, OpenFont>>;

  constructor(fonts: Fonts, info: { title: string; author: string; subject: string; made: Date }) {
    this.doc = new PDFDocument({
      size: 'A4',
      margin: 0,
      bufferPages: true,
      autoFirstPage: false,
      // None of the built-in fonts: they lack letters, and their files do not travel with the program.
      font: null as unknown as string,
      lang: 'en',
      displayTitle: true,
      info: {
        Title: info.title,
        Author: info.author,
        Subject: info.subject,
        Creator: 'Latchwork',
        Producer: 'Latchwork',
        CreationDate: info.made,
        ModDate: info.made,
      },
    });
    const chunks: Uint8Array[] = [];
    this.doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    this.bytes = new Promise((resolve, reject) => {
      this.doc.on('end', () => resolve(Buffer.concat(chunks)));
      this.doc.on('error', reject);
    });
    for (const [face, bytes] of Object.entries(fonts)) this.doc.registerFont(face, Buffer.from(bytes));
    const opened = (face: Face): OpenFont => (this.doc.font(face) as unknown as { _font: OpenFont })._font;
    this.known = { text: opened('text'), strong: opened('strong'), code: opened('code'), ext: opened('ext') };
  }

  /** Breaks text into lines of at most `width`. */
  lines(texts: readonly Run<Face>[], size: number, width: number): readonly SetLine[] {
    const has = (char: string, face: Face): boolean =>
      this.known[face].font.hasGlyphForCodePoint(char.codePointAt(0) as number);
    const runs = texts.flatMap(({ text, face }) => spell(text, face, has));
    return setLines(runs, width, (text, face) => this.width(text, face, size));
  }

  width(text: string, face: Face, size: number): number {
    return this.doc.font(face).fontSize(size).widthOfString(text);
  }

  /** Draws one set line with its top at `y`. */
  draw(line: SetLine, x: number, y: number, size: number, colour = INK): void {
    this.doc.fillColor(colour);
    for (const piece of line)
      this.doc
        .font(piece.face)
        .fontSize(size)
        .text(piece.text, x + piece.x, y, { lineBreak: false });
  }

  widthOfLine(line: SetLine, size: number): number {
    const last = line.at(-1);
    return last ? last.x + this.width(last.text, last.face, size) : 0;
  }
}

/** From top to top of lines of this size. */
export const leading = (size: number): number => size * 1.3;
