import { type KeyboardEvent, useState } from 'react';

export interface GridPlace {
  readonly row: number;
  readonly column: number;
}

export interface GridKeys {
  readonly at: GridPlace;
  readonly moveTo: (place: GridPlace) => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

const PAGE = 12;

/** Moving through a grid by keyboard, as the ARIA practices have it. Row -1 is the heading. */
export function useGridKeys(
  rows: number,
  columns: number,
  onRow: (row: number, add: boolean) => void,
  onHeading: (column: number) => void,
): GridKeys {
  const [at, setAt] = useState<GridPlace>({ row: 0, column: 0 });
  const moveTo = ({ row, column }: GridPlace): void =>
    setAt({ row: Math.max(-1, Math.min(rows - 1, row)), column: Math.max(0, Math.min(columns - 1, column)) });

  const onKeyDown = (event: KeyboardEvent): void => {
    const far = event.ctrlKey || event.metaKey;
    const moves: Record<string, GridPlace> = {
      ArrowUp: { row: at.row - 1, column: at.column },
      ArrowDown: { row: at.row + 1, column: at.column },
      ArrowLeft: { row: at.row, column: at.column - 1 },
      ArrowRight: { row: at.row, column: at.column + 1 },
      PageUp: { row: Math.max(0, at.row - PAGE), column: at.column },
      PageDown: { row: at.row + PAGE, column: at.column },
      Home: { row: far ? 0 : at.row, column: 0 },
      End: { row: far ? rows - 1 : at.row, column: columns - 1 },
    };
    const move = moves[event.key];
    if (move) moveTo(move);
    else if (event.key === 'Enter' || event.key === ' ') {
      if (at.row < 0) onHeading(at.column);
      else onRow(at.row, far);
    } else return;
    event.preventDefault();
  };
  return {
    at: { row: Math.min(at.row, rows - 1), column: Math.min(at.column, columns - 1) },
    moveTo,
    onKeyDown,
  };
}
