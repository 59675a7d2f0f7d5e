import { Download } from 'lucide-react';
import { Button as AriaButton, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components';
import { findingsReport } from '@latchwork/core/exports/findings-report';
import { exportPdf } from '../../app/files/export-pdf';
import { exportTable, TABLE_FORMATS, type TableFormat } from '../../app/files/export-table';
import { appStore } from '../../app/store';
import { today } from '../../app/today';

const FORMATS = ['pdf', ...TABLE_FORMATS] as const;

/** The findings report as a file. */
export function ReportMenu() {
  return (
    <MenuTrigger>
      <AriaButton className="button" data-look="plain">
        <Download size={14} aria-hidden />
        Report
      </AriaButton>
      <Popover className="popover" placement="bottom end">
        <Menu
          className="menu"
          aria-label="Findings report as"
          onAction={(format) =>
            void (format === 'pdf'
              ? exportPdf(findingsReport)
              : exportTable(tableNow(), format as TableFormat))
          }
        >
          {FORMATS.map((format) => (
            <MenuItem key={format} id={format} className="menu-item" textValue={format.toUpperCase()}>
              <span>{format.toUpperCase()}</span>
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}

function tableNow() {
  const { check } = appStore.getState();
  return findingsReport.table({ harness: check.harness, check, date: today() });
}
