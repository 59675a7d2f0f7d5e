import { Command } from 'cmdk';
import { Dialog, Modal, ModalOverlay } from 'react-aria-components';
import type { ReactNode } from 'react';
import { type Action, keysText } from './actions/action';
import { ACTIONS } from './actions/index';
import { openOverlay, useOverlay } from './overlays';
import './palette.css';
import { useApp } from './store';

/** Every word that was typed stands in the item; letters strewn over it are no match. Words that begin there weigh more. */
export function wordsIn(value: string, search: string): number {
  const text = ` ${value.toLowerCase()}`;
  const words = search.toLowerCase().split(/\s+/).filter(Boolean);
  if (!words.every((word) => text.includes(word))) return 0;
  return words.every((word) => text.includes(` ${word}`)) ? 1 : 0.5;
}

/** A search line over a list, in a window of its own. */
export function CommandWindow({
  label,
  placeholder,
  children,
  shouldFilter = true,
  onSearch,
}: {
  label: string;
  placeholder: string;
  children: ReactNode;
  shouldFilter?: boolean;
  onSearch?: (text: string) => void;
}) {
  return (
    <ModalOverlay
      className="dialog-back"
      isOpen
      isDismissable
      onOpenChange={(open) => !open && openOverlay(null)}
    >
      <Modal className="dialog-box">
        <Dialog className="dialog" aria-label={label}>
          <Command className="palette" label={label} shouldFilter={shouldFilter} filter={wordsIn} loop>
            <Command.Input
              className="palette-input"
              placeholder={placeholder}
              autoFocus
              onValueChange={onSearch}
            />
            <Command.List className="palette-list" label={label}>
              {children}
            </Command.List>
          </Command>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

/** Every action with its keys. */
export function Palette() {
  const open = useOverlay() === 'palette';
  if (!open) return null;
  const groups = [...new Set(ACTIONS.map((a) => a.group))];
  return (
    <CommandWindow label="All actions" placeholder="What do you want to do?">
      <Command.Empty className="palette-empty">No action has these words.</Command.Empty>
      {groups.map((group) => (
        <Command.Group key={group} heading={group}>
          {ACTIONS.filter((a) => a.group === group).map((action) => (
            <PaletteItem key={action.id} action={action} />
          ))}
        </Command.Group>
      ))}
    </CommandWindow>
  );
}

function PaletteItem({ action }: { action: Action }) {
  const enabled = useApp((s) => action.enabled?.(s) ?? true);
  return (
    <Command.Item
      value={`${action.label} ${action.id}`}
      disabled={!enabled}
      onSelect={() => {
        openOverlay(null);
        void action.run();
      }}
    >
      <span>{action.label}</span>
      {action.keys ? <kbd>{keysText(action.keys)}</kbd> : null}
    </Command.Item>
  );
}
