import { XmlDocument } from 'libxml2-wasm';
import { describe, expect, it } from 'vitest';
import type { DocumentInput, DocumentOptions } from '@latchwork/core/exports/exporter';
import { purchaseList } from '@latchwork/core/exports/purchase-list';
import { requestForQuotation } from '@latchwork/core/exports/request-for-quotation';
import { baselineOf } from '@latchwork/core/model/baseline';
import { tiny } from '@latchwork/core/model/tiny';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import type { Project } from '@latchwork/core/model/project';
import { weatherStation } from '../../generate/demos/weather-station/weather-station';
import { schemaErrors } from './xml/xsd';

const STATION = weatherStation();

const UBL = 'ubl-2.1/maindoc/UBL-RequestForQuotation-2.1.xsd';

const inputOf = (project: Project, options: DocumentOptions = {}): DocumentInput => {
  const harness = deriveHarness(project);
  return { harness, check: checkHarness(harness, []), date: '2026-03-01', options };
};

function textOf(input: DocumentInput): string {
  const text = requestForQuotation.xml!.text(input);
  if (!text.ok) throw new Error(text.problem);
  return text.value;
}

/** The texts at a path of the file, read by libxml2. */
function read(text: string, path: string): string[] {
  const document = XmlDocument.fromString(text);
  const namespaces = {
    r: 'urn:oasis:names:specification:ubl:schema:xsd:RequestForQuotation-2',
    cac: 'urn:oasis:names:specification:ubl:schema:xsd:CommonAggregateComponents-2',
    cbc: 'urn:oasis:names:specification:ubl:schema:xsd:CommonBasicComponents-2',
  };
  try {
    return document.find(path, namespaces).map((node) => node.content);
  } finally {
    document.dispose();
  }
}

describe('a request for quotation as UBL', () => {
  const input = inputOf(STATION, { quantity: 100 });

  // Outside: the schemas of OASIS, read by libxml2.
  it.each([1, 10, 100, 1000])('is valid against the schema of UBL 2.1 for %i', (quantity) => {
    expect(schemaErrors(UBL, textOf(inputOf(STATION, { quantity })))).toEqual([]);
  });

  it('is refused by that schema when a line has no item, so that the check can fail', () => {
    const broken = textOf(input).replace(/<cac:Item>[\s\S]*?<\/cac:Item>/, '');
    expect(schemaErrors(UBL, broken).join()).toContain('LineItem');
  });

  it('asks for what the purchase list orders, line by line', () => {
    const rows = purchaseList.table(input).rows;
    const line = '/r:RequestForQuotation/cac:RequestForQuotationLine/cac:LineItem';
    expect(read(textOf(input), `${line}/cbc:Quantity`).map(Number)).toEqual(
      rows.map((r) => r['orderQuantity']),
    );
    expect(read(textOf(input), `${line}/cbc:Quantity/@unitCode`)).toEqual(
      rows.map((r) => (r['unit'] === 'm' ? 'MTR' : 'C62')),
    );
    expect(read(textOf(input), `${line}/cac:Item/cac:ManufacturersItemIdentification/cbc:ID`)).toEqual(
      rows.map((r) => r['partNumber']),
    );
    expect(read(textOf(input), '/r:RequestForQuotation/cbc:LineCountNumeric').map(Number)).toEqual([
      rows.length,
    ]);
  });

  it('bears revision and baseline, and the day that it is asked on', () => {
    const text = textOf(input);
    expect(read(text, '//cac:AdditionalDocumentReference/cbc:DocumentDescription')).toEqual([
      `Baseline (SHA-256) ${baselineOf(STATION)}`,
    ]);
    expect(read(text, '//cac:AdditionalDocumentReference/cbc:VersionID')).toEqual(['A']);
    expect(read(text, '/r:RequestForQuotation/cbc:IssueDate')).toEqual(['2026-03-01']);
  });

  it('tells no supplier what another asks', () => {
    const text = textOf(input);
    expect(text).not.toContain('Example Trading');
    expect(text).not.toContain('PriceAmount');
  });

  it('asks one supplier for what this one offers, with his own numbers', () => {
    const south = 'Example Trading South (invented)';
    const project = STATION;
    const text = textOf(inputOf(project, { quantity: 10, supplier: south }));
    const offered = project.parts.filter((p) => p.offers?.some((o) => o.supplier === south));
    const asked = read(text, '//cac:ManufacturersItemIdentification/cbc:ID');
    expect(asked.length).toBeGreaterThan(0);
    expect(asked.filter((n) => !offered.some((p) => p.partNumber === n))).toEqual([]);
    expect(read(text, '//cac:SellerSupplierParty//cbc:Name')).toEqual([south]);
    expect(schemaErrors(UBL, text)).toEqual([]);
  });
});

describe('a request for a harness of which not all is known', () => {
  it('asks for the need where nobody offers the part, and names what nobody can be asked for', () => {
    const project = tiny((t) => {
      for (const p of t.project.parts) delete p.offers;
      delete t.wire('W1').part;
    });
    const input = inputOf(project, { quantity: 3 });
    const text = textOf(input);
    expect(schemaErrors(UBL, text)).toEqual([]);
    expect(read(text, '/r:RequestForQuotation/cbc:Note').join(' ')).toContain('no part chosen');
  });

  it('is refused in words where there is nothing to ask for', () => {
    const project = tiny((t) => {
      t.project.wires = [];
      t.project.contacts = [];
      for (const c of t.project.connectors) c.supply = 'equipment';
    });
    expect(requestForQuotation.xml!.text(inputOf(project))).toEqual({
      ok: false,
      problem: 'There is nothing to ask for.',
    });
  });

  it('says which character cannot be carried, and where', () => {
    const project = tiny((t) => void (t.part('contact', 'C-PIN').description = 'bell \u0007'));
    expect(requestForQuotation.xml!.text(inputOf(project))).toMatchObject({
      ok: false,
      problem: expect.stringContaining('U+0007') as unknown,
    });
  });
});
