import { ArrowDown, ArrowUp } from 'lucide-react';
import type { PointerEvent } from 'react';
import type { Column } from '@latchwork/core/exports/table';
import type { Sorting } from './grid-rows';

export interface ColumnHeadProps {
  readonly column: Column;
  readonly index: number;
  readonly id: string;
  readonly width: number;
  readonly sorting: Sorting | null;
  readonly active: boolean;
  readonly sort: () => void;
  readonly resize: (width: number) => void;
}

const LEAST = 40;

/** A column's heading: a click sorts, its right edge resizes. */
export function ColumnHead({ column, index, id, width, sorting, active, sort, resize }: ColumnHeadProps) {
  const sorted = sorting?.key === column.key ? sorting : null;
  const startResize = (event: PointerEvent<HTMLElement>): void => {
    event.preventDefault();
    event.stopPropagation();
    const { currentTarget, pointerId, clientX } = event;
    currentTarget.setPointerCapture(pointerId);
    currentTarget.onpointermove = (e) => resize(Math.max(LEAST, width + e.clientX - clientX));
    currentTarget.onpointerup = () => {
      currentTarget.onpointermove = null;
      currentTarget.onpointerup = null;
    };
  };
  return (
    <div
      id={id}
      role="columnheader"
      className="grid-head"
      aria-colindex={index + 1}
      aria-sort={sorted ? (sorted.down ? 'descending' : 'ascending') : 'none'}
      data-align={column.align}
      data-active={active ? '' : undefined}
      style={{ width }}
      title={`${column.title}${column.unit ? `, in ${column.unit}` : ''}: sort`}
      onClick={sort}
    >
      <span className="grid-head-text">
        {column.title}
        {column.unit ? <span className="second"> {column.unit}</span> : null}
      </span>
      {sorted ? sorted.down ? <ArrowDown size={12} aria-hidden /> : <ArrowUp size={12} aria-hidden /> : null}
      <span
        className="grid-resize"
        aria-hidden
        onPointerDown={startResize}
        onClick={(e) => e.stopPropagation()}
      />
    </div>
  );
}
