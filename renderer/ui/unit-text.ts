const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/\bmohm\b/g, 'mΩ'],
  [/\bohm\b/g, 'Ω'],
  [/\bdegC\b/g, '°C'],
  [/\buF\b/g, 'µF'],
  [/\b([mck]?m|A)2/g, '$1²'],
  [/\b([mck]?m)3/g, '$1³'],
];

/** A unit of the calculations ("ohm/km", "mm2") with the signs that people write. */
export const unitText = (unit: string): string =>
  SIGNS.reduce((text, [plain, sign]) => text.replace(plain, sign), unit);
