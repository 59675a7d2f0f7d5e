import { useMemo } from 'react';
import type { Fix } from '@latchwork/core/rules/finding';
import { useApp } from '../../app/store';
import { FindingChangeList } from './finding-change-list';
import { previewFix } from './preview-fix';

/** What a fix changes, object by object, and which findings go and come with it. */
export function FixPreview({ fix }: { fix: Fix }) {
  const check = useApp((s) => s.check);
  const catalogue = useApp((s) => s.catalogue);
  const preview = useMemo(() => previewFix(check, fix, catalogue), [check, fix, catalogue]);
  if (preview.refused !== null)
    return <p className="second">The fix cannot be done now: {preview.refused}</p>;
  return (
    <section aria-label="What the fix changes">
      <h3>What the fix changes</h3>
      <ul className="changes">
        {preview.objects.map((o) => (
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
      </ul>
      <FindingChangeList changes={preview.findings} />
    </section>
  );
}
