import { z } from 'zod';
import { add, Point } from '../base/point';
import { Id } from '../model/ids';
import { Clip, renamed } from './clip';
import { command } from './command';
import { LETTERS, nextDesignator } from './shared/designators';
import { embedPart } from './shared/embed-part';

/**
 * Adds the objects of a clip as new ones: new ids, the next free designators, moved by an offset. Signals join those
 * of the same name; part records are embedded where they are not known yet.
 */
export const objectsPaste = command({
  id: 'objects.paste',
  label: 'Paste',
  args: z.strictObject({
    clip: Clip,
    offset: Point,
    /** Ids to give to the pasted connectors, splices and equipment, so that the caller can select them. */
    ids: z.record(Id, Id).optional(),
  }),
  refuse: (_project, { clip }) =>
    clip.connectors.length + clip.equipment.length + clip.splices.length === 0
      ? 'There is nothing to paste.'
      : null,
  run(draft, { clip, offset, ids: given }, { newId }, project) {
    const ids = new Map(Object.entries(given ?? {}));
    const signalByName = new Map(project.signals.map((s) => [s.name, s.id]));
    for (const s of clip.signals) ids.set(s.id, signalByName.get(s.name) ?? newId());
    for (const list of [
      clip.equipment,
      clip.connectors,
      clip.contacts,
      clip.wires,
      clip.groups,
      clip.splices,
      clip.mates,
    ])
      for (const { id } of list) if (!ids.has(id)) ids.set(id, newId());
    const fresh = <T>(value: T): T => renamed(value, ids);
    const moved = <T extends { position: Point }>(o: T): T => ({ ...o, position: add(o.position, offset) });

    for (const p of clip.parts) embedPart(draft, project, p);
    for (const s of clip.signals) if (!signalByName.has(s.name)) draft.signals.push(fresh(s));
    draft.contacts.push(...clip.contacts.map(fresh));
    for (const e of clip.equipment)
      draft.equipment.push({
        ...fresh(moved(e)),
        designator: nextDesignator(LETTERS[e.kind], draft.equipment),
      });
    for (const c of clip.connectors) {
      const accessories = c.accessories.map((a) => ({ ...a, id: newId() }));
      draft.connectors.push({
        ...fresh(moved(c)),
        accessories,
        designator: nextDesignator(LETTERS.connectors, draft.connectors),
      });
    }
    for (const s of clip.splices)
      draft.splices.push({ ...fresh(moved(s)), designator: nextDesignator(LETTERS.splices, draft.splices) });
    for (const w of clip.wires) {
      const ends = w.ends.map((e) => (e.at === 'free' ? moved(e) : e)) as typeof w.ends;
      draft.wires.push({ ...fresh({ ...w, ends }), designator: nextDesignator(LETTERS.wires, draft.wires) });
    }
    for (const g of clip.groups)
      draft.groups.push({ ...fresh(g), designator: nextDesignator(LETTERS.groups, draft.groups) });
    draft.mates.push(...clip.mates.map(fresh));
  },
});
