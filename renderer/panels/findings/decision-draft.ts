import type { NewDecision } from '@latchwork/core/commands/shared/new-decision';
import { draftDecision } from '@latchwork/core/decisions/draft-decision';
import { approversNeeded } from '@latchwork/core/model/approvals';
import type { Project } from '@latchwork/core/model/project';
import type { Finding } from '@latchwork/core/rules/finding';
import { refText } from '@latchwork/core/rules/refs';
import { metaOf } from '../rule-meta';

export interface ApproverDraft {
  readonly name: string;
  readonly role: string;
}

/** A record while it is being written: all fields as text. */
export interface DecisionDraft {
  readonly kind: NewDecision['kind'];
  readonly requirement: string;
  readonly measured: string;
  readonly limit: string;
  readonly items: string;
  readonly quantity: string;
  readonly reason: string;
  readonly risk: string;
  readonly mitigation: string;
  readonly conditions: string;
  readonly requester: string;
  readonly approvers: readonly ApproverDraft[];
  readonly decidedOn: string;
  readonly expiresOn: string;
}

const NOBODY: ApproverDraft = { name: '', role: '' };

/** What follows from the finding is filled in; who, why and until when is for people to say. */
export function startDraft(project: Project, finding: Finding, day: string): DecisionDraft {
  const { requirement, measured, limit } = draftDecision(project, finding, metaOf(finding.rule));
  return {
    kind: 'deviation-permit',
    requirement,
    measured,
    limit,
    items: finding.objects.map((o) => refText(project, o)).join(', '),
    quantity: '',
    reason: '',
    risk: '',
    mitigation: '',
    conditions: '',
    requester: '',
    approvers: Array.from({ length: approversNeeded(project.regulated, finding.severity) }, () => NOBODY),
    decidedOn: day,
    expiresOn: '',
  };
}

/** The record as the command takes it: what was left empty is not part of it. */
export function recordOf(project: Project, finding: Finding, draft: DecisionDraft): NewDecision {
  const { items, risk, mitigation, conditions, quantity, expiresOn, approvers, ...needed } = draft;
  const given = Object.entries({ items, risk, mitigation, conditions, expiresOn }).filter(
    ([, text]) => text.trim() !== '',
  );
  return {
    ...draftDecision(project, finding, metaOf(finding.rule)),
    ...needed,
    ...Object.fromEntries(given),
    ...(quantity.trim() === '' ? {} : { quantity: Number(quantity) }),
    approvals: approvers
      .filter((a) => a.name.trim() !== '' || a.role.trim() !== '')
      .map((a) => ({ ...a, date: draft.decidedOn })),
  };
}
