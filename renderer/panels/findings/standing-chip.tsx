import type { Standing, StandingState } from '@latchwork/core/decisions/standing';
import { judgedText } from '@latchwork/core/decisions/standing-words';

const TONES: Readonly<Record<StandingState, 'good' | 'critical' | 'unknown' | undefined>> = {
  open: undefined,
  accepted: 'good',
  expired: 'critical',
  exhausted: 'critical',
  reopened: 'critical',
};

/** The standing of a finding in a word; what it comes from on hover. */
export const StandingChip = ({ standing }: { standing: Standing }) => (
  <span
    className="chip"
    data-tone={TONES[standing.state]}
    title={standing.by ? judgedText(standing.by) : undefined}
  >
    {standing.state}
  </span>
);
