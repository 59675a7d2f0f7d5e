import { useMemo } from 'react';
import { standingOf, standingsOf, type Standing } from '@latchwork/core/decisions/standing';
import type { Finding } from '@latchwork/core/rules/finding';
import { useApp } from '../../app/store';
import { useToday } from '../../app/today';

/** Where every finding stands today, by its key. */
export function useStandings(): ReadonlyMap<string, Standing> {
  const check = useApp((s) => s.check);
  const day = useToday();
  return useMemo(() => standingsOf(check.harness.project, check.findings, day), [check, day]);
}

export function useStanding(finding: Finding): Standing {
  const project = useApp((s) => s.check.harness.project);
  const day = useToday();
  return useMemo(() => standingOf(project, finding, day), [project, finding, day]);
}
