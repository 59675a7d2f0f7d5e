import type { Exporter } from '@latchwork/core/exports/exporter';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { callHost } from '../host';
import { appStore } from '../store';
import { today } from '../today';
import { exportAs } from './export-as';

/** Writes a document as pages to a file of the user's choice. The host draws them from the project as it is now. */
export const exportPdf = (document: Exporter): Promise<void> =>
  exportAs(document, '.pdf', (target) =>
    callHost('document:export-pdf', {
      document: document.id,
      text: serialiseProject(appStore.getState().history.project),
      date: today(),
      ...target,
    }),
  );
