import { useMemo } from 'react';
import type { Fix } from '@latchwork/core/rules/finding';
import { useApp } from '../../app/store';
import { FindingChangeList } from './finding-change-list';
import { previewFix } from './preview-fix';

const MOST = 8;

/** What a fix changes, object by object, and which findings go and come with it. */
export function FixPreview({ fix, title = 'What the fix changes' }: { fix: Fix; title?: string }) {
  const check = useApp((s) => s.check);
  const catalogue = useApp((s) => s.catalogue);
  const preview = useMemo(() => previewFix(check, fix, catalogue), [check, fix, catalogue]);
  if (preview.refused !== null) return <p className="second">It cannot be done now: {preview.refused}</p>;
  return (
    <section aria-label={title}>
      <h3>{title}</h3>
      <ul className="changes">
        {preview.objects.slice(0, MOST).map((o) => (
          <li key={o.heading}>
            {o.heading}
            {o.fields.length > 0 ? (
              <ul>
                {o.fields.map((f) => (
                  <li key={f}>{f}</li>
                ))}
              </ul>
            ) : null}
          </li>
        ))}
        {preview.objects.length > MOST ? (
          <li>and {preview.objects.length - MOST} more objects in the same way</li>
        ) : null}
      </ul>
      <FindingChangeList changes={preview.findings} />
    </section>
  );
}
