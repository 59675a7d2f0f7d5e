export type FitAspect =
  'contact-kind' | 'contact-series' | 'conductor' | 'insulation' | 'solid' | 'double-crimp';

/** A value that a fit was decided on; `wire` is the place of the wire in the list that was asked about. */
export interface FitFact {
  readonly of: 'housing' | 'contact' | 'wire';
  readonly wire?: number;
  readonly label: string;
  readonly value: string | number;
  readonly unit?: string;
}

/** Why something does not fit: what it is against what it would have to be. */
export interface FitReason {
  readonly aspect: FitAspect;
  readonly measured: string;
  readonly limit: string;
}

/** A field without which the fit cannot be decided, as a path within the record. */
export interface FitNeed {
  readonly of: 'housing' | 'contact' | 'wire';
  readonly wire?: number;
  readonly field: string;
  /** In words that "of C-100" may follow. */
  readonly what: string;
}

export type Fit = { readonly facts: readonly FitFact[] } & (
  | { readonly verdict: 'fits' }
  | { readonly verdict: 'does-not-fit'; readonly reasons: readonly FitReason[] }
  | { readonly verdict: 'unknown'; readonly needs: readonly FitNeed[] }
);
