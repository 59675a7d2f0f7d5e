/**
 * A value for an xs:ID: a prefix and keys (UUIDs, words, cavity names) joined by underscores. Characters that are neither
 * ASCII letter, digit nor hyphen stand as their code point between dots, so different keys never give the same id.
 */
export const xmlId = (prefix: string, ...keys: readonly string[]): string =>
  [
    prefix,
    ...keys.map((key) => key.replace(/[^A-Za-z0-9-]/gu, (c) => `.${(c.codePointAt(0) ?? 0).toString(16)}.`)),
  ].join('_');

/** The UUID of one of our objects as the global name of its element (RFC 9562, section 4). */
export const iriOf = (id: string): string => `urn:uuid:${id}`;
