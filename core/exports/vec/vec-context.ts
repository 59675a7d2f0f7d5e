import type { Harness } from '../../derive/harness';
import type { ExchangeReport } from '../exchange/exchange-report';
import type { Junction } from '../exchange/junctions';
import type { UniqueNames } from '../exchange/unique-names';
import type { XmlElement } from '../xml/xml';
import type { VecUnits } from './vec-units';
import type { VecValues } from './vec-values';

export interface PartShape {
  readonly primary: string;
  readonly specification: string;
  readonly role: string;
  /** Element of the role that refers to the specification. */
  readonly reference: string;
}

/** What is handed from writer to writer while one file is made. */
export interface VecContext {
  readonly harness: Harness;
  readonly report: ExchangeReport;
  readonly units: VecUnits;
  readonly values: VecValues;
  readonly junctions: readonly Junction[];
  /** Identifications of occurrences and usages. */
  readonly names: UniqueNames;
  readonly components: XmlElement[];
  readonly usages: XmlElement[];
  /** Ids of what is bought with the harness. */
  readonly billOfMaterial: string[];
  /** Specifications of parts that were not chosen, by the key of their item. */
  readonly unchosen: Map<string, readonly XmlElement[]>;
}
