/** A disk that does not answer: a share whose server is gone, a drive that sleeps for ever. */
export class Stalled extends Error {
  readonly code = 'STALLED';
}

export const READ_WITHIN_MS = 20_000;
/** Large files on slow shares are written in this time, or nobody would want to wait for them. */
export const WRITE_WITHIN_MS = 60_000;

/**
 * The outcome of `work`, or a `Stalled` error when there is none in time. What was begun cannot be called back: it may
 * still end well later, and the next look at the file tells.
 */
export function within<T>(work: Promise<T>, timeMs: number): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Stalled()), timeMs);
  });
  return Promise.race([work, late]).finally(() => clearTimeout(timer));
}
