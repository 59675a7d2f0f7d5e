import type { ReactNode } from 'react';
import type { Finding } from '@latchwork/core/rules/finding';
import { findingText } from '@latchwork/core/rules/finding-text';
import { RULES } from '@latchwork/core/rules/index';
import { SeverityMark } from '../ui/severity-mark';
import { markOf } from './scene/badges';

const MOST = 3;

/** What the findings under the pointer say: the sentence, and the values that it rests on. */
export function FindingTip({
  findings,
  at,
}: {
  findings: readonly Finding[];
  at: { x: number; y: number };
}): ReactNode {
  return (
    <div className="sheet-float sheet-tip" role="tooltip" style={{ left: at.x + 14, top: at.y + 14 }}>
      {findings.slice(0, MOST).map((f) => {
        const meta = RULES.find((r) => r.meta.id === f.rule)?.meta;
        return (
          <div key={f.key} className="sheet-tip-line">
            <SeverityMark kind={markOf(f)} />
            <div>
              <p>{meta ? findingText(f, meta) : f.rule}</p>
              {f.evidence.length > 0 && (
                <dl>
                  {f.evidence.slice(0, 4).map((e, i) => (
                    <div key={i} style={{ display: 'contents' }}>
                      <dt>{e.label}</dt>
                      <dd>
                        {e.value}
                        {e.unit ? ` ${e.unit}` : ''}
                      </dd>
                    </div>
                  ))}
                </dl>
              )}
            </div>
          </div>
        );
      })}
      {findings.length > MOST && <p>and {findings.length - MOST} more. Click for all.</p>}
    </div>
  );
}
