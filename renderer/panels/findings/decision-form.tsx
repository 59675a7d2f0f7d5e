import { useState } from 'react';
import { AID_NOT_AUTHORITY } from '@latchwork/core/exports/cautions';
import type { Finding } from '@latchwork/core/rules/finding';
import { refText } from '@latchwork/core/rules/refs';
import { appStore, useApp } from '../../app/store';
import { today } from '../../app/today';
import { Button } from '../../ui/button';
import { CheckField } from '../../ui/check-field';
import { ChoiceField } from '../../ui/choice-field';
import { DialogFrame } from '../../ui/dialogs';
import { SeverityMark } from '../../ui/severity-mark';
import { sentenceOf } from '../rule-meta';
import { type ApproverDraft, type DecisionDraft, recordOf, startDraft } from './decision-draft';
import { FormText } from './form-text';

const KINDS = [
  { value: 'deviation-permit', text: 'Deviation permit: before it is built' },
  { value: 'concession', text: 'Concession: it is built already' },
] as const;

/** Writes a decision on a finding. What is refused is said, and nothing that was written is lost. */
export function DecisionForm({
  finding,
  done,
}: {
  finding: Finding;
  done: (recorded: boolean | null) => void;
}) {
  const project = useApp((s) => s.check.harness.project);
  const alike = useAlike(finding);
  const [draft, setDraft] = useState(() => startDraft(project, finding, today()));
  const [forAll, setForAll] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const set = (change: Partial<DecisionDraft>): void => {
    setProblem(null);
    setDraft({ ...draft, ...change });
  };
  const text = (key: Exclude<keyof DecisionDraft, 'kind' | 'approvers'>) => ({
    value: draft[key],
    set: (value: string) => set({ [key]: value }),
  });
  const record = (): void => {
    const { attempt } = appStore.getState();
    // The others are measured by themselves; only the words are shared.
    const others = forAll
      ? alike.map((f) => {
          const { requirement, measured, limit, items } = startDraft(project, f, draft.decidedOn);
          return recordOf(project, f, { ...draft, requirement, measured, limit, items });
        })
      : [];
    const own = recordOf(project, finding, draft);
    const refused = others.length
      ? attempt({ id: 'decision.add-several', args: { decisions: [own, ...others] } })
      : attempt({ id: 'decision.add', args: { decision: own } });
    if (refused === null) done(true);
    else setProblem(refused);
  };
  return (
    <DialogFrame
      title={`Decision on ${finding.rule} at ${finding.objects.map((o) => refText(project, o)).join(', ')}`}
      buttons={
        <>
          <Button onClick={() => done(null)}>Cancel</Button>
          <Button look="primary" onClick={record}>
            Record
          </Button>
        </>
      }
    >
      <p>{sentenceOf(finding)}</p>
      <div className="decision-form">
        <div className="wide">
          <ChoiceField label="Kind" value={draft.kind} choices={KINDS} choose={(kind) => set({ kind })} />
        </div>
        <div className="wide">
          <FormText label="Requirement departed from" lines={2} {...text('requirement')} />
        </div>
        <FormText label="Actual" {...text('measured')} />
        <FormText label="Limit" {...text('limit')} />
        <FormText label="Items, serial or lot numbers" {...text('items')} />
        <FormText
          label="Quantity of harnesses"
          type="number"
          hint="This or a last day; both where both bind."
          {...text('quantity')}
        />
        <div className="wide">
          <FormText label="Reason" lines={2} autoFocus {...text('reason')} />
        </div>
        <FormText label="Risk" lines={2} {...text('risk')} />
        <FormText label="Mitigation" lines={2} {...text('mitigation')} />
        <FormText label="Conditions" {...text('conditions')} />
        <FormText label="Requested by" {...text('requester')} />
        <Approvers approvers={draft.approvers} set={(approvers) => set({ approvers })} />
        <FormText label="Decided on" type="date" {...text('decidedOn')} />
        <FormText label="Holds until the end of" type="date" {...text('expiresOn')} />
        {alike.length > 0 ? (
          <div className="wide">
            <CheckField
              label={`Also for the ${alike.length} other open findings of this rule, each with a record of its own`}
              checked={forAll}
              choose={setForAll}
            />
          </div>
        ) : null}
      </div>
      <p className="second">
        A record is added, never changed. It stops to count when its day is past, its quantity is used, or the
        value, the limit or the rule changes. {AID_NOT_AUTHORITY}
      </p>
      {problem ? (
        <p className="field-problem" role="alert">
          <SeverityMark kind="critical" size={12} />
          {problem}
        </p>
      ) : null}
    </DialogFrame>
  );
}

/** Other findings of the rule on which the same words could be said at once. Never for what is critical. */
function useAlike(finding: Finding): readonly Finding[] {
  const findings = useApp((s) => s.check.findings);
  const decisions = useApp((s) => s.check.harness.project.decisions);
  if (finding.severity === 'critical') return [];
  const decided = new Set(decisions.map((d) => d.finding));
  return findings.filter(
    (f) =>
      f.rule === finding.rule &&
      f.key !== finding.key &&
      f.severity !== 'critical' &&
      f.result === finding.result &&
      !decided.has(f.key),
  );
}

function Approvers({
  approvers,
  set,
}: {
  approvers: readonly ApproverDraft[];
  set: (approvers: readonly ApproverDraft[]) => void;
}) {
  const many = approvers.length > 1;
  return (
    <>
      {approvers.map((a, i) => (
        <div key={i} className="decision-approver">
          <FormText
            label={many ? `Approver ${i + 1}` : 'Approved by'}
            value={a.name}
            set={(name) => set(approvers.with(i, { ...a, name }))}
          />
          <FormText
            label={many ? `Role of approver ${i + 1}` : 'Role'}
            value={a.role}
            set={(role) => set(approvers.with(i, { ...a, role }))}
          />
          {i === approvers.length - 1 ? (
            <Button onClick={() => set([...approvers, { name: '', role: '' }])}>Add an approver</Button>
          ) : (
            <span />
          )}
        </div>
      ))}
    </>
  );
}
