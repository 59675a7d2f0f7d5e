import { useVirtualizer } from '@tanstack/react-virtual';
import {
  type DragEvent,
  type KeyboardEvent,
  type ReactNode,
  useEffect,
  useId,
  useRef,
  useState,
} from 'react';
import './virtual-list.css';

export interface VirtualListProps<T> {
  readonly label: string;
  readonly items: readonly T[];
  readonly keyOf: (item: T) => string;
  readonly heightOf: (item: T) => number;
  readonly render: (item: T) => ReactNode;
  /** A heading between items: shown, never chosen. */
  readonly isHeading?: (item: T) => boolean;
  readonly isSelected?: (item: T) => boolean;
  /** On click and while moving with the arrow keys. */
  readonly onChoose?: (item: T) => void;
  /** On Enter and double click. */
  readonly onAct?: (item: T) => void;
  readonly onDragStart?: (item: T, event: DragEvent<HTMLElement>) => void;
  readonly titleOf?: (item: T) => string | undefined;
}

/** A list of any length: only the rows in view exist. One stop of the Tab key; arrows move within. */
export function VirtualList<T>({
  label,
  items,
  keyOf,
  heightOf,
  render,
  isHeading,
  isSelected,
  onChoose,
  onAct,
  onDragStart,
  titleOf,
}: VirtualListProps<T>) {
  const id = useId();
  const scroller = useRef<HTMLDivElement>(null);
  const [activeKey, setActiveKey] = useState<string | null>(null);
  const isOption = (item: T | undefined): item is T => item !== undefined && !isHeading?.(item);
  const found = items.findIndex((item) => isOption(item) && keyOf(item) === activeKey);
  const selected = isSelected ? items.findIndex((item) => isOption(item) && isSelected(item)) : -1;
  const active = found >= 0 ? found : selected >= 0 ? selected : items.findIndex((item) => isOption(item));
  const virtual = useVirtualizer({
    count: items.length,
    getScrollElement: () => scroller.current,
    estimateSize: (i) => heightOf(items[i] as T),
    getItemKey: (i) => keyOf(items[i] as T),
    overscan: 8,
  });
  useEffect(() => {
    if (selected >= 0) virtual.scrollToIndex(selected, { align: 'auto' });
    // Only when another row becomes the selected one.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [selected]);

  const go = (to: number, step: 1 | -1): void => {
    let i = Math.max(0, Math.min(items.length - 1, to));
    while (items[i] !== undefined && !isOption(items[i])) i += step;
    const item = items[i];
    if (!isOption(item)) return;
    setActiveKey(keyOf(item));
    virtual.scrollToIndex(i, { align: 'auto' });
    onChoose?.(item);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const moves: Record<string, readonly [number, 1 | -1]> = {
      ArrowDown: [active + 1, 1],
      ArrowUp: [active - 1, -1],
      PageDown: [active + 10, 1],
      PageUp: [active - 10, -1],
      Home: [0, 1],
      End: [items.length - 1, -1],
    };
    const move = moves[event.key];
    const item = items[active];
    if (move) go(...move);
    else if (event.key === 'Enter' && isOption(item)) (onAct ?? onChoose)?.(item);
    else return;
    event.preventDefault();
  };

  return (
    <div
      ref={scroller}
      className="virtual-list"
      role="listbox"
      aria-label={label}
      tabIndex={0}
      aria-activedescendant={active >= 0 ? `${id}-${active}` : undefined}
      onKeyDown={onKeyDown}
    >
      <div role="presentation" style={{ height: virtual.getTotalSize(), position: 'relative' }}>
        {virtual.getVirtualItems().map((row) => {
          const item = items[row.index] as T;
          const place = {
            position: 'absolute',
            top: 0,
            left: 0,
            right: 0,
            height: row.size,
            transform: `translateY(${row.start}px)`,
          } as const;
          if (!isOption(item))
            return (
              <div key={row.key} role="presentation" className="virtual-heading" style={place}>
                {render(item)}
              </div>
            );
          return (
            <div
              key={row.key}
              id={`${id}-${row.index}`}
              role="option"
              className="virtual-row"
              aria-selected={isSelected?.(item) ?? false}
              aria-setsize={items.length}
              aria-posinset={row.index + 1}
              data-active={row.index === active ? '' : undefined}
              draggable={onDragStart !== undefined}
              title={titleOf?.(item)}
              style={place}
              onClick={() => {
                setActiveKey(keyOf(item));
                onChoose?.(item);
              }}
              onDoubleClick={() => onAct?.(item)}
              onDragStart={(event) => onDragStart?.(item, event)}
            >
              {render(item)}
            </div>
          );
        })}
      </div>
    </div>
  );
}
