import { Download, Printer } from 'lucide-react';
import type { DocumentInput } from '@latchwork/core/exports/exporter';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { useJob } from '../../app/files/follow-job';
import { Button } from '../../ui/button';
import { exportDocuments } from './export-dialog';
import { usePapersView } from './papers-view';
import { printDocuments } from './print-dialog';

/** What can be done with the documents that are picked; with all of them where none is. */
export function PickedBar({ input }: { input: DocumentInput }) {
  const picked = usePapersView((v) => v.picked);
  const options = usePapersView((v) => v.options);
  const isBusy = useJob()?.state.status === 'running';
  const documents = EXPORTERS.filter((e) => picked.size === 0 || picked.has(e.id));
  const printable = documents.filter((e) => e.paper);
  const toPrint = printable.map((exporter) => {
    const asked = options[exporter.id];
    return { exporter, input: asked ? { ...input, options: asked } : input };
  });
  const what = picked.size === 0 ? 'all' : String(documents.length);
  return (
    <div className="papers-foot" role="group" aria-label="Picked documents">
      <Button
        look="primary"
        disabled={isBusy}
        title={isBusy ? 'Files are being exported; wait for them or cancel.' : undefined}
        onClick={() => void exportDocuments(documents, options)}
      >
        <Download size={14} aria-hidden />
        Export {what} …
      </Button>
      <Button disabled={printable.length === 0} onClick={() => void printDocuments(toPrint)}>
        <Printer size={14} aria-hidden />
        Print {what === 'all' ? 'all' : printable.length} …
      </Button>
    </div>
  );
}
