import type { Harness } from '../../derive/harness';
import { ExchangeReport } from '../exchange/exchange-report';
import { junctionsOf } from '../exchange/junctions';
import { languageCode } from '../exchange/language-code';
import { reportRepeatedNames } from '../exchange/repeated-names';
import { UniqueNames } from '../exchange/unique-names';
import { reportUnusedContacts } from '../exchange/unused-contacts';
import { xml, type XmlElement } from '../xml/xml';
import { addCables } from './cable-pieces';
import { addConnectors } from './connector-pieces';
import { addJunctionPieces } from './contact-pieces';
import { contactingSpec } from './contacting';
import { couplingSpec, matingDocument } from './couplings';
import { formboardSpec } from './formboard';
import { groupingSpecs } from './groupings';
import { library } from './library';
import { connectionSpec, signalSpec } from './logical';
import { placementSpec } from './placements';
import { addRoutePieces } from './route-pieces';
import { HARNESS_PART, harnessDocument, ownerOf, revisionOf } from './title';
import { routingSpec, topologySpec } from './topology';
import type { VecContext } from './vec-context';
import { VecUnits } from './vec-units';
import { node, refs, value, VecValues } from './vec-values';
import { addWires } from './wire-pieces';

export const VEC_VERSION = '2.1.0';

/**
 * The harness as a VEC file, and what was written. No date of creation: the same project gives the same bytes on any day.
 */
export function vecFile(harness: Harness): { readonly root: XmlElement; readonly report: ExchangeReport } {
  const units = new VecUnits();
  const ctx: VecContext = {
    harness,
    report: new ExchangeReport(),
    units,
    values: new VecValues(units, languageCode(harness.project.titleBlock.language)),
    junctions: junctionsOf(harness),
    names: new UniqueNames(),
    components: [],
    usages: [],
    billOfMaterial: [],
    unchosen: new Map(),
  };
  reportRepeatedNames(harness.project, ctx.report);
  reportUnusedContacts(harness, ctx.junctions, ctx.report);
  addConnectors(ctx);
  addJunctionPieces(ctx);
  addWires(ctx);
  addCables(ctx);
  addRoutePieces(ctx);
  const { documents, parts, tools } = library(ctx);
  const { company, number } = ownerOf(harness.project);
  const mating = matingDocument(ctx, company, number);
  const harnessDoc = harnessDocument(ctx, harnessSpecs(ctx));
  const root = xml(
    'vec:VecContent',
    {
      'xmlns:vec': 'http://www.prostep.org/ecad-if/2011/vec',
      'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
      id: 'Content',
    },
    [
      value('VecVersion', VEC_VERSION),
      value('GeneratingSystemName', 'Latchwork'),
      ...documents,
      mating,
      harnessDoc,
      ...parts,
      harnessPart(ctx),
      ...tools,
      ...units.elements(),
    ],
  );
  return { root, report: ctx.report };
}

/** The specifications of the harness document, in the order in which they build on each other. */
function harnessSpecs(ctx: VecContext): XmlElement[] {
  const usages =
    ctx.usages.length === 0
      ? undefined
      : node('Specification', { id: 'Usages', type: 'PartUsageSpecification' }, [
          value('Identification', 'PARTS TO BE CHOSEN'),
          ctx.usages,
        ]);
  return [
    ...[...ctx.unchosen.values()].flat(),
    node('Specification', { id: 'Components', type: 'CompositionSpecification' }, [
      value('Identification', 'COMPONENTS'),
      ctx.components,
    ]),
    usages,
    node('Specification', { id: 'BillOfMaterial', type: 'PartStructureSpecification' }, [
      value('Identification', 'BOM'),
      refs('DescribedPart', HARNESS_PART),
      value('Content', 'Harness'),
      refs('InBillOfMaterial', ctx.billOfMaterial),
    ]),
    signalSpec(ctx),
    connectionSpec(ctx),
    ...groupingSpecs(ctx),
    contactingSpec(ctx),
    topologySpec(ctx),
    routingSpec(ctx),
    placementSpec(ctx),
    couplingSpec(ctx),
    formboardSpec(ctx),
  ].filter((s) => s !== undefined);
}

function harnessPart(ctx: VecContext): XmlElement {
  const { project } = ctx.harness;
  const { company, number } = ownerOf(project);
  return node('PartVersion', { id: HARNESS_PART, iri: `urn:uuid:${project.id}` }, [
    ctx.values.text('Description', HARNESS_PART, project.titleBlock.title),
    value('CompanyName', company),
    value('PartNumber', number),
    value('PartVersion', revisionOf(project)),
    value('PrimaryPartType', 'PartStructure'),
  ]);
}
