import { changesOf } from '../../derive/changes-of';
import type { Project } from '../../model/project';
import type { DocumentInput, Exporter } from '../exporter';
import { defaultQuantity } from '../purchase/purchase-order';
import { AREAS, type ChangeRow } from './change-row';
import { type DocumentChange, documentChanges, documentChangeText } from './document-changes';
import { findingChanges, partsListChanges } from './listed-changes';
import { lengthChanges, netChanges } from './net-changes';
import { objectChanges } from './object-changes';

/** Everything that differs between two states of a project. */
export interface Comparison {
  readonly before: DocumentInput;
  readonly after: DocumentInput;
  /** Harnesses of the order that quantities are told for. */
  readonly quantity: number;
  /** By area, in the order of AREAS. */
  readonly rows: readonly ChangeRow[];
  readonly documents: readonly DocumentChange[];
}

/** Why two projects are not compared as states of one, in words; null where they are. */
export function notComparable(before: Project, after: Project): string | null {
  if (before.id === after.id) return null;
  return `${nameOf(before)} and ${nameOf(after)} are different projects: their objects have nothing to do with each other.`;
}

const nameOf = ({ titleBlock: t }: Project): string =>
  `"${t.title}"${t.identificationNumber ? ` (${t.identificationNumber})` : ''}`;

/** Whether nothing of one state differs from the other: objects, title block, limits, decisions. */
export const isSame = (before: Project, after: Project): boolean =>
  before.id === after.id && changesOf(before, after).length === 0;

/** Compares by the ids of objects; what is derived is derived and compared, not guessed from what was edited. */
export function compareProjects(
  before: DocumentInput,
  after: DocumentInput,
  exporters: readonly Exporter[],
  harnesses?: number,
): Comparison {
  const quantity = harnesses ?? defaultQuantity(after.harness.project);
  const documents = documentChanges(exporters, before, after);
  const rows: readonly ChangeRow[] = [
    ...objectChanges(before.harness.project, after.harness.project),
    ...lengthChanges(before.harness, after.harness),
    ...netChanges(before.harness, after.harness),
    ...partsListChanges(before, after, quantity),
    ...findingChanges(before, after),
    ...documents.map((d): ChangeRow => ({
      area: 'Documents',
      what: 'changed',
      subject: d.exporter.title,
      field: documentChangeText(d),
      before: '',
      after: '',
      objects: [],
      gone: [],
    })),
  ];
  return {
    before,
    after,
    quantity,
    rows: AREAS.flatMap((area) => rows.filter((r) => r.area === area)),
    documents,
  };
}

/** Counted changes of each area that has any: "Wires: 2 added, 1 changed". */
export const areaSummary = ({ rows }: Pick<Comparison, 'rows'>): readonly (readonly [string, string])[] =>
  AREAS.flatMap((area) => {
    const mine = rows.filter((r) => r.area === area);
    const counts = (['added', 'removed', 'changed'] as const).flatMap((what) => {
      const n = mine.filter((r) => r.what === what).length;
      return n > 0 ? [`${n} ${what}`] : [];
    });
    return counts.length > 0 ? [[area, counts.join(', ')] as const] : [];
  });
