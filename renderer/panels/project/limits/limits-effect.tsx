import { useDeferredValue, useMemo } from 'react';
import type { LimitSet } from '@latchwork/core/model/limit-set';
import { useApp } from '../../../app/store';
import { FindingChangeList } from '../../findings/finding-change-list';
import { previewLimitSet } from '../preview-limit-set';

/** Which findings would go, come and change by the draft, before it is applied. */
export function LimitsEffect({ draft, isDirty }: { draft: LimitSet; isDirty: boolean }) {
  const check = useApp((s) => s.check);
  const tried = useDeferredValue(draft);
  const changes = useMemo(() => (isDirty ? previewLimitSet(check, tried) : null), [check, tried, isDirty]);
  return (
    <section className="limits-effect" aria-label="What the draft changes" aria-busy={tried !== draft}>
      <h3>What the draft changes</h3>
      {changes ? (
        <FindingChangeList changes={changes} />
      ) : (
        <p className="second">
          Nothing yet. Change a value, or draft from another set, and see here which findings go, come and
          change.
        </p>
      )}
    </section>
  );
}
