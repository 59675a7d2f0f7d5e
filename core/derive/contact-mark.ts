import type { CavityUse } from './harness';

/** What stands in a cavity, by shape alone. */
export type ContactMark = 'pin' | 'socket' | 'plugged' | 'blocked' | 'empty' | 'unloaded';

/** The mark of a cavity on a drawn face, on the screen and on paper. */
export function contactMarkOf(use: CavityUse): ContactMark {
  const { part } = use.connector;
  if (use.state === 'blocked' || part?.keyPositions?.includes(use.cavity)) return 'blocked';
  if (use.state === 'plugged') return 'plugged';
  if (use.state === 'empty') return 'empty';
  // A header comes with its contacts in it.
  const kind =
    part?.kind === 'header' || use.connector.connector.supply === 'equipment'
      ? part?.contactKind
      : (use.ends[0]?.end.contactPart ?? use.spare)?.contactKind;
  return kind ?? 'unloaded';
}
