/** The world's yes or no. Findings are not errors and bugs are thrown; this is for what lies outside us. */
export type Result<T, P> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: P };

export const ok = <T>(value: T): { ok: true; value: T } => ({ ok: true, value });

export const problem = <P>(p: P): { ok: false; problem: P } => ({ ok: false, problem: p });
