import type { TitleBlock } from '@latchwork/core/model/title-block';
import { useApp } from '../../app/store';
import { TextField } from '../../ui/text-field';
import { attempt } from '../inspector/fields';

/** Field names of ISO 7200 in the order of the block. */
const FIELDS: readonly (readonly [keyof TitleBlock, string])[] = [
  ['title', 'Title'],
  ['supplementaryTitle', 'Supplementary title'],
  ['identificationNumber', 'Identification number'],
  ['legalOwner', 'Legal owner'],
  ['creator', 'Creator'],
  ['approvalPerson', 'Approval person'],
  ['responsibleDepartment', 'Department'],
  ['technicalReference', 'Technical reference'],
  ['documentType', 'Document type'],
  ['language', 'Language'],
];

/** The title block that stands on every paper. */
export function TitleBlockFields() {
  const block = useApp((s) => s.history.project.titleBlock);
  return (
    <>
      {FIELDS.map(([field, label]) => (
        <TextField
          key={field}
          label={label}
          name={field}
          value={block[field] ?? ''}
          commit={(text) => attempt({ id: 'project.edit-title-block', args: { change: { [field]: text } } })}
        />
      ))}
      <TextField
        label="Date of issue"
        name="dateOfIssue"
        mono
        placeholder="year-month-day"
        value={block.dateOfIssue ?? ''}
        commit={commitDate}
      />
    </>
  );
}

/** Year first, as ISO 8601 has it: the same for every reader. */
function commitDate(text: string): string | null {
  const day = /^\d{4}-\d{2}-\d{2}$/.test(text) ? new Date(`${text}T00:00:00Z`) : null;
  if (!day || Number.isNaN(day.getTime()) || day.toISOString().slice(0, 10) !== text)
    return `"${text}" is not a date; write year, month and day: 2026-03-14.`;
  return attempt({ id: 'project.edit-title-block', args: { change: { dateOfIssue: text } } });
}
