import { z } from 'zod';
import { Project } from '../model/project';

/** Objects taken from a project, with the part records and signals that they name: what a clipboard holds. */
export const Clip = z.strictObject({
  format: z.literal('latchwork-clip'),
  ...Project.pick({
    parts: true,
    equipment: true,
    signals: true,
    connectors: true,
    contacts: true,
    wires: true,
    groups: true,
    splices: true,
    mates: true,
  }).shape,
});
export type Clip = z.infer<typeof Clip>;

/**
 * Copies objects. Equipment brings its connectors. Wires come along when both their ends do, mates and groups when
 * all their members do; a wire chosen alone is not copied, since it would end nowhere. Formboard places and cables
 * are left behind.
 */
export function copyObjects(project: Project, ids: ReadonlySet<string>): Clip {
  const equipment = project.equipment.filter((e) => ids.has(e.id));
  const carriers = new Set(equipment.map((e) => e.id));
  const connectors = project.connectors
    .filter((c) => ids.has(c.id) || carriers.has(c.equipment ?? ''))
    .map((c) => without(c, 'node', ...(carriers.has(c.equipment ?? '') ? [] : (['equipment'] as const))));
  const splices = project.splices.filter((s) => ids.has(s.id)).map((s) => without(s, 'node'));
  const here = new Set([...connectors, ...splices].map((o) => o.id));
  const wires = project.wires
    .filter(
      (w) =>
        !w.core &&
        w.ends.every((e) => e.at === 'free' || here.has(e.at === 'cavity' ? e.connector : e.splice)),
    )
    .filter((w) => w.ends.some((e) => e.at !== 'free') || ids.has(w.id))
    .map((w) => without(w, 'path'))
    .map((w) => ({
      ...w,
      ends: w.ends.map((e) => (e.at === 'free' ? without(e, 'node') : e)) as typeof w.ends,
    }));
  const wireIds = new Set(wires.map((w) => w.id));
  const mates = project.mates.filter((m) => here.has(m.a) && here.has(m.b));
  const groups = project.groups.filter((g) => g.wires.every((w) => wireIds.has(w)));
  const named = textsIn([connectors, splices, wires]);
  const contacts = project.contacts.filter((c) => named.has(c.id));
  for (const c of contacts) named.add(c.part);
  return {
    format: 'latchwork-clip',
    parts: project.parts.filter((p) => named.has(p.id)),
    equipment,
    signals: project.signals
      .filter((s) => named.has(s.id))
      .map((s) => without(s, 'source', 'pairedWith', 'returnsOn', 'redundantTo')),
    connectors,
    contacts,
    wires,
    groups,
    splices,
    mates,
  };
}

/** The same value with ids replaced after a map. Ids are UUIDs, so no other text can be mistaken for one. */
export function renamed<T>(value: T, ids: ReadonlyMap<string, string>): T {
  if (typeof value === 'string') return (ids.get(value) ?? value) as T;
  if (Array.isArray(value)) return value.map((v) => renamed(v as unknown, ids)) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, renamed(v as unknown, ids)])) as T;
}

function textsIn(value: unknown, out = new Set<string>()): Set<string> {
  if (typeof value === 'string') out.add(value);
  else if (typeof value === 'object' && value !== null) for (const v of Object.values(value)) textsIn(v, out);
  return out;
}

function without<T extends object, K extends keyof T>(item: T, ...keys: K[]): T {
  if (!keys.some((k) => k in item)) return item;
  const copy = { ...item };
  for (const k of keys) delete copy[k];
  return copy;
}
