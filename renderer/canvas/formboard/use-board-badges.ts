import { useMemo } from 'react';
import { useStore } from 'zustand';
import { uncovered } from '@latchwork/core/decisions/standing';
import type { AppStore } from '../../app/store';
import { useToday } from '../../app/today';
import type { Badge } from '../scene/badges';
import { placeBoardBadges } from './scene/board-badges';
import type { BoardScene } from '@latchwork/core/derive/formboard/scene/board-items';

/** The findings of now on the board. They come a moment after an edit; until then those of before are shown. */
export function useBoardBadges(store: AppStore, scene: BoardScene): readonly Badge[] {
  const check = useStore(store, (s) => s.check);
  const shown = useStore(store, (s) => s.view.findingsShown);
  const day = useToday();
  return useMemo(() => {
    // What a decision in force covers has had its answer; what is critical cannot be hidden.
    const faults = uncovered(check.harness.project, check.findings, day).filter((f) => !f.open);
    return placeBoardBadges(shown ? faults : faults.filter((f) => f.severity === 'critical'), scene);
  }, [check, day, shown, scene]);
}
