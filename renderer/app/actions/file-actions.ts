import { EXPORTERS } from '@latchwork/core/exports/index';
import { exportChoices, exportDocument } from '../files/export-document';
import { importCatalogue } from '../files/import-catalogue';
import { openFile, reloadFromDisk, startNew } from '../files/open';
import { save, saveAs } from '../files/save';
import { printShown } from '../../panels/papers/print-shown';
import { compareWithOther } from '../../panels/compare/ask-other-state';
import { openRelease } from '../../panels/release/release-dialog';
import { isDirty } from '../store';
import type { Action } from './action';

export const FILE_ACTIONS: readonly Action[] = [
  {
    id: 'file.new',
    label: 'New project',
    group: 'File',
    keys: '$mod+Alt+KeyN',
    whileTyping: true,
    run: startNew,
  },
  { id: 'file.open', label: 'Open …', group: 'File', keys: '$mod+KeyO', whileTyping: true, run: openFile },
  {
    id: 'file.save',
    label: 'Save',
    group: 'File',
    keys: '$mod+KeyS',
    whileTyping: true,
    enabled: (s) => s.document.token === null || isDirty(s) || s.document.changedOnDisk,
    run: save,
  },
  {
    id: 'file.save-as',
    label: 'Save as …',
    group: 'File',
    keys: '$mod+Shift+KeyS',
    whileTyping: true,
    run: saveAs,
  },
  {
    id: 'file.reload',
    label: 'Read again from disk',
    group: 'File',
    enabled: (s) => s.document.token !== null,
    run: reloadFromDisk,
  },
  { id: 'file.compare', label: 'Compare with another state …', group: 'File', run: compareWithOther },
  {
    id: 'file.release',
    label: 'Release this revision …',
    group: 'File',
    enabled: (s) => s.history.project.revisions.length > 0,
    run: openRelease,
  },
  { id: 'file.close', label: 'Close project', group: 'File', run: startNew },
  { id: 'file.add-catalogue', label: 'Add a catalogue …', group: 'File', run: importCatalogue },
  {
    id: 'file.print',
    label: 'Print the shown document …',
    group: 'File',
    keys: '$mod+KeyP',
    whileTyping: true,
    enabled: (s) => s.view.page === 'shop-papers',
    run: printShown,
  },
  ...EXPORTERS.flatMap((exporter) =>
    exportChoices(exporter).map((choice) => ({
      id: `export.${exporter.id}.${choice.id}`,
      label: `Export ${exporter.title.toLowerCase()} as ${choice.code} …`,
      group: 'File' as const,
      run: () => exportDocument(exporter, choice),
    })),
  ),
];
