import type { DemoBuilder } from './builder';

/** The title block of a demo, filled so that nobody can take it for a real drawing. */
export function fillTitle(
  demo: DemoBuilder,
  args: { readonly number: string; readonly supplementaryTitle: string; readonly notes: readonly string[] },
): void {
  demo.do({
    id: 'project.edit-title-block',
    args: {
      change: {
        identificationNumber: args.number,
        legalOwner: 'Invented example, no owner',
        creator: 'A. Example',
        approvalPerson: 'B. Example',
        responsibleDepartment: 'Example workshop (invented)',
        documentType: 'Harness drawing',
        supplementaryTitle: args.supplementaryTitle,
        language: 'en',
        dateOfIssue: '2026-01-15',
      },
    },
  });
  const invented =
    'Invented example: equipment, parts, makers, values and prices do not exist. Do not build or order from it.';
  demo.do({ id: 'project.edit', args: { change: { notes: [invented, ...args.notes] } } });
}
