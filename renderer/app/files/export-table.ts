import { withBaseline } from '@latchwork/core/exports/document-head';
import type { Table } from '@latchwork/core/exports/table';
import { baselineOf } from '@latchwork/core/model/baseline';
import { callHost } from '../host';
import { appStore } from '../store';
import { exportAs } from './export-as';

export const TABLE_FORMATS = ['csv', 'xlsx', 'json'] as const;
export type TableFormat = (typeof TABLE_FORMATS)[number];

/** Writes a document to a file of the user's choice. Always all its rows and columns, whatever the view shows. */
export const exportTable = (table: Table, format: TableFormat): Promise<void> =>
  exportAs(table, `.${format}`, (target) => {
    const whole = withBaseline(table, baselineOf(appStore.getState().history.project));
    return callHost('table:export', { table: whole, format, ...target });
  });
