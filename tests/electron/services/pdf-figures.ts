import { getDocument, OPS, Util } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface P {
  readonly x: number;
  readonly y: number;
}

/** A path as another program reads it: points in mm from the top left of the page, control points of curves included. */
export interface ReadPath {
  readonly points: readonly P[];
  readonly stroked: boolean;
  readonly filled: boolean;
  readonly lineMm: number;
  /** What the page shows of it. */
  readonly clip: { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number } | null;
} // prettier-ignore

export interface ReadText {
  readonly text: string;
  /** Start of the base line. */
  readonly at: P;
  readonly angleDeg: number;
  readonly sizeMm: number;
  readonly widthMm: number;
}

export interface ReadPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly paths: readonly ReadPath[];
  readonly texts: readonly ReadText[];
  /** All its text in one line. */
  readonly words: string;
}

const MM = 25.4 / 72;
type Matrix = readonly number[];

/** Reads a PDF with pdf.js: every path and text with the transforms of the page worked in. */
export async function readPdf(bytes: Uint8Array): Promise<readonly ReadPage[]> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const document = await task.promise;
  const pages: ReadPage[] = [];
  for (let n = 1; n <= document.numPages; n++) {
    const page = await document.getPage(n);
    const [, , width, height] = page.view as [number, number, number, number];
    const { fnArray, argsArray } = await page.getOperatorList();
    const { items } = await page.getTextContent();
    const texts = items.flatMap((item): ReadText[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [a, b, , , e, f] = item.transform as [number, number, number, number, number, number];
      return [
        {
          text: item.str,
          at: { x: e * MM, y: (height - f) * MM },
          angleDeg: (-Math.atan2(b, a) * 180) / Math.PI,
          sizeMm: Math.hypot(a, b) * MM,
          widthMm: item.width * MM,
        },
      ];
    });
    pages.push({
      widthMm: width * MM,
      heightMm: height * MM,
      paths: pathsOf(fnArray, argsArray as unknown[][], height),
      texts,
      words: texts.map((t) => t.text).join(' ').replaceAll(/\s+/g, ' '),
    }); // prettier-ignore
  }
  await task.destroy();
  return pages;
}

interface State {
  readonly matrix: Matrix;
  readonly clip: ReadPath['clip'];
  readonly lineWidth: number;
}

const STROKES: readonly number[] = [OPS.stroke, OPS.closeStroke, OPS.fillStroke, OPS.closeFillStroke];
const FILLS: readonly number[] = [OPS.fill, OPS.eoFill, OPS.fillStroke, OPS.closeFillStroke];

function pathsOf(fns: readonly number[], args: readonly unknown[][], height: number): readonly ReadPath[] {
  let state: State = { matrix: [1, 0, 0, 1, 0, 0], clip: null, lineWidth: 1 };
  const stack: State[] = [];
  const paths: ReadPath[] = [];
  let clips = false;
  fns.forEach((fn, i) => {
    if (fn === OPS.save) stack.push(state);
    else if (fn === OPS.restore) state = stack.pop() ?? state;
    else if (fn === OPS.transform)
      state = { ...state, matrix: Util.transform(state.matrix as number[], args[i] as number[]) };
    else if (fn === OPS.setLineWidth) state = { ...state, lineWidth: args[i]![0] as number };
    else if (fn === OPS.clip || fn === OPS.eoClip) clips = true;
    else if (fn === OPS.constructPath) {
      const [op, [data]] = args[i] as [number, [ArrayLike<number>]];
      const points = pointsOf(data, state.matrix, height);
      if (clips) {
        const box = boxOf(points);
        const was = state.clip;
        state = {
          ...state,
          clip: was
            ? { minX: Math.max(was.minX, box.minX), minY: Math.max(was.minY, box.minY), maxX: Math.min(was.maxX, box.maxX), maxY: Math.min(was.maxY, box.maxY) }
            : box,
        }; // prettier-ignore
        clips = false;
      }
      const [a, b] = state.matrix as [number, number];
      if (STROKES.includes(op) || FILLS.includes(op))
        paths.push({
          points,
          stroked: STROKES.includes(op),
          filled: FILLS.includes(op),
          lineMm: state.lineWidth * Math.hypot(a, b) * MM,
          clip: state.clip,
        });
    }
  });
  return paths;
}

/** Numbers that follow each drawing step of pdf.js: move, line, curve, close. */
const LENGTHS = [2, 2, 6, 0];

function pointsOf(data: ArrayLike<number>, m: Matrix, height: number): readonly P[] {
  const points: P[] = [];
  for (let i = 0; i < data.length;) {
    const length = LENGTHS[data[i] as number] as number;
    for (let k = i + 1; k < i + 1 + length; k += 2) {
      const p: [number, number] = [data[k] as number, data[k + 1] as number];
      const x = p[0] * m[0]! + p[1] * m[2]! + m[4]!;
      const y = p[0] * m[1]! + p[1] * m[3]! + m[5]!;
      points.push({ x: x * MM, y: (height - y) * MM });
    }
    i += 1 + length;
  }
  return points;
}

export function boxOf(points: readonly P[]): NonNullable<ReadPath['clip']> {
  const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)];
  return {
    minX: Math.min(...xs),
    minY: Math.min(...ys),
    maxX: Math.max(...xs),
    maxY: Math.max(...ys),
  };
}
