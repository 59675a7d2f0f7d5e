/** The bytes of strict base64, or null. Buffer itself skips what it does not know. */
export function bytesOfBase64(text: string): Uint8Array | null {
  if (text.length % 4 !== 0 || !/^[A-Za-z0-9+/]*={0,2}$/.test(text)) return null;
  return Buffer.from(text, 'base64');
}

export const base64Of = (bytes: Uint8Array): string => Buffer.from(bytes).toString('base64');
