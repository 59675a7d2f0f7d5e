import type { Migration } from './migration';

/** Clamps, grommets and dimensions came to the formboard. */
export const fixingsAndDimensions: Migration = {
  name: 'fixings and dimensions',
  to: 2,
  up(raw) {
    raw['fixings'] = [];
    raw['dimensions'] = [];
  },
};
