import { type Result, ok, problem } from '@latchwork/core/base/result';
import type { Paper } from '@latchwork/core/exports/paper/paper';
import { type Fonts, readFonts } from './pdf/fonts';
import { paperPdf } from './pdf/paper-pdf';
import { reasonOf } from './reason';

/** A document as the bytes of a PDF file; or why not, where the fonts of the program are gone. */
export async function paperBytes(paper: Paper, fontsFolder: string): Promise<Result<Uint8Array, string>> {
  let fonts: Fonts;
  try {
    fonts = await readFonts(fontsFolder);
  } catch (error) {
    return problem(`The fonts that come with the program cannot be read. ${reasonOf(error)}`);
  }
  return ok(await paperPdf(paper, fonts));
}
