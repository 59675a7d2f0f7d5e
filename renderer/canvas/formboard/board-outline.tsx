import { useMemo, type ReactNode } from 'react';
import { useStore } from 'zustand';
import { lengthText } from '@latchwork/core/model/length-text';
import { compareNatural } from '@latchwork/core/base/stable-order';
import type { AppStore } from '../../app/store';
import type { BoardScene } from './board-scene';

/** The formboard as a list for those who do not see it: nodes with their connectors and the segments that leave them. */
export function BoardOutline({ store, scene }: { store: AppStore; scene: BoardScene }): ReactNode {
  const selection = useStore(store, (s) => s.view.selection);
  const unit = useStore(store, (s) => s.view.lengthUnit);
  const rows = useMemo(() => {
    const names = new Map(scene.nodes.map((n) => [n.node.id, n.node.designator]));
    return [...scene.nodes]
      .sort((a, b) => compareNatural(a.node.designator, b.node.designator))
      .map(({ node }) => {
        const here = scene.connectors
          .filter((c) => c.use.resolved.connector.node === node.id)
          .map((c) => c.use.resolved.connector.designator);
        const runs = scene.segments
          .filter(({ segment: s }) => s.from === node.id || s.to === node.id)
          .map(({ segment: s, lengthMm }) => {
            const other = names.get(s.from === node.id ? s.to : s.from) ?? '';
            return `${s.designator} to ${other}, ${lengthText(lengthMm, unit)}${s.lengthMm === undefined ? ' as drawn' : ''}`;
          });
        return { id: node.id, words: [node.designator, ...here, ...runs].join('; ') };
      });
  }, [scene, unit]);
  return (
    <ul
      className="sheet-hidden sheet-outline"
      role="listbox"
      aria-label="Nodes of the formboard"
      aria-multiselectable
    >
      {rows.map((r, i) => (
        <li
          key={r.id}
          role="option"
          aria-selected={selection.has(r.id)}
          tabIndex={i === 0 ? 0 : -1}
          onFocus={() => {
            if (!selection.has(r.id)) store.getState().select([r.id]);
          }}
          onKeyDown={(e) => {
            const next =
              e.key === 'ArrowDown'
                ? e.currentTarget.nextElementSibling
                : e.key === 'ArrowUp'
                  ? e.currentTarget.previousElementSibling
                  : null;
            if (!(next instanceof HTMLElement)) return;
            next.focus();
            e.preventDefault();
            e.stopPropagation();
          }}
        >
          {r.words}
        </li>
      ))}
    </ul>
  );
}
