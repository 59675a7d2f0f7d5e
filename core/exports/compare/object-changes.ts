import { changesOf, type FieldChange, type ObjectChange } from '../../derive/changes-of';
import { changeHeading, fieldText, valueText } from '../../derive/change-words';
import type { Project } from '../../model/project';
import type { ObjectRef } from '../../rules/finding';
import { type Area, AREA_OF, type ChangeRow, REF_OF } from './change-row';

/** What was added, taken away and changed of the objects and of the project itself, by ids. */
export const objectChanges = (before: Project, after: Project): readonly ChangeRow[] =>
  changesOf(before, after).flatMap((change) => rowsOf(before, after, change));

function rowsOf(before: Project, after: Project, change: ObjectChange): readonly ChangeRow[] {
  const { collection, id, what } = change;
  const heading = changeHeading(before, after, change);
  const subject = heading.slice(0, -(what.length + 1));
  const refs: ObjectRef[] =
    collection === 'project' || collection === 'decisions' ? [] : [{ type: REF_OF[collection], id }];
  const common = {
    subject,
    objects: what === 'removed' ? [] : refs,
    gone: what === 'removed' ? refs : [],
  };
  if (what !== 'changed')
    return [
      {
        ...common,
        what,
        area: collection === 'project' ? 'Project' : AREA_OF[collection],
        field: '',
        before: '',
        after: '',
      },
    ];
  return change.fields.map((f): ChangeRow => ({
    ...common,
    area: collection === 'project' ? areaOfField(f.field) : AREA_OF[collection],
    what: f.before === undefined ? 'added' : f.after === undefined ? 'removed' : 'changed',
    ...(collection === 'project' ? {} : { what }),
    field: fieldText(f.field),
    ...valuesOf(before, after, f),
  }));
}

function areaOfField(field: string): Area {
  if (field.startsWith('titleBlock')) return 'Title block';
  if (field.startsWith('revisions')) return 'Revisions';
  return field.startsWith('limitSet') ? 'Limits' : 'Project';
}

function valuesOf(before: Project, after: Project, change: FieldChange): { before: string; after: string } {
  // A place on the sheet to the last digit tells nobody more.
  const short = (value: unknown): unknown =>
    typeof value === 'number' && !Number.isInteger(value) ? Number(value.toFixed(3)) : value;
  return {
    before: valueText(before, short(change.before)),
    after: valueText(after, short(change.after)),
  };
}
