import type { Severity } from '@latchwork/core/rules/finding';

/** What a finding is shown as: its severity, or that it could not be verified. */
export type MarkKind = Severity | 'unknown';

export const MARK_WORDS: Readonly<Record<MarkKind, string>> = {
  critical: 'critical',
  major: 'major',
  minor: 'minor',
  note: 'note',
  unknown: 'cannot verify',
};

/** Shapes on a field of 16 by 16, for this mark and for the sheet (Path2D). */
export const MARK_PATHS: Readonly<Record<Exclude<MarkKind, 'unknown'>, string>> = {
  critical: 'M4.6 0.8h6.8l3.8 3.8v6.8l-3.8 3.8H4.6L0.8 11.4V4.6z',
  major: 'M8 1.6 15.2 14.4H0.8z',
  minor: 'M8 0.8 15.2 8 8 15.2 0.8 8z',
  note: 'M8 4a4 4 0 1 0 0 8a4 4 0 1 0 0-8z',
};

/** The ring of "cannot verify" is open at the top right. */
export const UNKNOWN_RING = 'M12.4 3.2A6.5 6.5 0 1 0 14.4 7';

/** The shape of a severity; colour alone never tells. Say `label` where no word stands beside it. */
export function SeverityMark({ kind, size = 14, label }: { kind: MarkKind; size?: number; label?: string }) {
  const named = label === undefined ? { 'aria-hidden': true } : { role: 'img', 'aria-label': label };
  return (
    <svg
      {...named}
      className="severity-mark"
      data-kind={kind}
      width={size}
      height={size}
      viewBox="0 0 16 16"
      style={{ color: `var(--${kind})` }}
    >
      {kind === 'unknown' ? (
        <>
          <path d={UNKNOWN_RING} fill="none" stroke="currentColor" strokeWidth="1.6" />
          <text x="7.9" y="11.6" textAnchor="middle" fontSize="10" fontWeight="600" fill="currentColor">
            ?
          </text>
        </>
      ) : (
        <path d={MARK_PATHS[kind]} fill="currentColor" />
      )}
    </svg>
  );
}
