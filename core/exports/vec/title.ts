import { baselineOf } from '../../model/baseline';
import type { Project } from '../../model/project';
import { cautionsOf } from '../cautions';
import { otherFields } from '../exchange/field-text';
import type { XmlElement } from '../xml/xml';
import type { VecContext } from './vec-context';
import { node, properties, refs, value } from './vec-values';

export const HARNESS_PART = 'HarnessPart';

/** Who the document belongs to and what it is called; unknown is written as VEC wants it. */
export const ownerOf = ({ titleBlock: t }: Project): { company: string; number: string } => ({
  company: t.legalOwner || '/NULL',
  number: t.identificationNumber || '/NULL',
});

export const revisionOf = (project: Project): string => project.revisions.at(-1)?.revision ?? '/NULL';

const midnight = (date: string): string => `${date}T00:00:00Z`;

/** Fields of the title block that stand in elements, and those of the project that a harness document says in its head. */
const PLACED_OF_TITLE: ReadonlySet<string> = new Set([
  'title', 'identificationNumber', 'legalOwner', 'creator', 'approvalPerson', 'responsibleDepartment',
  'technicalReference', 'supplementaryTitle', 'dateOfIssue',
]); // prettier-ignore

/** All but the fields that stand in a creation. */
const NOT_OF_CREATION: ReadonlySet<string> = new Set(
  [...PLACED_OF_TITLE].filter(
    (f) => f !== 'creator' && f !== 'responsibleDepartment' && f !== 'technicalReference',
  ),
);

const isReleased = (project: Project): boolean => project.revisions.at(-1)?.status === 'released';

const description = (ctx: VecContext, type: string, text: string | undefined): XmlElement | undefined =>
  text === undefined
    ? undefined
    : node('Description', { id: `HarnessDocument_${type}`, type: 'LocalizedTypedString' }, [
        ctx.values.textContent(text),
        value('Type', type),
      ]);

/** The document of the harness, with its title block, revisions, notes and cautions, and the specifications given. */
export function harnessDocument(ctx: VecContext, specs: readonly XmlElement[]): XmlElement {
  const { project } = ctx.harness;
  const { titleBlock: t } = project;
  const id = 'HarnessDocument';
  const { company, number } = ownerOf(project);
  const texts = [...project.notes, ...cautionsOf(project)];
  return node('DocumentVersion', { id }, [
    properties(id, [
      ...otherFields({ ...t, creator: t.creator || undefined }, PLACED_OF_TITLE),
      ['limitSet', `${project.limitSet.name}, revision ${project.limitSet.revision}`],
      ...(project.labelMethod ? [['labelMethod', project.labelMethod] as const] : []),
      ...(project.regulated ? [['regulated', 'true'] as const] : []),
      ...(t.dateOfIssue === undefined
        ? otherFields({ ...t, creator: t.creator || undefined, documentType: undefined }, NOT_OF_CREATION)
        : []),
      ...(t.approvalPerson !== undefined && !isReleased(project)
        ? [['approvalPerson', t.approvalPerson] as const]
        : []),
    ]),
    description(ctx, 'Title', t.title || '/NULL'),
    description(ctx, 'SupplementaryTitle', t.supplementaryTitle),
    value('CompanyName', company),
    texts.map((text, i) => ctx.values.instruction('ProcessingInstruction', `${id}_note_${i + 1}`, text)),
    approval(project),
    project.revisions.map((r) => revision(ctx, r)),
    creation(t),
    value('DocumentNumber', number),
    value('DocumentType', 'HarnessDescription'),
    value('DocumentVersion', revisionOf(project)),
    value('DigitalRepresentationIndex', baselineOf(project)),
    value('CreatingSystem', 'Latchwork'),
    refs('ReferencedPart', HARNESS_PART),
    specs,
  ]);
}

/** Who approves is on record only with a release; before it the name stands as a property. */
function approval(project: Project): XmlElement {
  const id = 'Approval';
  const person = isReleased(project) ? project.titleBlock.approvalPerson : undefined;
  return node('Approval', { id }, [
    value('Status', isReleased(project) ? 'Approved' : 'NotYetApproved'),
    person
      ? node('Permission', { id: `${id}_permission` }, [
          value('Permission', 'Released'),
          node('Permitter', { id: `${id}_person` }, [value('LastName', person)]),
        ])
      : undefined,
  ]);
}

function revision({ values }: VecContext, r: Project['revisions'][number]): XmlElement {
  const id = `Revision_${r.id}`;
  return node('ChangeDescription', { id }, [
    properties(id, [
      ['status', r.status],
      ...(r.baseline === undefined ? [] : [['baseline', r.baseline] as const]),
    ]),
    value('Identification', r.revision),
    values.text('Description', id, r.description),
    value('ChangeDate', r.date && midnight(r.date)),
    r.author ? node('ResponsibleDesigner', { id: `${id}_author` }, [value('LastName', r.author)]) : undefined,
  ]);
}

/** VEC has no creation without a date: without one the creator is a property. */
function creation(t: Project['titleBlock']): XmlElement | undefined {
  if (t.dateOfIssue === undefined) return undefined;
  const responsible = t.technicalReference ?? (t.responsibleDepartment === undefined ? undefined : '/NULL');
  return node('Creation', { id: 'Creation' }, [
    value('CreationDate', midnight(t.dateOfIssue)),
    t.creator ? node('Creator', { id: 'Creation_creator' }, [value('LastName', t.creator)]) : undefined,
    responsible === undefined
      ? undefined
      : node('ResponsibleDesigner', { id: 'Creation_responsible' }, [
          value('Department', t.responsibleDepartment),
          value('LastName', responsible),
        ]),
  ]);
}
