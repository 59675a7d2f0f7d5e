import { useMemo } from 'react';
import { releaseObstacles } from '@latchwork/core/decisions/release-obstacles';
import { useApp } from '../../app/store';
import { useToday } from '../../app/today';
import { Button } from '../../ui/button';
import { SeverityMark } from '../../ui/severity-mark';

/** What keeps the project from being released: critical findings that no decision covers. Silent where nothing was found. */
export function ReleaseLine({ showBlocking }: { showBlocking: () => void }) {
  const check = useApp((s) => s.check);
  const day = useToday();
  const { blocking, open, accepted } = useMemo(
    () => releaseObstacles(check.harness.project, check.findings, day),
    [check, day],
  );
  if (check.findings.length === 0) return null;
  const others = `${open.length} open, ${accepted.length} accepted on record`;
  return (
    <p className="release-line" data-blocked={blocking.length > 0 ? '' : undefined}>
      {blocking.length > 0 ? (
        <>
          <SeverityMark kind="critical" size={12} />
          <span>
            A release is blocked by {blocking.length} critical{' '}
            {blocking.length === 1 ? 'finding' : 'findings'}.{' '}
            <span className="second">Others: {others}.</span>
          </span>
          <Button look="link" onClick={showBlocking}>
            Show
          </Button>
        </>
      ) : (
        <span>No critical finding blocks a release; {others}.</span>
      )}
    </p>
  );
}
