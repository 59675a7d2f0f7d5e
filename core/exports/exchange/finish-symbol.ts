import type { Finish } from '../../model/parts/common';

/** Chemical symbol of what a contact is plated with. */
export const FINISH_SYMBOL: Readonly<Record<Finish, string>> = {
  tin: 'Sn',
  gold: 'Au',
  silver: 'Ag',
  nickel: 'Ni',
  'palladium-nickel': 'PdNi',
};
