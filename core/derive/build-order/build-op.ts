/** Kinds of work in the order in which a shop does them where nothing else decides. */
export const STAGES = [
  'cut',
  'slide-on-wire',
  'crimp',
  'twist',
  'slide-on-bundle',
  'terminal',
  'splice',
  'insert',
  'fill',
  'lay',
  'cover',
  'fix',
  'label',
  'lock',
  'fit',
  'inspect',
  'test',
  'pack',
] as const;
export type Stage = (typeof STAGES)[number];

/** What an operation is done to, as findings and documents name objects. */
export interface OpObject {
  readonly type:
    | 'wire'
    | 'cable'
    | 'cavity'
    | 'connector'
    | 'splice'
    | 'group'
    | 'segment'
    | 'covering'
    | 'fuse'
    | 'project';
  readonly id: string;
  readonly cavity?: string;
}

/** An operation that must be done before, and why. */
export interface OpNeed {
  readonly op: string;
  readonly because: string;
}

/** The smallest piece of work that is told apart. */
export interface BuildOp {
  readonly id: string;
  readonly stage: Stage;
  /** Operations of a stage with the same key make one step where nothing comes between. */
  readonly gather: string;
  /** "Crimp C-1 on WIRE-22 with AP-1": said once for the step. */
  readonly what: string;
  /** "X1:3", "W4": what this one is done to. */
  readonly place: string;
  readonly objects: readonly OpObject[];
  /** Part numbers used up; null where a part is needed and not chosen. */
  readonly parts: readonly { readonly part: string | null; readonly quantity: number }[];
  readonly needs: readonly OpNeed[];
}
