import type { Stage } from '../../derive/build-order/build-op';

export const STAGE_WORDS: Readonly<Record<Stage, string>> = {
  cut: 'cut and strip',
  'slide-on-wire': 'slide onto wires',
  crimp: 'crimp',
  twist: 'twist and shield',
  'slide-on-bundle': 'slide over bundles',
  terminal: 'terminals',
  splice: 'splice',
  insert: 'load connectors',
  fill: 'fill cavities',
  lay: 'lay on the board',
  cover: 'cover',
  fix: 'tie and clamp',
  label: 'label',
  lock: 'lock',
  fit: 'fit',
  inspect: 'inspect',
  test: 'test',
  pack: 'cap and pack',
};

/** What can hurt, or be spoilt for good, in a stage. */
export const STAGE_CAUTIONS: Readonly<Partial<Record<Stage, string>>> = {
  cut: 'Blades cut: guards closed.',
  crimp: 'Presses pinch: guards closed, hands out. No crimp before the first pieces were measured.',
  terminal: 'Presses pinch: guards closed, hands out.',
  splice: 'Tools and heat hurt: follow the procedure of the shop.',
  insert: 'A contact is pushed in once: one that is pulled out is looked at again before it goes back.',
  fix: 'Ends of ties are cut flush: a stub cuts hands.',
  fit: 'No work on live circuits.',
  test: 'Withstand tests endanger operators: by trained people, within the ratings of the test table, never on a connected harness.',
};

/** For a covering that is shrunk. */
export const HEAT_CAUTION = 'Hot air burns skin and insulation; fumes: ventilate.';
