import type { Part } from '../../model/parts/part';
import { UniqueNames } from '../exchange/unique-names';
import { wireVariants } from '../exchange/wire-variants';
import { iriOf } from '../exchange/xml-id';
import type { XmlElement } from '../xml/xml';
import { toolId } from './crimp-details';
import { generalSpecs, partMaster, specsOfKind } from './part-master';
import type { VecContext } from './vec-context';
import { node, properties, value } from './vec-values';
import { wireSpecs } from './wire-specs';
import { otherFields } from '../exchange/field-text';

export interface Library {
  readonly documents: readonly XmlElement[];
  readonly parts: readonly XmlElement[];
  readonly tools: readonly XmlElement[];
}

/**
 * Every part record of the project: wire once for each colour that is used, tools as resources, the others as they stand.
 * Two records of one maker and number are told apart by the version, since VEC takes equal names for one part.
 */
export function library(ctx: VecContext): Library {
  const versions = new UniqueNames();
  const variants = wireVariants(ctx.harness);
  const documents: XmlElement[] = [];
  const parts: XmlElement[] = [];
  const add = (
    part: Part,
    key: string,
    partNumber: string,
    iri: string | undefined,
    specs: XmlElement[],
  ): void => {
    const unique = versions.give(`${part.maker}\n${partNumber}`, part.id);
    const version = unique === `${part.maker}\n${partNumber}` ? '/NULL' : part.id;
    const made = partMaster(ctx, part, { key, partNumber, version, iri }, specs);
    documents.push(made.document);
    parts.push(made.version);
  };
  for (const part of ctx.harness.project.parts) {
    if (part.kind === 'tool') continue;
    ctx.report.wrote('parts');
    if (part.kind !== 'wire') {
      const specs = [...generalSpecs(ctx, part.id, part), ...specsOfKind(ctx, part.id, part)];
      add(part, part.id, part.partNumber, part.id, specs);
      continue;
    }
    const mine = variants.filter((v) => v.part === part);
    for (const v of mine)
      add(part, v.key, v.partNumber, mine.length === 1 ? part.id : undefined, [
        ...generalSpecs(ctx, v.key, part),
        ...wireSpecs(ctx, v),
      ]);
  }
  return { documents, parts, tools: crimpTools(ctx) };
}

/** Crimp tools and extractors; VEC has no type for the others. */
function crimpTools(ctx: VecContext): XmlElement[] {
  const unique = new UniqueNames();
  return ctx.harness.project.parts.flatMap((part) => {
    if (part.kind !== 'tool') return [];
    const type = part.form && RESOURCE_TYPES[part.form];
    if (type === undefined) {
      ctx.report.lose(`tool ${part.partNumber}`, 'VEC knows crimp and extraction tools only', {
        type: 'part',
        id: part.id,
      });
      return [];
    }
    const name = unique.give(part.partNumber, part.id);
    const id = toolId(name);
    ctx.report.wrote('parts');
    return node('ResourceVersion', { id, iri: iriOf(part.id) }, [
      properties(
        id,
        otherFields(part, new Set(['id', 'kind', 'maker', 'partNumber', 'description', 'offers'])),
      ),
      ctx.values.text('Description', id, part.description),
      value('CompanyName', part.maker),
      value('ResourceNumber', part.partNumber),
      value('ResourceVersion', name === part.partNumber ? '/NULL' : part.id),
      value('PrimaryResourceType', type),
    ]);
  });
}

const RESOURCE_TYPES: Readonly<Record<string, string>> = {
  hand: 'CrimpTool',
  press: 'CrimpTool',
  extraction: 'ExtractionTool',
};
