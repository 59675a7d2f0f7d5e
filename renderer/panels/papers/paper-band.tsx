import { PencilRuler, ShieldCheck } from 'lucide-react';
import { useDeferredValue, useMemo } from 'react';
import { baselineOf } from '@latchwork/core/model/baseline';
import { useApp } from '../../app/store';

/** Revision, its state and the baseline of what is shown; a draft says so in words, not by colour alone. */
export function PaperBand() {
  const project = useDeferredValue(useApp((s) => s.check.harness.project));
  const baseline = useMemo(() => baselineOf(project), [project]);
  const revision = project.revisions.at(-1);
  const isReleased = revision?.status === 'released';
  return (
    <div className="paper-band" data-released={isReleased ? '' : undefined}>
      {isReleased ? <ShieldCheck size={16} aria-hidden /> : <PencilRuler size={16} aria-hidden />}
      <p>
        <strong>{isReleased ? 'Released' : 'Draft'}</strong>
        {revision ? `, revision ${revision.revision}` : ', no revision yet'}
        {isReleased ? null : '. Not released: look at it, do not build or buy by it.'}
      </p>
      <p className="second paper-baseline" title={`Baseline (SHA-256): ${baseline}`}>
        Baseline <span className="mono">{baseline.slice(0, 12)}</span>
      </p>
    </div>
  );
}
