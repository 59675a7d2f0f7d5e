import { EXPORTERS } from '@latchwork/core/exports/index';
import { exportPdf } from '../files/export-pdf';
import { exportTable } from '../files/export-table';
import { exportXml } from '../files/export-xml';
import { importCatalogue } from '../files/import-catalogue';
import { openFile, reloadFromDisk, startNew } from '../files/open';
import { save, saveAs } from '../files/save';
import { appStore, isDirty } from '../store';
import { today } from '../today';
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
  { id: 'file.close', label: 'Close project', group: 'File', run: startNew },
  { id: 'file.add-catalogue', label: 'Add a catalogue …', group: 'File', run: importCatalogue },
  ...EXPORTERS.flatMap((exporter) =>
    (['csv', 'xlsx', 'json'] as const).map((format) => ({
      id: `export.${exporter.id}.${format}`,
      label: `Export ${exporter.title.toLowerCase()} as ${format.toUpperCase()} …`,
      group: 'File' as const,
      run: () => {
        const { harness, check } = appStore.getState();
        return exportTable(exporter.table({ harness, check, date: today() }), format);
      },
    })),
  ),
  ...EXPORTERS.filter((exporter) => exporter.paper).map((exporter) => ({
    id: `export.${exporter.id}.pdf`,
    label: `Export ${exporter.title.toLowerCase()} as PDF …`,
    group: 'File' as const,
    run: () => exportPdf(exporter),
  })),
  ...EXPORTERS.filter((exporter) => exporter.xml).map((exporter) => ({
    id: `export.${exporter.id}.xml`,
    label: `Export ${exporter.title.toLowerCase()} as ${exporter.xml?.standard ?? 'XML'} …`,
    group: 'File' as const,
    run: () => exportXml(exporter),
  })),
];
