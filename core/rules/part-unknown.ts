import { byId } from '../base/by-id';
import { PART_KIND_NAMES, type Part } from '../model/parts/part';
import type { Project } from '../model/project';
import { tiny } from '../model/tiny';
import { refText } from './refs';
import type { Report, Rule } from './rule';
import { partsAmiss, type PartUse } from './shared/part-uses';

/**
 * Where a wire, a splice or a fuse has no part yet the rule cannot verify; where an object names a record that is
 * not there or is of another kind, it fails. A record without a catalogue is no fault: it was entered in the project
 * by its user, and every value taken from it says so.
 */
export const partUnknown: Rule<'project'> = {
  meta: {
    id: 'part-unknown',
    revision: 1,
    severity: 'major',
    summary: 'Every object that is bought has a part record of its kind.',
    why: 'An object without a record is missing from the parts list, or something else is ordered in its place. No other check can look at it.',
    source: 'common practice: the parts list is counted from the objects of the drawing',
    message: '{{object}} names {{found}} where it needs {{kinds}}',
    unknown: 'What {{object}} is cannot be verified; not stated: {{needs}}',
  },
  scope: 'project',
  check({ project }, report) {
    const parts = byId(project.parts);
    const amiss = partsAmiss(project);
    for (const use of amiss) tell(project, use, parts.get(use.part ?? ''), report);
    if (amiss.length === 0) report.pass();
  },
  examples: () => ({
    good: [{ name: 'a record for everything', project: tiny() }],
    bad: [
      {
        name: 'a connector that names a lock, a wire that names a contact',
        project: tiny((t) => {
          t.connector('X2').part = t.part('secondary-lock', 'LOCK').id;
          t.wire('W1').part = t.part('contact', 'C-PIN').id;
        }),
        expect: ['X2', 'W1'],
      },
      {
        name: 'a contact whose record is not there',
        project: tiny((t) => {
          const contact = t.project.contacts[0];
          if (contact) contact.part = t.newId();
        }),
        expect: ['X1:1'],
      },
    ],
    unknown: [
      {
        name: 'a wire without a part',
        project: tiny((t) => delete t.wire('W2').part),
        expect: ['W2'],
      },
      {
        name: 'a splice without a part',
        project: tiny((t) => {
          t.project.splices.push({ id: t.newId(), designator: 'XS1', position: { x: 60, y: 30 } });
        }),
        expect: ['XS1'],
      },
    ],
  }),
};

function tell(project: Project, use: PartUse, part: Part | undefined, report: Report): void {
  const object = `${use.role}${refText(project, use.at)}`;
  const at = [use.at];
  if (use.part === undefined) {
    const needs = [{ what: `part of ${object}`, at: use.at, field: 'part' }];
    return report.cannotVerify({ open: true, at, data: { object }, needs });
  }
  const found = part ? `${PART_KIND_NAMES[part.kind]} ${part.partNumber}` : 'a record that is not there';
  const kinds = use.kinds.map((k) => `a ${PART_KIND_NAMES[k]}`).join(' or ') || 'a part';
  report.fail({
    at,
    data: { object, found, kinds },
    evidence: [{ label: 'record', value: part ? found : use.part, source: 'project' }],
  });
}
