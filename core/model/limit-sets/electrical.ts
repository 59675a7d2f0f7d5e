const practice = (value: number, source = 'common practice') => ({ value, source, verified: false });

/** Electrical limits of the general set. Those that belong to a place or a product are to be looked at for each project. */
export const ELECTRICAL_LIMITS = {
  'ambient-temperature': practice(
    40,
    'common practice: indoors in an enclosure; to be stated for each project',
  ),
  altitude: practice(2000, 'common practice: most product standards go up to 2000 m'),
  'current-asked-from': practice(
    0.1,
    'common practice: half of what a 30 AWG wire carries at 4 A/mm2; a signal draws less',
  ),
  'bundle-wires': practice(33, 'the count of FAA AC 43.13-1B, table 11-9'),
  'bundle-load-share': practice(20, 'the share of FAA AC 43.13-1B, table 11-9'),
  'current-density-max': practice(4, 'common practice for thin wire in a bundle'),
  'contact-current-margin': practice(
    0.8,
    'common practice, after IEC 60512-5-2: derating curve = 0.8 x base curve (from memory)',
  ),
  'contact-rise-at-rated': practice(30, 'EIA-364-70: rating at a rise of 30 K (from memory)'),
  'contact-peak-factor': practice(2, 'common practice for a pulse of up to a second'),
  'inrush-fuse-share': practice(0.2, 'common practice for very many pulses'),
  'fuse-load-margin': practice(1.25, 'common practice for a continuous load'),
  'fuse-distance-max': practice(178, 'marine practice: within 7 inches of the source'),
  'fault-temperature-max': practice(
    160,
    'IEC 60364-4-43: PVC insulation (from memory); cross-linked insulation stands 250',
  ),
  'voltage-drop-max': practice(3, 'common practice: 3 % of the source'),
  'joint-resistance-assumed': practice(20, 'common practice: a tin contact at the end of its life'),
  'parallel-share-factor': practice(0.8, 'rule of thumb: 0.8 for each doubling'),
  'parallel-difference-max': practice(0.1, 'common practice: alike in size and length'),
  'voltage-asked-from': practice(50, 'scope of IEC 61984: connectors above 50 V'),
  'pollution-degree': practice(2, 'IEC 60664-1: indoors, condensation at times'),
  'overvoltage-category': practice(2, 'IEC 60664-1: equipment fed from a fixed installation'),
} as const;

/** The same for aircraft and space work, where its documents ask for more. */
export const AEROSPACE_ELECTRICAL_LIMITS = {
  ...ELECTRICAL_LIMITS,
  'ambient-temperature': practice(70, 'the ambient of FAA AC 43.13-1B, table 11-9'),
  altitude: practice(18_288, 'the 60 000 ft of FAA AC 43.13-1B, table 11-9'),
  'current-density-max': practice(0, 'common practice: only sizes that the table has'),
  'contact-current-margin': practice(0.5, 'NASA EEE-INST-002: contacts at half their rating (from memory)'),
  'voltage-drop-max': {
    value: 3.5,
    source: 'FAA AC 43.13-1B, table 11-6: 0.5 V of 14, 1 of 28, 4 of 115, 7 of 200, continuous (from memory)',
    edition: '8 September 1998',
    verified: false,
  },
} as const;
