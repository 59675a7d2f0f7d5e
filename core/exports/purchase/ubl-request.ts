import { problem, type Result } from '../../base/result';
import { baselineOf } from '../../model/baseline';
import { cautionsOf } from '../cautions';
import { PLEASE_STATE, SUBSTITUTES, UNIT_CODES, type Asked, type AskedLine } from './asked-lines';
import type { DocumentInput } from '../exporter';
import { lineDesignators } from '../parts/harness-lines';
import { xml, xmlText, type XmlElement } from '../xml/xml';
import { FORM_NAMES } from './contact-form';
import { lineForm } from './line-words';
import { harnessesText } from './order-head';

const UBL = 'urn:oasis:names:specification:ubl:schema:xsd:';

const party = (name: string): XmlElement =>
  xml('cac:Party', {}, [xml('cac:PartyName', {}, [xml('cbc:Name', {}, name)])]);
const text = (name: string, value: string | number | undefined): XmlElement | undefined =>
  value === undefined || value === '' ? undefined : xml(name, {}, value);
const identified = (name: string, id: string | undefined): XmlElement | undefined =>
  id === undefined ? undefined : xml(name, {}, [xml('cbc:ID', {}, id)]);

/**
 * A request for quotation after UBL 2.1 (OASIS; ISO/IEC 19845:2015). The time of issue is a must there; midnight stands for
 * "that day". No prices go out, and no supplier's name to another.
 */
export function ublRequest(
  { harness: { project }, date }: DocumentInput,
  { lines, left }: Asked,
  harnesses: number,
  supplier: string | undefined,
): Result<string, string> {
  if (lines.length === 0) return problem('There is nothing to ask for.');
  const { titleBlock } = project;
  const revision = project.revisions.at(-1);
  const number = titleBlock.identificationNumber || titleBlock.title;
  const notes = [
    `Parts for ${harnessesText(harnesses)} ${number}${revision ? `, revision ${revision.revision} (${revision.status})` : ''}.`,
    `Please state ${PLEASE_STATE}.`,
    SUBSTITUTES,
    ...(left.length > 0 ? [`Not asked for here: ${left.join('; ')}.`] : []),
    `${titleBlock.title}. Limit set: ${project.limitSet.name}, revision ${project.limitSet.revision}.`,
    ...cautionsOf(project),
  ];
  const root = xml(
    'RequestForQuotation',
    {
      xmlns: `${UBL}RequestForQuotation-2`,
      'xmlns:cac': `${UBL}CommonAggregateComponents-2`,
      'xmlns:cbc': `${UBL}CommonBasicComponents-2`,
    },
    [
      xml('cbc:UBLVersionID', {}, '2.1'),
      xml('cbc:ID', {}, `RFQ-${number}-${revision?.revision ?? '0'}-${harnesses}`),
      xml('cbc:IssueDate', {}, date),
      xml('cbc:IssueTime', {}, '00:00:00Z'),
      ...notes.map((note) => xml('cbc:Note', {}, note)),
      text('cbc:PricingCurrencyCode', project.purchasing?.currency),
      xml('cbc:LineCountNumeric', {}, lines.length),
      xml('cac:AdditionalDocumentReference', {}, [
        xml('cbc:ID', {}, number),
        xml('cbc:UUID', {}, project.id),
        text('cbc:IssueDate', titleBlock.dateOfIssue),
        xml('cbc:DocumentType', {}, 'Harness design'),
        text('cbc:VersionID', revision?.revision),
        xml('cbc:DocumentDescription', {}, `Baseline (SHA-256) ${baselineOf(project)}`),
      ]),
      xml('cac:SellerSupplierParty', {}, supplier === undefined ? [] : [party(supplier)]),
      titleBlock.legalOwner ? xml('cac:BuyerCustomerParty', {}, [party(titleBlock.legalOwner)]) : undefined,
      ...lines.map((line, i) => requestLine(line, i + 1, supplier)),
    ],
  );
  return xmlText(root);
}

function requestLine(
  { line, quantity, also }: AskedLine,
  number: number,
  supplier: string | undefined,
): XmlElement {
  const { unit } = line.line;
  const volumes = also.map(
    (a) => `${a.quantity} ${unit === 'm' ? 'm' : 'off'} (for ${harnessesText(a.harnesses)})`,
  );
  return xml('cac:RequestForQuotationLine', {}, [
    xml('cbc:ID', {}, number),
    xml('cac:LineItem', {}, [
      xml('cbc:ID', {}, number),
      text('cbc:Note', volumes.length > 0 ? `Please quote for these too: ${volumes.join(', ')}.` : undefined),
      xml('cbc:Quantity', { unitCode: UNIT_CODES[unit] }, quantity),
      requestItem(line, supplier),
    ]),
  ]);
}

function requestItem(asked: AskedLine['line'], supplier: string | undefined): XmlElement {
  const { line, chosen, offers } = asked;
  const { part } = line;
  const form = lineForm(asked);
  const mine = [...(chosen ? [chosen.weighed] : []), ...offers].find((w) => w.offer.supplier === supplier);
  const property = (name: string, value: string | undefined): XmlElement | undefined =>
    value
      ? xml('cac:AdditionalItemProperty', {}, [xml('cbc:Name', {}, name), xml('cbc:Value', {}, value)])
      : undefined;
  return xml('cac:Item', {}, [
    text('cbc:Description', part?.description),
    text('cbc:Name', part?.partNumber),
    identified('cac:SellersItemIdentification', mine?.offer.orderCode),
    identified('cac:ManufacturersItemIdentification', part?.partNumber),
    property('Colour (IEC 60757)', line.colour ?? undefined),
    property('Form', form && FORM_NAMES[form]),
    property('Reference designations', lineDesignators(line)),
    part
      ? xml('cac:ManufacturerParty', {}, [xml('cac:PartyName', {}, [xml('cbc:Name', {}, part.maker)])])
      : undefined,
  ]);
}
