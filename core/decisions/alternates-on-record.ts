import type { Part } from '../model/parts/part';
import type { Project } from '../model/project';
import { boughtParts, recordByNumber } from '../rules/shared/bought-parts';

/** A bought part whose record names alternates, with their records where there are any. */
export interface NamedAlternates {
  readonly part: Part;
  readonly records: readonly { readonly alternate: Part; readonly inProject: boolean }[];
  /** Part numbers of which neither the project nor a catalogue has a record. */
  readonly missing: readonly string[];
}

/** Alternates that the records of bought parts name, in the order of the project; records of the project go first. */
export function alternatesOnRecord(project: Project, catalogue: readonly Part[]): readonly NamedAlternates[] {
  return boughtParts(project).flatMap((part) => {
    const numbers = [...new Set(part.alternates ?? [])];
    if (numbers.length === 0) return [];
    const found = numbers.map((number) => {
      const mine = recordByNumber(project, number, part.maker);
      return { number, record: mine ?? inCatalogue(catalogue, number, part.maker), inProject: !!mine };
    });
    return [
      {
        part,
        records: found.flatMap(({ record, inProject }) => (record ? [{ alternate: record, inProject }] : [])),
        missing: found.flatMap(({ number, record }) => (record ? [] : [number])),
      },
    ];
  });
}

function inCatalogue(catalogue: readonly Part[], number: string, maker: string): Part | undefined {
  const same = catalogue.filter((p) => p.partNumber === number);
  return same.find((p) => p.maker === maker) ?? same[0];
}
