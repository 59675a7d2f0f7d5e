import { ChevronRight } from 'lucide-react';
import {
  Button as AriaButton,
  Menu,
  MenuItem,
  MenuTrigger,
  Popover,
  Separator,
  SubmenuTrigger,
} from 'react-aria-components';
import { ActionItem } from './action-item';
import { ACTIONS } from './actions/index';
import { dateText } from './files/ask-listed-file';
import { openDemo, openRecent } from './files/open';
import { useHost } from './host';

const BEFORE = ['file.new', 'file.open'];
const SAVING = ['file.save', 'file.save-as', 'file.reload', 'file.compare', 'file.release'];
const AFTER = ['file.add-catalogue', 'file.close'];

/** New, open, save and export: the file's own menu. */
export function FileMenu() {
  const demos = useHost((s) => s.demos);
  const recent = useHost((s) => s.recent);
  return (
    <MenuTrigger>
      <AriaButton className="button" data-look="plain">
        File
      </AriaButton>
      <Popover className="popover" placement="bottom start">
        <Menu className="menu" aria-label="File">
          {itemsOf(BEFORE)}
          <SubmenuTrigger>
            <SubmenuItem id="demos" text="New from demo" disabled={demos.length === 0} />
            <Popover className="popover">
              <Menu className="menu" aria-label="Demos">
                {demos.map((d) => (
                  <MenuItem
                    key={d.demo}
                    id={d.demo}
                    className="menu-item"
                    textValue={d.title}
                    onAction={() => void openDemo(d.demo)}
                  >
                    <span>{d.title}</span>
                    <span className="second">{d.supplementaryTitle}</span>
                  </MenuItem>
                ))}
              </Menu>
            </Popover>
          </SubmenuTrigger>
          <SubmenuTrigger>
            <SubmenuItem id="recent" text="Open recent" disabled={recent.length === 0} />
            <Popover className="popover">
              <Menu className="menu" aria-label="Recent projects">
                {recent.map((r) => (
                  <MenuItem
                    key={r.id}
                    id={r.id}
                    className="menu-item"
                    textValue={r.name}
                    onAction={() => void openRecent(r.id)}
                  >
                    <span>{r.name}</span>
                    <span className="second mono">{dateText(r.opened)}</span>
                  </MenuItem>
                ))}
              </Menu>
            </Popover>
          </SubmenuTrigger>
          <Separator className="menu-separator" />
          {itemsOf(SAVING)}
          <Separator className="menu-separator" />
          <SubmenuTrigger>
            <SubmenuItem id="export" text="Export" />
            <Popover className="popover">
              <Menu className="menu" aria-label="Export">
                {ACTIONS.filter((a) => a.id.startsWith('export.')).map((a) => (
                  <ActionItem key={a.id} action={a} />
                ))}
              </Menu>
            </Popover>
          </SubmenuTrigger>
          <Separator className="menu-separator" />
          {itemsOf(AFTER)}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}

const itemsOf = (ids: readonly string[]) =>
  ids
    .flatMap((id) => ACTIONS.filter((a) => a.id === id))
    .map((action) => <ActionItem key={action.id} action={action} />);

function SubmenuItem({ id, text, disabled = false }: { id: string; text: string; disabled?: boolean }) {
  return (
    <MenuItem id={id} className="menu-item" textValue={text} isDisabled={disabled}>
      <span>{text}</span>
      <ChevronRight size={14} aria-hidden />
    </MenuItem>
  );
}
