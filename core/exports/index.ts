import { connectionTable } from './connection-table';
import type { Exporter } from './exporter';
import { findingsReport } from './findings-report';
import { partsList } from './parts-list';
import { purchaseList } from './purchase-list';
import { purchaseVolumes } from './purchase-volumes';
import { whereUsed } from './where-used';

/** The documents, in the order in which they are offered. */
export const EXPORTERS: readonly Exporter[] = [
  partsList,
  purchaseList,
  purchaseVolumes,
  whereUsed,
  connectionTable,
  findingsReport,
];
