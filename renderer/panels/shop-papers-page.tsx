import { useDeferredValue } from 'react';
import type { Exporter } from '@latchwork/core/exports/exporter';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { JobCard } from './papers/job-card';
import { PaperList } from './papers/paper-list';
import { PaperView } from './papers/paper-view';
import { usePapersView } from './papers/papers-view';
import { PickedBar } from './papers/picked-bar';
import { PrintSheets } from './papers/print-sheets';
import { useSurvey } from './papers/use-survey';
import './shop-papers.css';
import { useDocumentInput } from './use-document-input';

/** The documents of the harness: look at them as pages or rows, print them, and export one or many. */
export function ShopPapersPage() {
  const chosen = usePapersView((v) => v.chosen);
  const options = usePapersView((v) => v.options);
  // The list answers at once; the document follows when it is made.
  const shown = useDeferredValue(chosen);
  const exporter = EXPORTERS.find((e) => e.id === shown) ?? (EXPORTERS[0] as Exporter);
  const input = useDocumentInput();
  const survey = useSurvey(input, options);
  return (
    <div className="papers">
      <div className="papers-list">
        <PaperList survey={survey} />
        <JobCard />
        <PickedBar input={input} />
      </div>
      <PaperView key={exporter.id} exporter={exporter} input={input} state={survey[exporter.id]} />
      <PrintSheets />
    </div>
  );
}
