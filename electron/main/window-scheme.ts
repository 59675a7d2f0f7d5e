import { protocol } from 'electron';
import { readWindowFile } from '../services/window-files';
import { windowHeaders } from '../services/window-policy';
import { WINDOW_SCHEME, isWindowAddress } from './window-address';

/** Must run before the app is ready. */
export function declareWindowScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: WINDOW_SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
}

export function serveWindowScheme(windowFolder: string): void {
  protocol.handle(WINDOW_SCHEME, async (request) => {
    const file =
      request.method === 'GET' && isWindowAddress(request.url)
        ? await readWindowFile(windowFolder, new URL(request.url).pathname)
        : null;
    if (!file) return new Response('Not found.', { status: 404, headers: windowHeaders });
    return new Response(new Uint8Array(file.bytes), {
      headers: { ...windowHeaders, 'Content-Type': file.mediaType },
    });
  });
}
