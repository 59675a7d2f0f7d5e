import { type Handlers } from '@latchwork/core/bridge/contract';
import { type Backups } from './backups';
import { type PathTokens } from './path-tokens';
import { failed } from './reason';

type BackupChannels = Extract<keyof Handlers, `backup:${string}`>;

export function backupHandlers(backups: Backups, tokens: PathTokens): Pick<Handlers, BackupChannels> {
  return {
    'backup:write': ({ document, token, revision, name, text }) =>
      backups.write({ document, name, revision, text, path: token === null ? null : tokens.pathFor(token) }),
    'backup:list': async () => ({
      backups: (await backups.list()).map(({ document, name, written }) => ({ document, name, written })),
    }),
    'backup:open': async ({ document }) => {
      const backup = await backups.read(document);
      if (!backup) return failed('This backup cannot be read.');
      const { path, name, text, revision } = backup;
      // With the revision it was based on, so that a later save notices what happened to the file meanwhile.
      return { status: 'opened', token: path === null ? null : tokens.tokenFor(path), name, text, revision };
    },
    'backup:discard': ({ document }) => backups.discard(document),
  };
}
