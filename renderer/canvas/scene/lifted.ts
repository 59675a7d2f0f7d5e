import type { DiagramScene } from './diagram-scene';

/** Everything that is drawn anew while these objects move: themselves, connectors on moved areas, wires and mates. */
export function liftedBy(scene: DiagramScene, ids: ReadonlySet<string>): ReadonlySet<string> {
  const out = new Set(ids);
  for (const c of scene.connectors)
    if (c.use.resolved.connector.equipment && ids.has(c.use.resolved.connector.equipment)) out.add(c.id);
  const moved = new Set(out);
  for (const { wire, id } of scene.wires.list)
    if (
      wire.wire.ends.some(
        (e) => (e.at === 'cavity' && moved.has(e.connector)) || (e.at === 'splice' && moved.has(e.splice)),
      )
    )
      out.add(id);
  // A ribbon is laid as a whole, so its other wires go along.
  for (const { items } of scene.wires.ribbons.values())
    if (items.some((w) => out.has(w.id))) for (const w of items) out.add(w.id);
  for (const m of scene.mates) if (moved.has(m.mate.mate.a) || moved.has(m.mate.mate.b)) out.add(m.id);
  return out;
}
