import type { Project } from '../../model/project';
import type { ExchangeReport } from './exchange-report';

/** Collections whose names share a scope in an exchange file. */
const SCOPES = [
  ['connectors', 'splices', 'wires', 'cables', 'fuses', 'coverings', 'fixings'],
  ['nodes'],
  ['segments'],
  ['signals'],
] as const;

/** Tells of every object whose name another has too: in a file one of them has its id behind the name. */
export function reportRepeatedNames(project: Project, report: ExchangeReport): void {
  for (const scope of SCOPES) {
    const uses = new Map<string, number>();
    for (const collection of scope)
      for (const object of project[collection]) {
        const name = 'name' in object ? object.name : object.designator;
        if (name !== undefined) uses.set(name, (uses.get(name) ?? 0) + 1);
      }
    for (const [name, count] of uses)
      if (count > 1)
        report.lose(name, `${count} objects have this name: all but one stand under the name and their id`);
  }
}
