import { z } from 'zod';

/** What a field holds under its `optional` and `default`. */
export function coreOf(schema: z.ZodType): z.ZodType {
  let inner = schema;
  while (inner instanceof z.ZodOptional || inner instanceof z.ZodDefault || inner instanceof z.ZodNullable)
    inner = inner.unwrap() as z.ZodType;
  return inner;
}

/** True where the calculation can do without: the field is optional or has a default. */
export const isOptional = (schema: z.ZodType): boolean => schema.safeParse(undefined).success;

/** What stands where nothing is given; undefined for a field without a default. */
export const defaultOf = (schema: z.ZodType): unknown => schema.safeParse(undefined).data;

/** How a value is typed and read. */
export type InputKind =
  | { readonly kind: 'number' | 'wire-size' | 'yes-no' | 'text' | 'numbers' | 'rows' | 'json' }
  | { readonly kind: 'choice'; readonly choices: readonly string[]; readonly numeric: boolean };

export function inputKind(schema: z.ZodType): InputKind {
  const core = coreOf(schema);
  if (core instanceof z.ZodDiscriminatedUnion)
    return { kind: core.def.discriminator === 'system' ? 'wire-size' : 'json' };
  if (core instanceof z.ZodBoolean) return { kind: 'yes-no' };
  if (core instanceof z.ZodNumber) return { kind: 'number' };
  if (core instanceof z.ZodEnum) return { kind: 'choice', choices: core.options.map(String), numeric: false };
  if (core instanceof z.ZodUnion) {
    const values = core.options.flatMap((o) => (o instanceof z.ZodLiteral ? [...o.values] : []));
    return values.length === core.options.length && values.every((v) => typeof v === 'number')
      ? { kind: 'choice', choices: values.map(String), numeric: true }
      : { kind: 'json' };
  }
  if (core instanceof z.ZodString) return { kind: 'text' };
  if (core instanceof z.ZodArray) {
    const item = coreOf(core.element as z.ZodType);
    if (item instanceof z.ZodNumber) return { kind: 'numbers' };
    return { kind: item instanceof z.ZodObject || item instanceof z.ZodDiscriminatedUnion ? 'rows' : 'json' };
  }
  return { kind: 'json' };
}
