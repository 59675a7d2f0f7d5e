import { randomBytes } from 'node:crypto';
import { join, resolve } from 'node:path';
import { z } from 'zod';
import { version } from '../package.json';
import { createHandlers, openServices } from '../services/handlers';
import { bundledPlaces, defaultDataFolder, defaultWorkFolder } from '../services/places';
import { type Shell } from '../services/shell';
import { findChromium } from '../start/chromium.mjs';
import { openAppWindow } from './app-window';
import { type HostArguments, hostArguments } from './arguments';
import { startHost } from './server';
import { Ticket } from './ticket';

z.config({ jitless: true });

const initialOf = ({ file, demo }: HostArguments): Shell['initial'] => {
  if (file) return { path: resolve(file) };
  return demo ? { demo } : null;
};

async function main(argv: readonly string[]): Promise<void> {
  const parsed = hostArguments(argv);
  if (!parsed.ok) {
    process.stderr.write(`${parsed.problem}\n`);
    process.exitCode = 2;
    return;
  }
  const given = parsed.value;
  const places = {
    ...bundledPlaces(join(__dirname, '..', '..')),
    dataFolder: given.data ? resolve(given.data) : defaultDataFolder(),
    workFolder: given.folder ? resolve(given.folder) : defaultWorkFolder(),
  };
  const handlers = createHandlers(openServices(places), {
    host: 'browser',
    version,
    dialogs: null,
    openExternal: async () => ({ status: 'here' }),
    initial: initialOf(given),
  });
  const ticket = new Ticket(randomBytes(32).toString('base64url'));
  const host = await startHost({
    handlers,
    ticket,
    windowFolder: places.windowFolder,
    token: randomBytes(32).toString('base64url'),
    port: given.port,
  });
  process.stdout.write(`Latchwork is at ${host.address}\n`);
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => void host.close());

  const browser = given.window ? findChromium() : null;
  if (given.window && !browser)
    process.stdout.write('No Chromium was found: open the address in a browser.\n');
  if (browser)
    openAppWindow(browser, `http://127.0.0.1:${host.port}/#ticket=${ticket.text}`)
      .once('error', () => process.stdout.write('The window did not open: open the address in a browser.\n'))
      .once('exit', () => void host.close());
}

void main(process.argv.slice(2)).catch((error: unknown) => {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 2;
});
