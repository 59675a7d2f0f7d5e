import type {
  CavityUse,
  ConnectorUse,
  Harness,
  Net,
  ResolvedMate,
  ResolvedWire,
  SegmentUse,
  Supply,
} from '../derive/harness';
import type { LimitSet, Limit } from '../model/limit-set';
import type { LimitId, TableId } from '../model/limit-sets/limit-ids';
import type { Part } from '../model/parts/part';
import type { Project } from '../model/project';
import type { Evidence, Fix, Need, ObjectRef, Severity } from './finding';

/**
 * What a rule is asked about. A rule reads its item, what the item refers to, and the limit set: nothing else. So
 * its answer holds for as long as the item keeps its identity. `project` rules read the whole harness and are
 * asked after every edit: only for what no smaller item can tell.
 */
export interface ScopeItem {
  connector: ConnectorUse;
  /** A cavity in which a wire ends or a contact sits. */
  cavity: CavityUse;
  wire: ResolvedWire;
  mate: ResolvedMate;
  net: Net;
  segment: SegmentUse;
  supply: Supply;
  part: Part;
  project: Harness;
}
export type Scope = keyof ScopeItem;

export interface RuleMeta {
  readonly id: string;
  /** Raised when the rule's condition or limit changes, so that decisions made against the old one are seen. */
  readonly revision: number;
  readonly severity: Severity;
  /** The condition, as one sentence that is true when all is well. */
  readonly summary: string;
  /** What happens in the metal when it is not. */
  readonly why: string;
  /** Where the condition comes from: a standard with its clause, a handbook, "common practice". */
  readonly source: string;
  /** Sentence for a failure with {{placeholders}} that `data` fills. */
  readonly message: string;
  /** Sentence for a case that cannot be decided; {{needs}} lists the missing inputs. */
  readonly unknown: string;
}

export type Data = Readonly<Record<string, string | number>>;

export interface Failure {
  /** The object the finding belongs to first, then others that take part. */
  readonly at: readonly ObjectRef[];
  readonly data: Data;
  readonly evidence?: readonly Evidence[];
  readonly fix?: Fix | undefined;
  /** Where one rule has graver and lighter cases. */
  readonly severity?: Severity;
  /** Nothing is wrong yet, something is still to be said: see `Finding.open`. */
  readonly open?: boolean;
}

export interface Unknown {
  readonly at: readonly ObjectRef[];
  readonly data: Data;
  readonly needs: readonly Need[];
  readonly evidence?: readonly Evidence[];
  readonly open?: boolean;
}

/** How a rule answers. An item about which it says nothing is outside its subject. */
export interface Report {
  pass(): void;
  fail(failure: Failure): void;
  cannotVerify(unknown: Unknown): void;
}

export interface RuleContext {
  readonly limitSet: LimitSet;
  limit(id: LimitId): Limit | undefined;
  /** Name of the published table that the project goes by. */
  table(id: TableId): string | undefined;
  /** Whether as many are to be built as the limit series-from says. */
  readonly isSeries: boolean;
}

/** Rules of parts may hold a record against the catalogues that are open. */
export interface PartContext extends RuleContext {
  /** The record of that part as the catalogue has it now; undefined without one, or without a catalogue. */
  catalogueRecord(part: Part): Part | undefined;
}

export type ContextOf<S extends Scope> = S extends 'part' ? PartContext : RuleContext;

/** A project on which a rule is shown at work. `expect` names the objects of the findings, see `refText`. */
export interface Example {
  readonly name: string;
  readonly project: Project;
  readonly expect: readonly string[];
  /** Records of the catalogues that are open meanwhile. */
  readonly catalogue?: readonly Part[];
}

export interface RuleExamples {
  readonly good: readonly Omit<Example, 'expect'>[];
  readonly bad: readonly Example[];
  readonly unknown: readonly Example[];
}

export interface Rule<S extends Scope = Scope> {
  readonly meta: RuleMeta;
  readonly scope: S;
  check(item: ScopeItem[S], report: Report, context: ContextOf<S>): void;
  /** Made when asked for, so that the program does not build them at start. */
  examples(): RuleExamples;
}

/** Any rule, whatever its scope; the runner hands each the items of its own scope. */
export type AnyRule = { [S in Scope]: Rule<S> }[Scope];
