import { readFile } from 'node:fs/promises';
import { extname, resolve, sep } from 'node:path';

const mediaTypes: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
};

export interface WindowFile {
  readonly bytes: Buffer;
  readonly mediaType: string;
}

/**
 * A file of the built window by the path of its address, or null. Only files of known kinds below `folder`:
 * an address cannot climb out, also not encoded.
 */
export async function readWindowFile(folder: string, pathname: string): Promise<WindowFile | null> {
  let decoded: string;
  try {
    decoded = decodeURIComponent(pathname);
  } catch {
    return null;
  }
  if (decoded.includes('\0') || decoded.includes('\\')) return null;
  const path = resolve(folder, `.${decoded.endsWith('/') ? `${decoded}index.html` : decoded}`);
  const mediaType = mediaTypes[extname(path).toLowerCase()];
  if (!path.startsWith(resolve(folder) + sep) || !mediaType) return null;
  const bytes = await readFile(path).catch(() => null);
  return bytes && { bytes, mediaType };
}
