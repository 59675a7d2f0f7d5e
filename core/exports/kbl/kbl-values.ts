import { compareText } from '../../base/stable-order';
import type { FieldText } from '../exchange/field-text';
import { numberText } from '../exchange/number-text';
import { xml, type XmlElement } from '../xml/xml';

export type Children = readonly (XmlElement | undefined | readonly (XmlElement | undefined)[])[];

/** An element with an id; `type` is that of `xsi:type`, without prefix. */
export const element = (
  name: string,
  { id, type }: { readonly id: string; readonly type?: string },
  children: Children,
): XmlElement =>
  xml(
    name,
    { 'xsi:type': type === undefined ? undefined : `kbl:${type}`, id },
    children.flat() as readonly (XmlElement | undefined)[],
  );

/** An element that holds a value or a reference; none for an unknown one. */
export const value = (name: string, content: string | number | undefined): XmlElement | undefined =>
  content === undefined
    ? undefined
    : xml(name, {}, typeof content === 'number' ? numberText(content) : content);

/** Several references in one element; none where there is nothing to refer to. */
export const references = (name: string, ids: readonly string[]): XmlElement | undefined =>
  ids.length === 0 ? undefined : xml(name, {}, ids.join(' '));

const UNITS = {
  mm: [['Si_unit_name', 'metre'], ['Si_prefix', 'milli']],
  mm2: [['Si_unit_name', 'metre'], ['Si_prefix', 'milli'], ['Si_dimension', 'square']],
  g: [['Si_unit_name', 'gram']],
  A: [['Unit_name', 'ampere']],
} as const; // prettier-ignore
export type UnitName = keyof typeof UNITS;

/** Numbers with their unit; keeps which units were used. */
export class KblUnits {
  private readonly used = new Set<UnitName>();

  /** A number with its unit; none where it is not known. */
  number(name: string, holder: string, number: number | undefined, unit: UnitName): XmlElement | undefined {
    return number === undefined ? undefined : this.mandatoryNumber(name, holder, number, unit);
  }

  /** NaN where the number is not known. */
  mandatoryNumber(name: string, holder: string, number: number | undefined, unit: UnitName): XmlElement {
    this.used.add(unit);
    return element(name, { id: `${holder}_${name}` }, [
      value('Unit_component', `Unit_${unit}`),
      value('Value_component', numberText(number)),
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
    this.used.add(unit);
    return element(name, { id: `${holder}_${name}` }, [
      value('Unit_component', `Unit_${unit}`),
      value('Minimum', numberText(min)),
      value('Maximum', numberText(max)),
    ]);
  }

  elements(): XmlElement[] {
    return (Object.keys(UNITS) as UnitName[])
      .filter((u) => this.used.has(u))
      .map((u) =>
        element(
          'Unit',
          { id: `Unit_${u}` },
          UNITS[u].map(([name, text]) => value(name, text)),
        ),
      );
  }
}

/** Fields without an element of their own, as instructions: of processing for parts, of installation for occurrences. */
const instructions = (name: string, holder: string, fields: readonly FieldText[]): XmlElement[] =>
  [...fields]
    .sort(([a], [b]) => compareText(a, b))
    .map(([key, text], i) =>
      element(name, { id: `${holder}_${name}_${i + 1}` }, [
        value('Instruction_type', key),
        value('Instruction_value', text),
      ]),
    );

export const processing = (holder: string, fields: readonly FieldText[]): XmlElement[] =>
  instructions('Processing_information', holder, fields);

export const installation = (holder: string, fields: readonly FieldText[]): XmlElement[] =>
  instructions('Installation_information', holder, fields);

/** An optional field as one that may be left out. */
export const field = (key: string, text: string | undefined): readonly FieldText[] =>
  text === undefined || text === '' ? [] : [[key, text]];
