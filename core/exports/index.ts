import { buildSequence } from './build-sequence';
import { connectionTable } from './connection-table';
import { crimpSheets } from './crimp-sheets';
import { cutList } from './cut-list';
import { cutOuts } from './cut-outs';
import type { Exporter } from './exporter';
import { findingsReport } from './findings-report';
import { formboard } from './formboard';
import { kbl } from './kbl';
import { labels } from './labels';
import { lengthTable } from './length-table';
import { inspectionPlan } from './inspection-plan';
import { partsList } from './parts-list';
import { pinouts } from './pinouts';
import { purchaseList } from './purchase-list';
import { purchaseVolumes } from './purchase-volumes';
import { recordSheets } from './record-sheets';
import { requestForQuotation } from './request-for-quotation';
import { testTable } from './test-table';
import { vec } from './vec';
import { whereUsed } from './where-used';

/** The documents, in the order in which they are offered. */
export const EXPORTERS: readonly Exporter[] = [
  partsList,
  purchaseList,
  purchaseVolumes,
  requestForQuotation,
  whereUsed,
  connectionTable,
  lengthTable,
  formboard,
  pinouts,
  cutList,
  crimpSheets,
  labels,
  buildSequence,
  testTable,
  inspectionPlan,
  recordSheets,
  cutOuts,
  findingsReport,
  vec,
  kbl,
];
