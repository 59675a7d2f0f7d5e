import { Download } from 'lucide-react';
import { Button as AriaButton, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components';
import type { DocumentOptions, Exporter } from '@latchwork/core/exports/exporter';
import { exportChoices, exportDocument } from '../app/files/export-document';

export interface ExportMenuProps {
  readonly document: Exporter;
  readonly options?: DocumentOptions | undefined;
  readonly label?: string;
  readonly look?: 'outline' | 'plain';
}

/** Offers a document in every format that it is made in. */
export function ExportMenu({ document, options, label = 'Export', look = 'outline' }: ExportMenuProps) {
  const choices = exportChoices(document, options);
  return (
    <MenuTrigger>
      <AriaButton className="button" data-look={look}>
        <Download size={14} aria-hidden />
        {label}
      </AriaButton>
      <Popover className="popover" placement="bottom end">
        <Menu
          className="menu"
          aria-label={`Export ${document.title.toLowerCase()} as`}
          onAction={(key) => {
            const chosen = choices.find((c) => c.id === key);
            if (chosen) void exportDocument(document, chosen, options);
          }}
        >
          {choices.map(({ id, name }) => (
            <MenuItem key={id} id={id} className="menu-item" textValue={name}>
              <span>{name}</span>
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
