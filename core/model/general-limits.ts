import type { LimitSet } from './limit-set';

/** The limit set a new project starts with. Every value may be changed in the project. */
export const GENERAL_LIMITS: LimitSet = {
  name: 'General',
  revision: '1',
  limits: [
    {
      id: 'tail-protrusion-min',
      value: 0.5,
      unit: 'mm',
      source: 'common practice: the lead end shows in the solder',
      verified: false,
    },
    {
      id: 'tail-protrusion-max',
      value: 2.3,
      unit: 'mm',
      source: 'common practice: trimmed tails stand out about 1.5 to 2.3 mm',
      verified: false,
    },
    {
      id: 'strip-length-tolerance',
      value: 0.5,
      unit: 'mm',
      source: 'common practice, where the contact states none',
      verified: false,
    },
  ],
};
