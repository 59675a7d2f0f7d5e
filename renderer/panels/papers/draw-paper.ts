import type { DocumentInput, DocumentOptions, Exporter } from '@latchwork/core/exports/exporter';
import type { Paper } from '@latchwork/core/exports/paper/paper';
import { hostStore } from '../../app/host';
import { whenIdle } from './when-idle';

export interface DrawnPaper {
  readonly paper: Paper;
  /** A PDF file: the bytes that an export would write. */
  readonly bytes: Uint8Array;
}

export type Drawn =
  | { readonly status: 'drawn'; readonly drawn: DrawnPaper }
  | { readonly status: 'failed'; readonly reason: string };

/** What is asked of a document, the same text for the same wishes. */
export const optionsKey = (options: DocumentOptions | undefined): string =>
  JSON.stringify(Object.entries(options ?? {}).sort(([a], [b]) => (a < b ? -1 : 1)));

/** Pages that were drawn, as long as the findings they were drawn from are those of the window. */
let kept: { readonly of: object; readonly date: string; readonly papers: Map<string, DrawnPaper> } | null =
  null;

/** More than this is not kept: one forgets the oldest. */
const MAX_KEPT_BYTES = 32 * 1024 * 1024;

function papersOf({ check, date }: DocumentInput): Map<string, DrawnPaper> {
  if (kept?.of !== check || kept.date !== date) kept = { of: check, date, papers: new Map() };
  return kept.papers;
}

/**
 * The pages of a document, drawn by the host. Steps wait for an idle moment, so that the window goes on; with the signal the
 * rest is left undone and the reason of the signal is thrown.
 */
export async function drawPaper(
  exporter: Exporter,
  input: DocumentInput,
  signal: AbortSignal,
): Promise<Drawn> {
  const papers = papersOf(input);
  const key = `${exporter.id} ${optionsKey(input.options)}`;
  const before = papers.get(key);
  if (before) return { status: 'drawn', drawn: before };
  const { client } = hostStore.getState();
  if (!client)
    return { status: 'failed', reason: 'This window has no host, which draws the pages. Start the program again.' };
  await whenIdle(signal);
  const paper = exporter.paper?.(input);
  if (!paper) return { status: 'failed', reason: `${exporter.title} is not made as pages.` };
  await whenIdle(signal);
  try {
    const answer = await client.call('paper:preview', { paper });
    if (answer.status === 'failed') return answer;
    const drawn = { paper, bytes: bytesOfBase64(answer.pdfBase64) };
    keep(papers, key, drawn);
    signal.throwIfAborted();
    return { status: 'drawn', drawn };
  } catch (error) {
    signal.throwIfAborted();
    return { status: 'failed', reason: `The host did not answer: ${error instanceof Error ? error.message : String(error)}` };
  }
} // prettier-ignore

function keep(papers: Map<string, DrawnPaper>, key: string, drawn: DrawnPaper): void {
  papers.set(key, drawn);
  let bytes = [...papers.values()].reduce((sum, p) => sum + p.bytes.length, 0);
  for (const [oldest, { bytes: its }] of papers) {
    if (bytes <= MAX_KEPT_BYTES || oldest === key) return;
    papers.delete(oldest);
    bytes -= its.length;
  }
}

const bytesOfBase64 = (text: string): Uint8Array => Uint8Array.from(atob(text), (c) => c.charCodeAt(0));
