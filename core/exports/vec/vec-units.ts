import { xml, type XmlElement } from '../xml/xml';

/** Units of the numbers that we write, with their UN/ECE code (recommendation 20). */
const UNITS = {
  mm: { si: 'Metre', prefix: 'Milli', code: 'MMT' },
  mm2: { si: 'Metre', prefix: 'Milli', exponent: 2, code: 'MMK' },
  g: { si: 'Gram', code: 'GRM' },
  degC: { si: 'DegreeCelsius', code: 'CEL' },
  A: { si: 'Ampere', code: 'AMP' },
  V: { si: 'Volt', code: 'VLT' },
  ohm: { si: 'Ohm', code: 'OHM' },
  perM: { si: 'Metre', exponent: -1 },
  perKm: { si: 'Metre', prefix: 'Kilo', exponent: -1 },
  gPerM: { factors: ['g', 'perM'], code: 'GF' },
  ohmPerKm: { factors: ['ohm', 'perKm'] },
  piece: { other: 'Piece', code: 'H87' },
} as const satisfies Record<string, UnitShape>;

interface UnitShape {
  readonly si?: string;
  readonly prefix?: string;
  readonly exponent?: number;
  readonly code?: string;
  readonly other?: string;
  readonly factors?: readonly string[];
}

export type UnitName = keyof typeof UNITS;

/** Hands out the ids of units and writes those that were asked for. */
export class VecUnits {
  private readonly used = new Set<UnitName>();

  id(unit: UnitName): string {
    this.used.add(unit);
    const { factors = [] }: UnitShape = UNITS[unit];
    for (const f of factors) this.used.add(f as UnitName);
    return `Unit_${unit}`;
  }

  elements(): XmlElement[] {
    return (Object.keys(UNITS) as UnitName[]).filter((u) => this.used.has(u)).map(unitElement);
  }
}

function unitElement(unit: UnitName): XmlElement {
  const { si, prefix, exponent, code, other, factors }: UnitShape = UNITS[unit];
  const type = factors ? 'CompositeUnit' : other ? 'OtherUnit' : 'SIUnit';
  const text = (name: string, value: string | number | undefined): XmlElement | undefined =>
    value === undefined ? undefined : xml(name, {}, value);
  return xml('Unit', { 'xsi:type': `vec:${type}`, id: `Unit_${unit}` }, [
    text('Exponent', exponent),
    text('UnEceCode', code),
    text('Factors', factors?.map((f) => `Unit_${f}`).join(' ')),
    text('OtherUnitName', other),
    text('SiUnitName', si),
    text('SiPrefix', prefix),
  ]);
}
