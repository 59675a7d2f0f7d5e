import { cavityLayoutOf } from '../derive/cavity-layout';
import type { ConnectorsPlan } from './connectors';
import type { FromToRow } from './from-to';
import type { ImportProblem } from './import-problem';

/** An end of a row by name, before ids exist. */
export type NamedEnd =
  | { readonly at: 'cavity'; readonly connector: string; readonly cavity: string }
  | { readonly at: 'splice'; readonly splice: string };

const FIELDS = [
  ['from', 'from_cavity'],
  ['to', 'to_cavity'],
] as const;

/**
 * What the ends of all rows mean: a cavity of a connector, or, where the name is no connector and no cavity is
 * given, a splice of that name. A name at which only one wire ends is no splice: it is a slip.
 */
export function readEnds(
  rows: readonly FromToRow[],
  connectors: ConnectorsPlan['connectors'],
  problems: ImportProblem[],
): readonly (readonly NamedEnd[])[] {
  const known = new Map(connectors.map((c) => [c.designator, c]));
  const splices = new Map<string, (() => ImportProblem)[]>();
  const ends = rows.map((row) =>
    FIELDS.flatMap(([nameField, cavityField]): NamedEnd[] => {
      const name = row.values[nameField];
      const cavity = row.values[cavityField];
      const connector = known.get(name);
      if (!connector && cavity === undefined) {
        const single = (): ImportProblem =>
          row.problem(
            nameField,
            `${name} is no connector of the connectors file, and a splice joins two wire ends or more`,
          );
        const uses = splices.get(name);
        if (uses) uses.push(single);
        else splices.set(name, [single]);
        return [{ at: 'splice', splice: name }];
      }
      if (!connector)
        problems.push(
          row.problem(nameField, `there is no connector ${name}: its part must stand in the connectors file`),
        );
      else if (connector.part.kind === 'header')
        problems.push(
          row.problem(
            nameField,
            `${name} is a header, its contacts are soldered to the board: end the wire in the housing that plugs onto it`,
          ),
        );
      else if (cavity === undefined)
        problems.push(row.problem(cavityField, `${name} is a connector: name the cavity`));
      else if (!cavityLayoutOf(connector.part).byCavity.has(cavity))
        problems.push(
          row.problem(
            cavityField,
            `${name} has no cavity ${cavity} (${connector.part.partNumber} has 1 to ${connector.part.ways})`,
          ),
        );
      else return [{ at: 'cavity', connector: name, cavity }];
      return [];
    }),
  );
  for (const uses of splices.values()) {
    const [only, ...others] = uses;
    if (only && others.length === 0) problems.push(only());
  }
  return ends;
}
