import { strandDamage } from '../../calc/strand-damage';
import type { Conductor } from '../../model/parts/wire';

/** Pieces that are measured and torn at each check; common practice. NASA LLIS-0465 asks two samples per tool and day at least. */
export const HEIGHT_SAMPLES = 5;
export const PULL_SAMPLES = 3;

export const CHECK_FREQUENCY =
  'first pieces after set-up; after each change of contact reel, die, wire lot or operator; start and end of shift';

export const FREQUENCY_SOURCE =
  'common practice; NASA LLIS-0465 (two samples per tool and day). Pulled pieces are scrap.';

export interface VisualCriterion {
  readonly what: string;
  readonly source: string;
}

const SECTION_5 = 'IPC/WHMA-A-620, section 5, from memory';

/** What an eye looks for at an open-barrel crimp, in our words. */
export const VISUAL_CRITERIA: readonly VisualCriterion[] = [
  { what: 'Every strand is in the conductor barrel; none lies beside it, none is folded back.', source: 'common practice' },
  { what: 'Conductor ends show at the front of the conductor barrel, and stay out of the mating zone and the lock.', source: SECTION_5 },
  { what: 'In the window between the two barrels both the end of the insulation and bare conductor are seen.', source: SECTION_5 },
  { what: 'The conductor barrel flares at the side of the wire. A flare at the front is allowed, not needed.', source: SECTION_5 },
  { what: 'A rest of the carrier strip is there and no longer than twice the stock thickness.', source: SECTION_5 },
  { what: 'The insulation barrel holds the insulation and does not pierce it down to the conductor.', source: SECTION_5 },
  { what: 'The contact is straight: not bent, rolled or twisted against the wire; its lock stands as delivered.', source: 'common practice' },
  { what: 'Strands are not tinned together with solder; a solid wire only where the contact permits it.', source: 'NASA-STD-8739.4, 4.3' },
]; // prettier-ignore

/** "0 (class 3), 1 (classes 1 and 2)": strands that stripping may damage; undefined where the stranding is not known. */
export function strandDamageText(conductor: Conductor | undefined): string | undefined {
  const strands = conductor?.stranding?.strands;
  if (strands === undefined) return undefined;
  if (strands === 1) return 'solid: no damage deeper than 10 % of the diameter';
  const allowed = (productClass: '2' | '3'): number | undefined => {
    const result = strandDamage.run({
      table: 'a620',
      strands,
      productClass,
      tinned: false,
      material: 'copper',
    });
    return result.ok ? result.value.damagedMax : undefined;
  };
  return `${allowed('3')} of ${strands} (class 3), ${allowed('2')} (classes 1 and 2)`;
}

export const STRAND_SOURCE = 'IPC/WHMA-A-620 B (final draft, 2012), table 3-1';
