import { useMemo } from 'react';
import type { LimitSet } from '@latchwork/core/model/limit-set';
import { compareLimitSets } from '@latchwork/core/model/limit-sets/compare-limit-sets';
import { appStore } from '../../app/store';
import { Button } from '../../ui/button';
import { DialogFrame, ask } from '../../ui/dialogs';
import { unitText } from '../../ui/unit-text';
import { FindingChangeList } from '../findings/finding-change-list';
import { previewLimitSet } from './preview-limit-set';

/** Shows what a limit set would change, and asks whether to use it. */
export const askLimitSet = (limitSet: LimitSet): Promise<boolean | null> =>
  ask<boolean>((done) => <CompareLimitSet next={limitSet} done={done} />, { wide: true });

function CompareLimitSet({ next, done }: { next: LimitSet; done: (use: boolean | null) => void }) {
  const { check, now, differences } = useMemo(() => {
    const { check } = appStore.getState();
    const now = check.harness.project.limitSet;
    return { check, now, differences: compareLimitSets(now, next) };
  }, [next]);
  const findings = useMemo(() => previewLimitSet(check, next), [check, next]);
  return (
    <DialogFrame
      title={`Use the limit set ${next.name}, revision ${next.revision}?`}
      buttons={
        <>
          <Button onClick={() => done(null)}>Keep {now.name}</Button>
          <Button look="primary" autoFocus onClick={() => done(true)}>
            Use {next.name}
          </Button>
        </>
      }
    >
      <FindingChangeList changes={findings} />
      {differences.length === 0 ? (
        <p>Both sets have the same values.</p>
      ) : (
        <table className="evidence">
          <thead>
            <tr>
              <th scope="col">Limit</th>
              <th scope="col" className="evidence-value">
                Now
              </th>
              <th scope="col" className="evidence-value">
                {next.name}
              </th>
              <th scope="col">Source there</th>
            </tr>
          </thead>
          <tbody>
            {differences.map((d) => (
              <tr key={d.id}>
                <td>{d.id.replaceAll('-', ' ')}</td>
                <td className="evidence-value">{d.before ? unitText(d.before) : 'not set'}</td>
                <td className="evidence-value">{d.after ? unitText(d.after) : 'not set'}</td>
                <td className="second">{d.sourceAfter}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </DialogFrame>
  );
}
