import { z } from 'zod';

/** Identity of an object for its whole life. Designators are text the user may change; ids never change. */
export const Id = z.uuid();
export type Id = string;

/** Makes ids. Core has no randomness of its own: the shell passes one in, tests pass a counting one. */
export type NewId = () => Id;

/** Ids 1, 2, 3, … in the shape of a UUID, for tests and examples. */
export function countingIds(start = 1): NewId {
  let n = start;
  return () => `00000000-0000-4000-8000-${String(n++).padStart(12, '0')}`;
}

/**
 * The same UUID for the same text, for parts that come from a table without ids. Version 8 (RFC 9562: vendor
 * specific); four FNV-1a hashes (32 bit) with different seeds.
 */
export function idFromText(text: string): Id {
  const hex = [0x811c9dc5, 0x01000193, 0xdeadbeef, 0x9e3779b9]
    .map((seed) => fnv1a(text, seed).toString(16).padStart(8, '0'))
    .join('');
  const variant = ((parseInt(hex[16] as string, 16) & 0x3) | 0x8).toString(16);
  // Joined, not concatenated: engines keep a concatenation as a tree, and comparing such ids is many times slower.
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    `8${hex.slice(13, 16)}`,
    variant + hex.slice(17, 20),
    hex.slice(20, 32),
  ].join('-');
}

function fnv1a(text: string, seed: number): number {
  let h = seed >>> 0;
  for (let i = 0; i < text.length; i++) {
    h = Math.imul(h ^ text.charCodeAt(i), 0x01000193) >>> 0;
    h ^= h >>> 15;
  }
  return h >>> 0;
}
