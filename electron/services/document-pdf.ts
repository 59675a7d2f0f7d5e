import type { Exporter } from '@latchwork/core/exports/exporter';
import { type Result, ok, problem } from '@latchwork/core/base/result';
import type { CheckResult } from '@latchwork/core/rules/check-harness';
import { type Fonts, readFonts } from './pdf/fonts';
import { paperPdf } from './pdf/paper-pdf';
import { reasonOf } from './reason';

/** A document as the bytes of a PDF file, or why not. `date` is the day on which decisions are judged. */
export async function documentPdf(
  exporter: Exporter,
  check: CheckResult,
  date: string,
  fontsFolder: string,
): Promise<Result<Uint8Array, string>> {
  const paper = exporter.paper?.(check.harness, check, date);
  if (!paper) return problem(`${exporter.title} is not made as PDF.`);
  let fonts: Fonts;
  try {
    fonts = await readFonts(fontsFolder);
  } catch (error) {
    return problem(`The fonts that come with the program cannot be read. ${reasonOf(error)}`);
  }
  return ok(await paperPdf(paper, fonts));
}
