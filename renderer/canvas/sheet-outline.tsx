import { memo, useMemo, type KeyboardEvent, type ReactNode } from 'react';
import { useStore } from 'zustand';
import { compareNatural } from '@latchwork/core/base/stable-order';
import type { ConnectorUse } from '@latchwork/core/derive/harness';
import type { AppStore } from '../app/store';
import { describeCavity, describeConnector, describeKey } from './describe';
import type { Interaction } from './interaction';

/**
 * The sheet as a tree for those who do not see it: connectors, and under the selected one its cavities with their wires.
 * It selects what the canvas selects, and the other way round.
 */
export function SheetOutline({
  store,
  interaction,
}: {
  store: AppStore;
  interaction: Interaction;
}): ReactNode {
  const connectors = useStore(store, (s) => s.harness.connectors);
  const selection = useStore(store, (s) => s.view.selection);
  const sorted = useMemo(
    () =>
      [...connectors].sort((a, b) =>
        compareNatural(a.resolved.connector.designator, b.resolved.connector.designator),
      ),
    [connectors],
  );
  const keys = new Set([...selection].map((k) => k.split(':')[0]));
  return (
    <ul
      className="sheet-hidden sheet-outline"
      role="tree"
      aria-label="Connectors on the sheet"
      onKeyDown={(e) => onKey(e, interaction)}
    >
      {sorted.map((use, i) => {
        const open = keys.has(use.resolved.connector.id);
        return (
          <OutlineConnector
            key={use.resolved.connector.id}
            use={use}
            open={open}
            selected={open ? selection : NONE}
            reachable={keys.size === 0 ? i === 0 : open}
            store={store}
          />
        );
      })}
    </ul>
  );
}

const NONE: ReadonlySet<string> = new Set();

interface ItemProps {
  readonly use: ConnectorUse;
  readonly open: boolean;
  readonly selected: ReadonlySet<string>;
  readonly reachable: boolean;
  readonly store: AppStore;
}

const OutlineConnector = memo(function OutlineConnector({
  use,
  open,
  selected,
  reachable,
  store,
}: ItemProps) {
  const { id } = use.resolved.connector;
  return (
    <li
      role="treeitem"
      aria-expanded={open}
      aria-selected={selected.has(id)}
      aria-label={describeConnector(use)}
      tabIndex={reachable ? 0 : -1}
      data-key={id}
      onFocus={(e) => {
        if (e.target === e.currentTarget && !selected.has(id)) store.getState().select([id]);
      }}
    >
      {open && (
        <ul role="group">
          {use.cavities.map((c) => {
            const key = `${id}:${c.cavity}`;
            return (
              <li
                key={key}
                role="treeitem"
                aria-selected={selected.has(key)}
                aria-label={describeCavity(c)}
                tabIndex={-1}
                data-key={key}
                onFocus={() => {
                  if (!selected.has(key)) store.getState().select([key]);
                }}
              />
            );
          })}
        </ul>
      )}
    </li>
  );
});

/** Arrows walk the tree; Enter on a cavity starts a wire, which then goes on at the sheet. */
function onKey(e: KeyboardEvent<HTMLUListElement>, interaction: Interaction): void {
  const items = [...e.currentTarget.querySelectorAll<HTMLElement>('[role="treeitem"]')];
  const at = items.indexOf(document.activeElement as HTMLElement);
  const step = e.key === 'ArrowDown' ? 1 : e.key === 'ArrowUp' ? -1 : e.key === 'ArrowRight' ? 1 : 0;
  if (e.key === 'Enter') {
    if (interaction.startKeyWire()) e.currentTarget.closest<HTMLElement>('.sheet-root')?.focus();
  } else if (e.key === 'ArrowLeft')
    items[at]?.parentElement?.closest<HTMLElement>('[role="treeitem"]')?.focus();
  else if (step !== 0) items[at + step]?.focus();
  else return;
  e.preventDefault();
  e.stopPropagation();
}

/** Says what is selected, and where a wire drawn from the keyboard points. */
export function SheetVoice({
  store,
  interaction,
  describe,
}: {
  store: AppStore;
  interaction: Interaction;
  /** Words of the sheet's own for an object; null where it has none. */
  describe?: (key: string) => string | null;
}): ReactNode {
  const harness = useStore(store, (s) => s.harness);
  const selection = useStore(store, (s) => s.view.selection);
  const keyWire = useStore(interaction.state, (s) => s.keyWire);
  const name = (p: { connector: string; cavity: string }): string =>
    `${harness.connectorById.get(p.connector)?.resolved.connector.designator ?? ''}:${p.cavity}`;
  const [only] = selection;
  const words = keyWire
    ? `Wire from ${name(keyWire.from)} to ${name(keyWire.to)}. Arrows choose, Enter draws it, Escape gives up.`
    : selection.size === 1 && only
      ? (describe?.(only) ?? describeKey(harness, only))
      : selection.size > 1
        ? `${selection.size} objects selected`
        : '';
  return (
    <p className="sheet-hidden" role="status">
      {words}
    </p>
  );
}
