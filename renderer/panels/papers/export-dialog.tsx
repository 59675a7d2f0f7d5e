import { useState } from 'react';
import type { DocumentOptions, Exporter } from '@latchwork/core/exports/exporter';
import { fileFormatsOf, type FileFormat } from '@latchwork/core/exports/file-format';
import { exportMany, wantedFiles } from '../../app/files/export-many';
import { Button } from '../../ui/button';
import { CheckField } from '../../ui/check-field';
import { DialogFrame, ask } from '../../ui/dialogs';

const FORMATS: readonly (readonly [FileFormat, string])[] = [
  ['pdf', 'Pages (PDF)'],
  ['svg', 'Drawings (SVG)'],
  ['dxf', 'Drawings for CAD (DXF R12)'],
  ['xml', 'Files of the standards (XML)'],
  ['csv', 'Comma-separated values (CSV)'],
  ['xlsx', 'Spreadsheets (XLSX)'],
  ['json', 'JSON'],
];

type Options = Readonly<Record<string, DocumentOptions>>;

/** Asks in which formats several documents are wanted, then has them made. */
export async function exportDocuments(documents: readonly Exporter[], options: Options): Promise<void> {
  const formats = await ask<ReadonlySet<FileFormat>>((done) => <FormatsDialog documents={documents} done={done} />);
  if (formats) await exportMany(wantedFiles(documents, formats, options));
} // prettier-ignore

function FormatsDialog({
  documents,
  done,
}: {
  documents: readonly Exporter[];
  done: (formats: ReadonlySet<FileFormat> | null) => void;
}) {
  const [formats, setFormats] = useState<ReadonlySet<FileFormat>>(() => new Set(['pdf', 'xml']));
  const count = wantedFiles(documents, formats, {}).length;
  const without = documents.filter((d) => !fileFormatsOf(d).some((f) => formats.has(f)));
  const offered = FORMATS.filter(([f]) => documents.some((d) => fileFormatsOf(d).includes(f)));
  return (
    <DialogFrame
      title={`Export ${documents.length} ${documents.length === 1 ? 'document' : 'documents'}`}
      buttons={
        <>
          <Button onClick={() => done(null)}>Cancel</Button>
          <Button look="primary" disabled={count === 0} onClick={() => done(formats)}>
            Export {count} {count === 1 ? 'file' : 'files'}
          </Button>
        </>
      }
    >
      <p className="second">Each document in these formats, as far as it is made in them; all in one folder of their own.</p>
      <ul className="export-formats">
        {offered.map(([format, name]) => {
          const makers = documents.filter((d) => fileFormatsOf(d).includes(format)).length;
          return (
            <li key={format}>
              <CheckField
                label={name}
                checked={formats.has(format)}
                choose={(on) => setFormats((before) => new Set(on ? [...before, format] : [...before].filter((f) => f !== format)))}
              />
              <span className="second">
                {makers} {makers === 1 ? 'file' : 'files'}
              </span>
            </li>
          );
        })}
      </ul>
      {without.length > 0 ? (
        <p role="status">
          Without a file so far: {without.map((d) => d.title.toLowerCase()).join(', ')}. Choose a format that they are made in.
        </p>
      ) : null}
    </DialogFrame>
  );
} // prettier-ignore
