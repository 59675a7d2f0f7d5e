import type { Exporter } from '@latchwork/core/exports/exporter';
import { EXPORTERS } from '@latchwork/core/exports/index';

export interface DocumentGroup {
  readonly id: string;
  readonly title: string;
  readonly documents: readonly Exporter[];
}

const READERS: readonly { readonly id: string; readonly title: string; readonly ids: readonly string[] }[] = [
  {
    id: 'shop',
    title: 'For the shop',
    ids: ['connection-table', 'length-table', 'cut-list', 'crimp-sheets', 'labels', 'build-sequence', 'pinouts', 'formboard', 'cut-outs'],
  },
  {
    id: 'quality',
    title: 'For quality',
    ids: ['test-table', 'inspection-plan', 'record-sheets', 'findings-report', 'change-report'],
  },
  {
    id: 'buyer',
    title: 'For the buyer',
    ids: ['parts-list', 'purchase-list', 'purchase-volumes', 'request-for-quotation', 'where-used'],
  },
  { id: 'exchange', title: 'For other programs', ids: ['vec', 'kbl'] },
]; // prettier-ignore

/** Documents by who needs them, in the order in which they are needed; those of nobody stand last. */
export const groupDocuments = (documents: readonly Exporter[] = EXPORTERS): readonly DocumentGroup[] => {
  const known = new Set(READERS.flatMap((r) => r.ids));
  const others = { id: 'others', title: 'Others', ids: documents.map((d) => d.id).filter((id) => !known.has(id)) };
  return [...READERS, others]
    .map(({ id, title, ids }) => ({
      id,
      title,
      documents: ids.flatMap((wanted) => documents.find((d) => d.id === wanted) ?? []),
    }))
    .filter((g) => g.documents.length > 0);
}; // prettier-ignore
