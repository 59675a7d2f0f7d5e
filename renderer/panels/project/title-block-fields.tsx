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
        type="date"
        value={block.dateOfIssue ?? ''}
        commit={(text) =>
          text === ''
            ? 'Choose a date.'
            : attempt({ id: 'project.edit-title-block', args: { change: { dateOfIssue: text } } })
        }
      />
    </>
  );
}
