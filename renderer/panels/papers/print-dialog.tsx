import { useEffect, useState } from 'react';
import type { DocumentInput, Exporter } from '@latchwork/core/exports/exporter';
import { Button } from '../../ui/button';
import { DialogFrame, ask } from '../../ui/dialogs';
import { clearPrint, printStore, type PrintSheet } from './print-store';
import { preparePrint, type PrintJob, type PrintProgress } from './prepare-print';

export interface ToPrint {
  readonly exporter: Exporter;
  readonly input: DocumentInput;
}

/** Makes pages for the printer, says on what sheets they go, and hands them over. */
export async function printDocuments(documents: readonly ToPrint[]): Promise<void> {
  let sheets: readonly PrintSheet[] = [];
  const made = (job: PrintJob): void => void (sheets = job.sheets);
  const isWanted = await ask<true>((done) => <PrintDialog documents={documents} made={made} done={done} />);
  if (isWanted) return handOver(sheets);
  for (const { url } of sheets) URL.revokeObjectURL(url);
} // prettier-ignore

/** The pictures must be there before the system takes its own picture of the page. */
async function handOver(sheets: readonly PrintSheet[]): Promise<void> {
  clearPrint();
  printStore.setState({ sheets });
  await Promise.all(sheets.map(({ url }) => Object.assign(new Image(), { src: url }).decode()));
  await Promise.all([...document.querySelectorAll<HTMLImageElement>('.print-sheet img')].map((i) => i.decode()));
  window.addEventListener('afterprint', clearPrint, { once: true });
  window.print();
} // prettier-ignore

type Made = { readonly job: PrintJob } | { readonly problem: string } | null;

function PrintDialog({
  documents,
  made: tellMade,
  done,
}: {
  documents: readonly ToPrint[];
  made: (job: PrintJob) => void;
  done: (isWanted: true | null) => void;
}) {
  const [progress, tell] = useState<PrintProgress | null>(null);
  const [made, setMade] = useState<Made>(null);
  useEffect(() => {
    const stop = new AbortController();
    preparePrint(documents, tell, stop.signal).then(
      (job) => {
        tellMade(job);
        setMade({ job });
      },
      (error: unknown) => {
        if (!stop.signal.aborted) setMade({ problem: error instanceof Error ? error.message : String(error) });
      },
    );
    return () => stop.abort();
  }, [documents, tellMade]); // prettier-ignore
  const job = made && 'job' in made ? made.job : null;
  return (
    <DialogFrame
      title={documents.length === 1 ? `Print ${documents[0]?.exporter.title.toLowerCase()}` : `Print ${documents.length} documents`}
      buttons={
        <>
          <Button onClick={() => done(null)}>Cancel</Button>
          <Button look="primary" disabled={!job || job.sheets.length === 0} onClick={() => done(true)}>
            Print
          </Button>
        </>
      }
    >
      {job ? (
        <Ready job={job} />
      ) : made && 'problem' in made ? (
        <p role="alert">The pages could not be made. {made.problem}</p>
      ) : (
        <div className="print-progress">
          <progress aria-label="Pages" value={progress?.done ?? 0} max={progress?.total ?? 1} />
          <p role="status">{progress?.making ?? 'Pages'} …</p>
        </div>
      )}
    </DialogFrame>
  );
} // prettier-ignore

function Ready({ job: { sheets, trueSize, problems } }: { job: PrintJob }) {
  const counts = new Map<string, number>();
  for (const { sheet } of sheets) {
    const name = sheet ? `${sheet.size} ${sheet.orientation}` : 'another size';
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return (
    <div className="print-ready">
      <p>
        {sheets.length} {sheets.length === 1 ? 'page' : 'pages'}: {[...counts].map(([name, n]) => `${n} × ${name}`).join(', ')}.
      </p>
      <p>In the dialog of the system choose these sheets, size 100 % (actual size), and no fitting to the page.</p>
      {trueSize.length > 0 ? (
        <p className="print-true-size">
          <strong>At true size: {trueSize.join(', ')}.</strong> Hold a ruler to the bar on the sheets before you work
          with them.
        </p>
      ) : null}
      {problems.map(({ what, reason }) => (
        <p key={what} role="alert">
          Not printed: {what}. {reason}
        </p>
      ))}
    </div>
  );
} // prettier-ignore
