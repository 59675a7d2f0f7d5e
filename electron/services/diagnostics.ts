import { availableParallelism, release, totalmem } from 'node:os';
import { type Log } from './log';
import { type Shell } from './shell';

/** What helps to find a fault, as text to be looked at and sent by the user: the program, the machine, what happened. */
export function diagnosticsText(shell: Pick<Shell, 'version' | 'host'>, log: Log): string {
  const { electron, chrome, node } = process.versions;
  const rows: readonly (readonly [string, string])[] = [
    ['Latchwork', `${shell.version} (${shell.host} host)`],
    ['System', `${process.platform} ${release()} ${process.arch}`],
    ['Runtime', [electron && `Electron ${electron}`, chrome && `Chromium ${chrome}`, `Node ${node}`].filter(Boolean).join(', ')],
    ['Machine', `${availableParallelism()} cores, ${Math.round(totalmem() / 2 ** 30)} GiB`],
    ['Memory used', `${Math.round(process.memoryUsage().rss / 2 ** 20)} MiB`],
    ['Running for', `${Math.round(process.uptime())} s`],
  ]; // prettier-ignore
  return [
    ...rows.map(([label, value]) => `${label}: ${value}`),
    '',
    'Log of this run:',
    ...log.recent(),
  ].join('\n');
}
