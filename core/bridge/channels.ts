/** Names alone, without schemas, so that the preload script stays tiny. The schemas are in contract.ts. */
export const channels = ['app:info'] as const;

export type Channel = (typeof channels)[number];
