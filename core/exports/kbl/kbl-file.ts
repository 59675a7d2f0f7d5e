import type { Harness } from '../../derive/harness';
import { baselineOf } from '../../model/baseline';
import { cautionsOf } from '../cautions';
import { ExchangeReport } from '../exchange/exchange-report';
import { otherFields } from '../exchange/field-text';
import { junctionsOf } from '../exchange/junctions';
import { reportRepeatedNames } from '../exchange/repeated-names';
import { reportUnusedContacts } from '../exchange/unused-contacts';
import { xml, type XmlElement } from '../xml/xml';
import { addConnectors } from './kbl-connectors';
import { Buckets, nameScopes, type KblContext } from './kbl-context';
import { addJunctions } from './kbl-junctions';
import { addParts, reportHeadersLeftOut } from './kbl-parts';
import { addDimensions, addGroups, addRoutePieces } from './kbl-route';
import { addTopology } from './kbl-topology';
import { element, field, KblUnits, processing, value } from './kbl-values';
import { addWires } from './kbl-wires';

export const KBL_VERSION = '2.4';
const HARNESS = 'Harness';

/** The order of the schema, of elements that we write. */
const CONTAINER_ORDER = [
  'Accessory', 'Approval', 'Cartesian_point', 'Cavity_plug', 'Cavity_seal', 'Component', 'Connector_housing', 'Creation',
  'Dimension_specification', 'Fixing', 'General_terminal', 'General_wire', 'Harness', 'Node', 'Routing', 'Segment', 'Unit',
  'Wire_protection',
]; // prettier-ignore
const HARNESS_ORDER = [
  'Accessory_occurrence', 'Cavity_plug_occurrence', 'Cavity_seal_occurrence', 'Component_occurrence', 'Connection',
  'Connector_occurrence', 'Fixing_occurrence', 'General_wire_occurrence', 'Terminal_occurrence',
  'Wire_protection_occurrence', 'Wiring_group',
]; // prettier-ignore

/** The harness as a KBL file, and what was written. Only elements of 2.4, which 2.5 has too. */
export function kblFile(harness: Harness): { readonly root: XmlElement; readonly report: ExchangeReport } {
  const ctx: KblContext = {
    harness,
    report: new ExchangeReport(),
    units: new KblUnits(),
    junctions: junctionsOf(harness),
    container: new Buckets(),
    harnessParts: new Buckets(),
    partsWritten: new Set(),
    connectorsWritten: new Set(),
    atNode: new Map(),
    contactPointOf: new Map(),
    names: nameScopes(),
  };
  reportRepeatedNames(harness.project, ctx.report);
  reportUnusedContacts(harness, ctx.junctions, ctx.report);
  addParts(ctx);
  addConnectors(ctx);
  reportHeadersLeftOut(ctx);
  addJunctions(ctx);
  addWires(ctx);
  addRoutePieces(ctx);
  addGroups(ctx);
  addTopology(ctx);
  addDimensions(ctx);
  addTitle(ctx);
  for (const unit of ctx.units.elements()) ctx.container.add(unit);
  const root = xml(
    'kbl:KBL_container',
    {
      'xmlns:kbl': 'http://www.prostep.org/Car_electric_container/KBL2.3/KBLSchema',
      'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
      id: 'Container',
      version_id: KBL_VERSION,
    },
    ctx.container.inOrder(CONTAINER_ORDER),
  );
  return { root, report: ctx.report };
}

/** Fields of the title block that have an element. */
const PLACED_OF_TITLE: ReadonlySet<string> = new Set(['title', 'identificationNumber', 'legalOwner']);

/** The harness as a part with its title block, revisions and notes; who made it; who approved it, once released. */
function addTitle(ctx: KblContext): void {
  const { project } = ctx.harness;
  const { titleBlock: t } = project;
  const current = project.revisions.at(-1);
  ctx.container.add(
    element('Harness', { id: HARNESS }, [
      value('Part_number', t.identificationNumber || '/NULL'),
      value('Company_name', t.legalOwner || '/NULL'),
      element('Alias_id', { id: 'Harness_alias' }, [
        value('Alias_id', `urn:uuid:${project.id}`),
        value('Scope', 'identity of the project'),
      ]),
      value('Version', current?.revision ?? '/NULL'),
      value('Abbreviation', '/NULL'),
      value('Description', t.title || '/NULL'),
      project.revisions.map((r) =>
        element('Change', { id: `Revision_${r.id}` }, [
          value('Id', r.revision),
          value('Description', [r.description, r.status, r.baseline].filter((x) => x).join('; ')),
          value('Change_date', r.date),
          value('Responsible_designer', r.author || '/NULL'),
          value('Designer_department', '/NULL'),
        ]),
      ),
      processing(HARNESS, [
        ...otherFields({ ...t, creator: t.creator || undefined }, PLACED_OF_TITLE),
        ...field('limitSet', `${project.limitSet.name}, revision ${project.limitSet.revision}`),
        ...field('labelMethod', project.labelMethod),
        ...(project.regulated ? field('regulated', 'true') : []),
        ...field('baseline', baselineOf(project)),
        ...project.notes.flatMap((n) => field('note', n)),
        ...cautionsOf(project).flatMap((c) => field('caution', c)),
      ]),
      value('Car_classification_level_2', '/NULL'),
      value('Model_year', '/NULL'),
      value('Content', 'harness complete set'),
      ctx.harnessParts.inOrder(HARNESS_ORDER),
    ]),
  );
  const common = [
    value('Department', t.responsibleDepartment ?? '/NULL'),
    value('Date', t.dateOfIssue ?? '/NULL'),
  ];
  ctx.container.add(
    element('Creation', { id: 'Creation' }, [
      value('Name', t.creator || '/NULL'),
      ...common,
      value('Is_applied_to', HARNESS),
    ]),
  );
  if (current?.status === 'released' && t.approvalPerson)
    ctx.container.add(
      element('Approval', { id: 'Approval' }, [
        value('Name', t.approvalPerson),
        value('Date', current.date ?? '/NULL'),
        value('Type_of_approval', 'released'),
        value('Is_applied_to', HARNESS),
      ]),
    );
}
