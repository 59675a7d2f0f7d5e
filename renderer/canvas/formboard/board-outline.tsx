import { useMemo, type ReactNode } from 'react';
import { useStore } from 'zustand';
import { byId } from '@latchwork/core/base/by-id';
import { lengthText } from '@latchwork/core/model/length-text';
import { compareNatural } from '@latchwork/core/base/stable-order';
import { boardStops, thingsOnSegment } from '@latchwork/core/tools/formboard/board-walk';
import type { AppStore } from '../../app/store';
import type { LengthUnit } from './draw/lengths';
import { lengthWords } from './draw/lengths';
import type { BoardScene, BoardSegment } from '@latchwork/core/derive/formboard/scene/board-items';

/** The formboard as a list for those who do not see it: nodes with what stands there, segments with length and what lies on them. */
export function BoardOutline({ store, scene }: { store: AppStore; scene: BoardScene }): ReactNode {
  const selection = useStore(store, (s) => s.view.selection);
  const unit = useStore(store, (s) => s.view.lengthUnit);
  const rows = useMemo(() => boardRows(scene, unit), [scene, unit]);
  return (
    <ul
      className="sheet-hidden sheet-outline"
      role="listbox"
      aria-label="What lies on the formboard"
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

/** One row for each stop of the walk, in its order. */
export function boardRows(
  scene: BoardScene,
  unit: LengthUnit,
): readonly { readonly id: string; readonly words: string }[] {
  return boardStops(scene.harness).map(({ key, text }) => ({
    id: key,
    words: describeOnBoard(scene, key, unit) ?? text,
  }));
}

/** Words for an object of the board, null for what has no more to tell than its name. */
export function describeOnBoard(scene: BoardScene, id: string, unit: LengthUnit): string | null {
  const node = scene.nodeById.get(id);
  if (node) return describeNode(scene, id, node.node.designator, unit);
  const s = scene.segmentById.get(id);
  if (s) return describeSegment(scene, s, unit);
  const thing = scene.things.find((t) => t.id === id);
  const run = thing && scene.segmentById.get(thing.segment);
  if (thing && run)
    return `${thing.kind} ${thing.name || (thing.part?.partNumber ?? '')} on ${run.segment.designator} at ${lengthText(thing.atMm, unit)}`;
  const covering = scene.coverings.find((c) => c.id === id)?.use;
  if (!covering) return null;
  const { from, to } = covering.covering;
  const place = (station: typeof from): string =>
    `${scene.segmentById.get(station.segment)?.segment.designator ?? ''} ${lengthText(station.atMm, unit)}`;
  return `${covering.part?.form ?? 'covering'} ${covering.covering.designator ?? ''} from ${place(from)} to ${place(to)}, layer ${covering.covering.layer}`;
}

function describeNode(scene: BoardScene, id: string, name: string, unit: LengthUnit): string {
  const connectors = scene.connectors
    .filter((c) => c.node === id)
    .map((c) => c.use.resolved.connector.designator)
    .sort(compareNatural);
  const runs = (scene.segmentsAt.get(id) ?? []).map((s) => {
    const other = scene.nodeById.get(s.segment.from === id ? s.segment.to : s.segment.from);
    return `${s.segment.designator} to ${other?.node.designator ?? 'what is gone'}, ${lengthText(s.lengthMm, unit)}`;
  });
  return [`node ${name}`, ...connectors, ...runs].join('; ');
}

function describeSegment(scene: BoardScene, s: BoardSegment, unit: LengthUnit): string {
  const name = (id: string): string => byId(scene.harness.project.nodes).get(id)?.designator ?? '';
  const { first, more } = lengthWords(s, unit);
  const typed = s.segment.lengthMm !== undefined;
  const things = thingsOnSegment(scene.harness.project, s.id).map(
    (t) => `${t.text} at ${lengthText(t.atMm, unit)}`,
  );
  const wires = s.use?.wires.length ?? 0;
  return [
    `segment ${s.segment.designator} from ${name(s.segment.from)} to ${name(s.segment.to)}`,
    `${first.replace(/[()]/g, '')} ${typed ? 'typed' : 'as drawn'}${more ? `, ${more}` : ''}`,
    ...(s.segment.lengthLocked ? ['length locked'] : []),
    wires === 1 ? '1 wire' : `${wires} wires`,
    ...things,
  ].join('; ');
}
