import { connectionTable } from './connection-table';
import type { Exporter } from './exporter';
import { findingsReport } from './findings-report';
import { partsList } from './parts-list';

/** The documents, in the order in which they are offered. */
export const EXPORTERS: readonly Exporter[] = [partsList, connectionTable, findingsReport];
