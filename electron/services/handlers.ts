import { hostname, userInfo } from 'node:os';
import { type Handlers } from '@latchwork/core/bridge/contract';
import { backupHandlers } from './backup-handlers';
import { Backups } from './backups';
import { catalogueHandlers } from './catalogue-handlers';
import { diagnosticsText } from './diagnostics';
import { exportHandlers } from './export-handlers';
import { jobHandlers } from './job-handlers';
import { Jobs } from './jobs';
import { FileLocks, isProcessAlive } from './file-lock';
import { holdHandlers } from './hold-handlers';
import { FindingHistory, findingHistoryHandlers } from './finding-history';
import { FileLog, framesOf, type Log } from './log';
import { loggedHandlers } from './logged-handlers';
import { PathTokens } from './path-tokens';
import { type Places } from './places';
import { projectHandlers } from './project-handlers';
import { RecentProjects } from './recent-projects';
import { SettingsFile } from './settings-file';
import { type Shell, isWebAddress } from './shell';

/** Everything that the windows of one running program share. */
export interface Services {
  readonly places: Places;
  readonly tokens: PathTokens;
  readonly recent: RecentProjects;
  readonly settings: SettingsFile;
  readonly backups: Backups;
  readonly findingHistory: FindingHistory;
  readonly locks: FileLocks;
  readonly log: Log;
  readonly jobs: Jobs;
}

export function openServices(places: Places, now: () => Date = () => new Date()): Services {
  const log = new FileLog(places.dataFolder, now);
  return {
    places,
    tokens: new PathTokens(),
    recent: new RecentProjects(places.dataFolder, now),
    settings: new SettingsFile(places.dataFolder),
    backups: new Backups(places.dataFolder, now),
    log,
    jobs: new Jobs(log),
    findingHistory: new FindingHistory(places.dataFolder),
    locks: new FileLocks({
      user: userInfo().username,
      host: hostname(),
      processId: process.pid,
      now,
      isAlive: isProcessAlive,
    }),
  };
}

/** All answers of a host to a window. */
export function createHandlers(services: Services, shell: Shell): Handlers {
  const { places, settings, backups, findingHistory, tokens, locks, log } = services;
  log.write('window', { version: shell.version, host: shell.host, platform: process.platform });
  const handlers: Handlers = {
    'app:info': async () => ({
      version: shell.version,
      host: shell.host,
      platform: process.platform,
      dialogs: shell.dialogs ? 'native' : 'listed',
    }),
    ...projectHandlers(services, shell),
    ...exportHandlers(places, shell),
    ...jobHandlers(services.jobs, places, shell),
    ...catalogueHandlers(places, shell),
    ...backupHandlers(backups, tokens),
    ...holdHandlers(locks, tokens),
    ...findingHistoryHandlers(findingHistory),
    'settings:get': () => settings.get(),
    'settings:set': (value) => settings.set(value),
    'shell:open-external': async ({ url }) =>
      isWebAddress(url)
        ? shell.openExternal(url)
        : { status: 'refused', reason: 'Only web addresses are opened.' },
    'app:report': async ({ name, stack }) => {
      log.write('window-error', { name, at: framesOf(stack).join(',') || 'unknown' });
      return { status: 'done' };
    },
    'app:diagnostics': async () => ({ text: diagnosticsText(shell, log) }),
  };
  return loggedHandlers(handlers, log);
}
