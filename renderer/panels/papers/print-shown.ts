import { EXPORTERS } from '@latchwork/core/exports/index';
import { documentInput } from '../../app/files/document-input';
import { say } from '../../ui/toasts';
import { papersView } from './papers-view';
import { printDocuments } from './print-dialog';

/** Prints the document that the Shop papers page shows. */
export function printShown(): Promise<void> | void {
  const { chosen, options } = papersView.getState();
  const exporter = EXPORTERS.find((e) => e.id === chosen);
  if (!exporter?.paper)
    return say('plain', `${exporter?.title ?? 'This document'} is not made as pages. Export it as a spreadsheet and print that.`);
  return printDocuments([{ exporter, input: documentInput(options[chosen] ?? {}) }]);
} // prettier-ignore
