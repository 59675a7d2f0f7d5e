/** Waits until nothing else is to be done, or for a moment; ends with the reason of the signal. */
export const whenIdle = (signal: AbortSignal, atMostMs = 200): Promise<void> =>
  new Promise((resolve, reject) => {
    requestIdleCallback(() => (signal.aborted ? reject(signal.reason) : resolve()), { timeout: atMostMs });
  });
