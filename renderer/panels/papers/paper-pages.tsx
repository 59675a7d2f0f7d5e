import type { DocumentInput, Exporter } from '@latchwork/core/exports/exporter';
import { EmptyPlace } from '../../ui/empty-place';
import { isTrueSize } from './is-true-size';
import { PagesView } from './pages-view';
import { usePreview } from './use-preview';

/** A document as the pages that its PDF has. */
export function PaperPages({ exporter, input }: { exporter: Exporter; input: DocumentInput }) {
  const preview = usePreview(exporter, input);
  if (preview.status === 'drawing')
    return (
      <div className="paper-wait">
        <progress aria-label={`Drawing the pages of ${exporter.title.toLowerCase()}`} />
        <p role="status" className="second">
          Drawing the pages …
        </p>
      </div>
    );
  if (preview.status === 'failed')
    return (
      <EmptyPlace title="The pages cannot be shown">
        <p role="alert">{preview.reason}</p>
        <p>The rows of the document are all there: switch to Rows.</p>
      </EmptyPlace>
    );
  return (
    <>
      {isTrueSize(preview.paper) ? (
        <p className="paper-true-size" role="note">
          Drawings at true size. Print at 100 %, not fitted to the page, and hold a ruler to the bar before you work with
          them.
        </p>
      ) : null}
      <PagesView key={exporter.id} pdf={preview.pdf} title={exporter.title} />
    </>
  );
} // prettier-ignore
