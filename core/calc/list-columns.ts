import { z } from 'zod';
import { fieldMeta, type FieldMeta } from './calculation';
import { coreOf, isOptional } from './input-kind';

/** One column of an input that is a list of objects: a form shows it as a table. */
export interface ListColumn extends FieldMeta {
  /** Where the value goes; two steps where the object holds another one. */
  readonly path: readonly string[];
  readonly schema: z.ZodType;
  readonly needed: boolean;
}

/** Names of fields that are not their own words. */
const WORDS: Readonly<Record<string, string>> = {
  id: 'Name',
  positive: 'Positive node',
  negative: 'Negative node',
  from: 'From node',
  to: 'To node',
  ohm: 'Resistance',
  ohmPerKm: 'Resistance at 20 C',
  odMm: 'Outside diameter',
  conductorMm: 'Conductor diameter',
  conductivityWPerMK: 'Conductivity',
  nominalMm: 'Length',
  size: 'Wire size',
  areaMm2: 'Metal area',
  massG: 'Mass of a piece',
  massGPerM: 'Mass per metre',
  ampacityA: 'Current it may carry',
  innerOhm: 'Own resistance',
  ratedC: 'Temperature rating',
  ambientC: 'Ambient temperature',
};

const UNITS: readonly (readonly [RegExp, string])[] = [
  [/OhmPerKm$/i, 'ohm/km'],
  [/WPerMK$/, 'W/(m K)'],
  [/GPerM$/, 'g/m'],
  [/Mm2$/, 'mm2'],
  [/Mm$/, 'mm'],
  [/Ohm$/i, 'ohm'],
  [/(?<=[a-z])A$/, 'A'],
  [/(?<=[a-z])V$/, 'V'],
  [/(?<=[a-z])C$/, 'degC'],
  [/(?<=[a-z])G$/, 'g'],
];

/** Label and unit: as the schema says, else from the name, which ends in the unit. */
function metaOf(key: string, schema: z.ZodType): FieldMeta {
  const said = fieldMeta(schema);
  const unit = UNITS.find(([ending]) => ending.test(key));
  const bare = unit ? key.replace(unit[0], '') : key;
  const words = bare.replace(/([A-Z])/g, (c) => ` ${c.toLowerCase()}`);
  const label = said.label || WORDS[key] || words.replace(/^./, (c) => c.toUpperCase());
  return { label, unit: said.unit || (unit?.[1] ?? '') };
}

/** The columns of a list; none where its items are no objects. */
export function listColumns(schema: z.ZodType): readonly ListColumn[] {
  const list = coreOf(schema);
  return list instanceof z.ZodArray ? columnsOf(list.element as z.ZodType, [], true) : [];
}

function columnsOf(item: z.ZodType, before: readonly string[], needed: boolean): ListColumn[] {
  if (item instanceof z.ZodDiscriminatedUnion) {
    const all = item.options.flatMap((o) => columnsOf(o as z.ZodType, before, needed));
    const kind = item.def.discriminator;
    const names = [...new Set(all.map((c) => c.path.join('.')))];
    return names.map((name) => {
      const same = all.filter((c) => c.path.join('.') === name);
      const [first] = same as [ListColumn];
      if (name !== kind) return { ...first, needed: first.needed && same.length === item.options.length };
      const choices = same.flatMap((c) => (c.schema instanceof z.ZodLiteral ? [...c.schema.values] : []));
      return { ...first, schema: z.enum(choices.map(String)) };
    });
  }
  if (!(item instanceof z.ZodObject)) return [];
  return Object.entries(item.shape as Record<string, z.ZodType>).flatMap(([key, schema]): ListColumn[] => {
    const path = [...before, key];
    const must = needed && !isOptional(schema);
    const inner = coreOf(schema);
    if (inner instanceof z.ZodObject) return columnsOf(inner, path, must);
    return [{ path, schema, needed: must, ...metaOf(key, schema) }];
  });
}
