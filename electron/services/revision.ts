import { createHash } from 'node:crypto';

/** Tells two states of a file apart: the SHA-256 of its bytes. */
export const revisionOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
