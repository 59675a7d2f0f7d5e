import type { Finding } from '@latchwork/core/rules/finding';
import { useSeen } from '../../app/seen-findings';
import { today } from '../../app/today';

/** "at 14:05" today, "on 2026-03-01 at 14:05" otherwise. */
function momentText(moment: string): string {
  const at = new Date(moment);
  const day = today(at);
  const clock = `at ${at.toTimeString().slice(0, 5)}`;
  return day === today() ? clock : `on ${day} ${clock}`;
}

/** Since when a finding is there, as far as this machine has seen it. */
export function FindingHistory({ finding }: { finding: Finding }) {
  const seen = useSeen(finding.key);
  if (!seen) return null;
  return (
    <section aria-label="History">
      <h3>History</h3>
      <p>
        {seen.fromStart
          ? `There when the file was opened ${momentText(seen.first)}; it may be older.`
          : `First seen ${momentText(seen.first)}.`}{' '}
        {seen.changed ? `Changed ${momentText(seen.changed)}.` : 'Not changed since.'}
      </p>
      <p className="second">
        As this machine has seen it. The file keeps decisions, no history of findings; elsewhere the history
        begins anew.
      </p>
    </section>
  );
}
