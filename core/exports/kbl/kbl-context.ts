import type { Harness } from '../../derive/harness';
import type { ExchangeReport } from '../exchange/exchange-report';
import type { Junction } from '../exchange/junctions';
import { UniqueNames } from '../exchange/unique-names';
import type { XmlElement } from '../xml/xml';
import type { KblUnits } from './kbl-values';

/** What is handed from writer to writer while one file is made. */
export interface KblContext {
  readonly harness: Harness;
  readonly report: ExchangeReport;
  readonly units: KblUnits;
  readonly junctions: readonly Junction[];
  /** Elements of the container and of the harness, by element name; the file puts them into the order of the schema. */
  readonly container: Buckets;
  readonly harnessParts: Buckets;
  /** Ids of parts that are written already. */
  readonly partsWritten: Set<string>;
  readonly connectorsWritten: Set<string>;
  /** Components that sit at a node. */
  readonly atNode: Map<string, string[]>;
  /** The contact point of each wire end, by wire and end. */
  readonly contactPointOf: Map<string, string>;
  readonly names: (scope: string) => UniqueNames;
}

/** Elements by name. */
export class Buckets {
  private readonly lists = new Map<string, XmlElement[]>();

  add(element: XmlElement): void {
    const list = this.lists.get(element.name);
    if (list) list.push(element);
    else this.lists.set(element.name, [element]);
  }

  inOrder(names: readonly string[]): XmlElement[] {
    return names.flatMap((name) => this.lists.get(name) ?? []);
  }
}

/** One set of names for each scope in which names must differ. */
export function nameScopes(): (scope: string) => UniqueNames {
  const scopes = new Map<string, UniqueNames>();
  return (scope) => {
    const known = scopes.get(scope);
    if (known) return known;
    const made = new UniqueNames();
    scopes.set(scope, made);
    return made;
  };
}

export const endKey = (wire: string, index: number): string => `${wire} ${index}`;
