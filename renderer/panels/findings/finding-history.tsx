import type { Finding } from '@latchwork/core/rules/finding';
import { useSeen } from '../../app/seen-findings';

const clock = (moment: string): string => new Date(moment).toTimeString().slice(0, 5);

/** Since when a finding is there, as far as this window has seen it. */
export function FindingHistory({ finding }: { finding: Finding }) {
  const seen = useSeen(finding.key);
  if (!seen) return null;
  return (
    <section aria-label="History">
      <h3>History</h3>
      <p>
        {seen.fromStart
          ? `There when the file was opened at ${clock(seen.first)}; it may be older.`
          : `First seen at ${clock(seen.first)}.`}{' '}
        {seen.changed ? `Changed at ${clock(seen.changed)}.` : 'Not changed since.'}
      </p>
      <p className="second">
        Seen by this window since the file was opened. The file keeps decisions, no history of findings.
      </p>
    </section>
  );
}
