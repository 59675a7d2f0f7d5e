import { SlidersHorizontal } from 'lucide-react';
import { useMemo, useState } from 'react';
import { PART_KIND_NAMES, isMatingHalf, type Part, type PartKind } from '@latchwork/core/model/parts/part';
import { useApp } from '../../app/store';
import { Button } from '../../ui/button';
import { setDraggedPart } from '../../ui/part-drag';
import { VirtualList } from '../../ui/virtual-list';
import { PanelHead } from '../panel-head';
import { PartLine } from './part-line';
import { type FilterName, NO_FILTER, type PartFilter, choicesFor, findParts } from './part-search';
import './shelf.css';
import { useAllParts } from './use-all-parts';

const FILTER_NAMES: Readonly<Record<FilterName, string>> = {
  kind: 'Kind',
  family: 'Family',
  bodyForm: 'Body form',
  contactKind: 'Contacts',
  mounting: 'Mounting',
  ways: 'Ways',
};

/** What a click on the sheet can place by itself; other parts are dropped on the object they belong to. */
const placeable = (part: Part): boolean => isMatingHalf(part) || part.kind === 'splice';

/** The parts that can be placed: search, narrow down, drag out. With `kinds` only those that have a place on the sheet. */
export function Shelf({ kinds }: { kinds?: ReadonlySet<PartKind> }) {
  const all = useAllParts();
  const parts = useMemo(() => (kinds ? all.filter((p) => kinds.has(p.kind)) : all), [all, kinds]);
  const placing = useApp((s) => s.view.placing);
  const setView = useApp((s) => s.setView);
  const [filter, setFilter] = useState<PartFilter>(NO_FILTER);
  const [chosen, setChosen] = useState<string | null>(null);
  const found = useMemo(() => findParts(parts, filter), [parts, filter]);
  const arm = (part: Part): void =>
    setView({ placing: placeable(part) && placing !== part.id ? part.id : null });
  const armed = placing === null ? undefined : parts.find((p) => p.id === placing);

  return (
    <section className="column shelf" aria-label="Parts shelf">
      <PanelHead id="shelf" title="Parts shelf" />
      <ShelfFilters parts={parts} filter={filter} change={setFilter} />
      <p className="shelf-count" role="status">
        {armed ? (
          <>
            Click on the sheet to place <span className="mono">{armed.partNumber}</span>, Esc to stop
          </>
        ) : (
          `${found.length} of ${parts.length} parts`
        )}
      </p>
      {parts.length === 0 ? (
        <p className="shelf-empty second">No catalogue is loaded. Add one from the File menu.</p>
      ) : found.length === 0 ? (
        <div className="shelf-empty">
          <p className="second">No part fits all of this.</p>
          <Button onClick={() => setFilter(NO_FILTER)}>Show all parts</Button>
        </div>
      ) : (
        <VirtualList
          label="Parts"
          items={found}
          keyOf={(p) => p.id}
          heightOf={() => 48}
          isSelected={(p) => p.id === (placing ?? chosen)}
          onChoose={(p) => setChosen(p.id)}
          onAct={arm}
          onDragStart={(p, event) => setDraggedPart(event.dataTransfer, p)}
          titleOf={(p) =>
            `${p.partNumber} · ${p.maker}\n${p.description}\nDrag it to the sheet${placeable(p) ? ', or press Enter and click there' : ''}`
          }
          render={(p) => <PartLine part={p} />}
        />
      )}
    </section>
  );
}

function ShelfFilters({
  parts,
  filter,
  change,
}: {
  parts: readonly Part[];
  filter: PartFilter;
  change: (filter: PartFilter) => void;
}) {
  const [open, setOpen] = useState(true);
  const used = (Object.keys(FILTER_NAMES) as FilterName[]).filter((name) => filter[name] !== '').length;
  return (
    <div className="shelf-filters">
      <div className="input-row">
        <input
          className="input"
          type="search"
          placeholder="Part number or words"
          aria-label="Search parts"
          value={filter.text}
          onChange={(e) => change({ ...filter, text: e.target.value })}
        />
        <Button look="icon" aria-label="Filters" aria-pressed={open} onClick={() => setOpen(!open)}>
          <SlidersHorizontal size={14} aria-hidden />
        </Button>
      </div>
      {open ? (
        <div className="shelf-choices">
          {(Object.keys(FILTER_NAMES) as FilterName[]).map((name) => (
            <select
              key={name}
              className="input"
              aria-label={FILTER_NAMES[name]}
              data-set={filter[name] ? '' : undefined}
              value={filter[name]}
              onChange={(e) => change({ ...filter, [name]: e.target.value })}
            >
              <option value="">{FILTER_NAMES[name]}</option>
              {choicesFor(parts, filter, name).map((value) => (
                <option key={value} value={value}>
                  {choiceText(name, value)}
                </option>
              ))}
            </select>
          ))}
          {used ? (
            <Button
              look="link"
              className="shelf-clear"
              onClick={() => change({ ...NO_FILTER, text: filter.text })}
            >
              Clear {used === 1 ? 'filter' : `${used} filters`}
            </Button>
          ) : null}
        </div>
      ) : null}
    </div>
  );
}

function choiceText(name: FilterName, value: string): string {
  if (name === 'kind') return (PART_KIND_NAMES as Record<string, string>)[value] ?? value;
  return name === 'ways' ? `${value} ways` : value;
}
