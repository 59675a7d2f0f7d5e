import type { z } from 'zod';

interface Def {
  readonly type: string;
  readonly shape?: Readonly<Record<string, z.ZodType>>;
  readonly innerType?: z.ZodType;
  readonly element?: z.ZodType;
  readonly items?: readonly z.ZodType[];
  readonly options?: readonly z.ZodType[];
}

const defOf = (schema: z.ZodType): Def => (schema as unknown as { _zod: { def: Def } })._zod.def;

/** Every field that a schema allows, as paths: `wires[].ends{cavity}.contact`. A union names its variant. */
export function fieldsOf(schema: z.ZodType, path = ''): string[] {
  const def = defOf(schema);
  switch (def.type) {
    case 'optional':
    case 'nullable':
      return fieldsOf(def.innerType as z.ZodType, path);
    case 'object':
      return Object.entries(def.shape ?? {}).flatMap(([key, value]) => {
        const at = path ? `${path}.${key}` : key;
        return [at, ...fieldsOf(value, at)];
      });
    case 'array':
      return fieldsOf(def.element as z.ZodType, `${path}[]`);
    case 'tuple':
      return [...new Set((def.items ?? []).flatMap((item) => fieldsOf(item, `${path}[]`)))];
    case 'union':
      return (def.options ?? []).flatMap((o) => fieldsOf(o, `${path}${variantOf(o)}`));
    default:
      return [];
  }
}

const DISCRIMINATORS = ['kind', 'at', 'system'] as const;

function variantOf(option: z.ZodType): string {
  for (const key of DISCRIMINATORS) {
    const field = defOf(option).shape?.[key];
    const values = field && (defOf(field) as unknown as { values?: readonly unknown[] }).values;
    if (values) return `{${String(values[0])}}`;
  }
  return '';
}

/** The fields that a value has, written the same way. */
export function fieldsIn(value: unknown, path = ''): Set<string> {
  const out = new Set<string>();
  walk(value, path, out);
  return out;
}

function walk(value: unknown, path: string, out: Set<string>): void {
  if (Array.isArray(value)) for (const item of value) walk(item, `${path}[]`, out);
  else if (typeof value === 'object' && value !== null) {
    const variant = DISCRIMINATORS.map((k) => (value as Record<string, unknown>)[k]).find(
      (v) => v !== undefined,
    );
    const here = path && variant !== undefined ? `${path}{${String(variant)}}` : path;
    for (const [key, v] of Object.entries(value)) {
      // A discriminator-like key may stand in an object that is no union (a decision's kind): both spellings count.
      for (const base of new Set([here, path])) {
        const at = base ? `${base}.${key}` : key;
        out.add(at);
        walk(v, at, out);
      }
    }
  }
}
