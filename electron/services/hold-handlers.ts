import { type Handlers } from '@latchwork/core/bridge/contract';
import { type FileLocks } from './file-lock';
import { type PathTokens } from './path-tokens';
import { reasonOf } from './reason';

export function holdHandlers(
  locks: FileLocks,
  tokens: PathTokens,
): Pick<Handlers, 'project:hold' | 'project:let-go'> {
  return {
    'project:hold': async ({ token, window, takeOver }) => {
      const path = tokens.pathFor(token);
      if (!path) return { status: 'unguarded', reason: 'This file is not open here any more.' };
      try {
        const holder = await locks.hold(path, window, takeOver);
        if (!holder) return { status: 'held' };
        const { user, host, since } = holder;
        return { status: 'held-elsewhere', user, host, since };
      } catch (error) {
        // A folder that cannot be written to, a share without such files: work goes on, revisions are still compared.
        return { status: 'unguarded', reason: reasonOf(error) };
      }
    },
    'project:let-go': async ({ token, window }) => {
      const path = tokens.pathFor(token);
      if (path) await locks.letGo(path, window);
      return { status: 'done' };
    },
  };
}
