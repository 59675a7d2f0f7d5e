import { compareText } from '../../base/stable-order';
import type { FieldText } from '../exchange/field-text';
import { numberText } from '../exchange/number-text';
import { xml, type XmlElement } from '../xml/xml';
import type { UnitName, VecUnits } from './vec-units';

/** Children as they are written down: absent ones drop out. */
export type Children = readonly (XmlElement | undefined | readonly (XmlElement | undefined)[])[];

/** An element with an id; `type` is that of `xsi:type`, without prefix. */
export const node = (
  name: string,
  { id, type, iri }: { id: string; type?: string; iri?: string | undefined },
  children: Children,
): XmlElement =>
  xml(
    name,
    { 'xsi:type': type === undefined ? undefined : `vec:${type}`, id, 'immutable-global-iri': iri },
    children.flat() as readonly (XmlElement | undefined)[],
  );

/** An element that holds a value; none for an unknown one. */
export const value = (
  name: string,
  content: string | number | boolean | undefined,
): XmlElement | undefined =>
  content === undefined
    ? undefined
    : xml(name, {}, typeof content === 'number' ? numberText(content) : String(content));

/** A reference to one element, or to several; none where there is nothing to refer to. */
export const refs = (name: string, ids: readonly string[] | string | undefined): XmlElement | undefined => {
  const list = ids === undefined ? [] : typeof ids === 'string' ? [ids] : ids;
  return list.length === 0 ? undefined : xml(name, {}, list.join(' '));
};

/** A number for a mandatory element: NaN where it is not known. */
const double = (name: string, number: number | undefined): XmlElement => xml(name, {}, numberText(number));

/** Differences of decimal fractions, without the noise of binary ones. */
const tidy = (number: number): number => Number(number.toFixed(9));

export interface Limits {
  readonly minus: number | undefined;
  readonly plus: number | undefined;
}

/** Boundaries that are added to the value; NaN for one that is not known. None when neither is. */
export function tolerance(name: string, id: string, { minus, plus }: Limits): XmlElement | undefined {
  if (minus === undefined && plus === undefined) return undefined;
  return node(name, { id }, [
    double('LowerBoundary', minus === undefined ? undefined : tidy(-minus)),
    double('UpperBoundary', plus === undefined ? undefined : tidy(plus)),
  ]);
}

/** Values with units, for one file. Ids are made from that of the element that holds the value. */
export class VecValues {
  constructor(
    readonly units: VecUnits,
    private readonly language: string,
  ) {}

  /** A number with its unit; none where it is not known. */
  number(
    name: string,
    holder: string,
    number: number | undefined,
    unit: UnitName,
    limits?: Limits,
  ): XmlElement | undefined {
    return number === undefined ? undefined : this.mandatoryNumber(name, holder, number, unit, limits);
  }

  mandatoryNumber(
    name: string,
    holder: string,
    number: number | undefined,
    unit: UnitName,
    limits?: Limits,
  ): XmlElement {
    const id = `${holder}_${name}`;
    return node(name, { id }, [
      refs('UnitComponent', this.units.id(unit)),
      double('ValueComponent', number),
      limits && tolerance('Tolerance', `${id}_Tolerance`, limits),
    ]);
  }

  /** A range of which at least one side is known. */
  range(
    name: string,
    holder: string,
    min: number | undefined,
    max: number | undefined,
    unit: UnitName,
  ): XmlElement | undefined {
    if (min === undefined && max === undefined) return undefined;
    return node(name, { id: `${holder}_${name}` }, [
      refs('UnitComponent', this.units.id(unit)),
      double('Minimum', min),
      double('Maximum', max),
    ]);
  }

  /** A text in the language of the project. */
  text(
    name: string,
    holder: string,
    text: string | undefined,
    type = 'LocalizedString',
  ): XmlElement | undefined {
    if (text === undefined || text === '') return undefined;
    return node(name, { id: `${holder}_${name}`, type }, this.textContent(text));
  }

  textContent(text: string): XmlElement[] {
    return [xml('LanguageCode', {}, this.language), xml('Value', {}, text)];
  }

  /** An instruction in words, under the element name that its holder has for it. */
  instruction(name: string, id: string, text: string | undefined): XmlElement | undefined {
    if (text === undefined || text === '') return undefined;
    return node(name, { id, type: 'TextBasedInstruction' }, [
      node('InstallationInstruction', { id: `${id}_Text` }, this.textContent(text)),
    ]);
  }
}

/** Fields without an element of their own, by name. */
export const properties = (holder: string, fields: readonly FieldText[]): XmlElement[] =>
  [...fields]
    .sort(([a], [b]) => compareText(a, b))
    .map(([key, text]) =>
      node('CustomProperty', { id: `${holder}_Property_${key}`, type: 'SimpleValueProperty' }, [
        value('PropertyType', key),
        value('Value', text),
      ]),
    );

export const colour = (name: string, holder: string, code: string | undefined): XmlElement | undefined =>
  code === undefined
    ? undefined
    : node(name, { id: `${holder}_${name}` }, [value('Key', code), value('ReferenceSystem', 'IEC 60757')]);

export const material = (
  name: string,
  holder: string,
  key: string | undefined,
  system: string,
): XmlElement | undefined =>
  key === undefined
    ? undefined
    : node(name, { id: `${holder}_${name}` }, [value('Key', key), value('ReferenceSystem', system)]);
