import { Button as AriaButton, Menu, MenuItem, MenuTrigger, Popover, Separator } from 'react-aria-components';
import { type Action, type ActionGroup, keysText } from './actions/action';
import { ACTIONS } from './actions/index';
import { useApp } from './store';

/** An action as a line of a menu. */
export function ActionItem({ action }: { action: Action }) {
  const enabled = useApp((s) => action.enabled?.(s) ?? true);
  return (
    <MenuItem
      id={action.id}
      className="menu-item"
      textValue={action.label}
      isDisabled={!enabled}
      onAction={() => void action.run()}
    >
      <span>{action.label}</span>
      {action.keys ? <kbd>{keysText(action.keys)}</kbd> : null}
    </MenuItem>
  );
}

/** A menu with the actions of some groups. */
export function ActionMenu({ label, groups }: { label: string; groups: readonly ActionGroup[] }) {
  return (
    <MenuTrigger>
      <AriaButton className="button" data-look="plain">
        {label}
      </AriaButton>
      <Popover className="popover" placement="bottom start">
        <Menu className="menu" aria-label={label}>
          {groups.flatMap((group, i) => [
            ...(i > 0 ? [<Separator key={group} className="menu-separator" />] : []),
            ...ACTIONS.filter((a) => a.group === group).map((a) => <ActionItem key={a.id} action={a} />),
          ])}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
