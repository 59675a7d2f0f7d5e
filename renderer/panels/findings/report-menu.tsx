import { findingsReport } from '@latchwork/core/exports/findings-report';
import { ExportMenu } from '../export-menu';

/** The findings report as a file. */
export const ReportMenu = () => <ExportMenu document={findingsReport} label="Report" look="plain" />;
