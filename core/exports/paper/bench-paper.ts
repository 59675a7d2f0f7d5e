import type { Project } from '../../model/project';
import { baselineOf } from '../../model/baseline';
import { cautionsOf, SHOP_CAUTIONS } from '../cautions';
import { documentHead } from '../document-head';
import type { DocumentInput, Exporter } from '../exporter';
import type { Table } from '../table';
import type { Paper, PaperBlock } from './paper';
import type { Sheet } from './sheet';

type Lines = readonly (readonly [string, string])[];

/** The head of a document that goes to the bench: with the cautions of the bench. */
export const benchHead = (project: Project, title: string, more: Lines = []): Table['head'] => [
  ...documentHead(project, title, more),
  ...SHOP_CAUTIONS.map((text): [string, string] => ['Caution', text]),
];

/** A paper for the bench: limit set and summary first, then its blocks. */
export function benchPaper(
  { id, title }: Pick<Exporter, 'id' | 'title'>,
  { harness: { project }, date }: DocumentInput,
  summary: Lines,
  blocks: readonly PaperBlock[],
  sheet?: Sheet,
): Paper {
  const revision = project.revisions.at(-1);
  const { name, revision: of } = project.limitSet;
  return {
    id,
    title,
    titleBlock: project.titleBlock,
    revision: revision ? `${revision.revision} (${revision.status})` : 'not given',
    baseline: baselineOf(project),
    date,
    ...(sheet ? { sheet } : {}),
    cautions: [...cautionsOf(project), ...SHOP_CAUTIONS],
    blocks: [
      {
        kind: 'fields',
        rows: [
          ...summary.map(([label, value]): [string, string] => [label, value]),
          ['Limit set', `${name}, revision ${of}`],
        ],
      },
      ...blocks,
    ],
  };
}
