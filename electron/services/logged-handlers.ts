import { type Handlers } from '@latchwork/core/bridge/contract';
import { errorFacts, type Log } from './log';

/** Answers that only say that nothing has happened. */
const QUIET = new Set(['same', 'held', 'here', 'running']);

/** The same answers, each with a line in the log: which call, what came of it, how long it took. Nothing of its content. */
export function loggedHandlers(handlers: Handlers, log: Log): Handlers {
  const logged = Object.entries(handlers).map(([channel, handler]) => [
    channel,
    async (request: never): Promise<unknown> => {
      const start = performance.now();
      try {
        const answer: unknown = await (handler as (r: never) => Promise<unknown>)(request);
        const status = statusOf(answer);
        if (!QUIET.has(status))
          log.write('call', { channel, status, ms: Math.round(performance.now() - start) });
        return answer;
      } catch (error) {
        log.write('fault', { channel, ...errorFacts(error) });
        throw error;
      }
    },
  ]);
  return Object.fromEntries(logged) as unknown as Handlers;
}

const statusOf = (answer: unknown): string =>
  typeof answer === 'object' && answer !== null && 'status' in answer ? String(answer.status) : 'answered';
