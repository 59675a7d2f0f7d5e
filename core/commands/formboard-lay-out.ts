import { current } from 'immer';
import { z } from 'zod';
import { byId } from '../base/by-id';
import { firstLayout } from '../derive/formboard/layout/first-layout';
import { command } from './command';
import { LETTERS, nextDesignator } from './shared/designators';
import { draftObject } from './shared/draft-object';
import { splitSegment } from './shared/split-segment';

/**
 * Makes a first layout from the diagram for all that has no place on the formboard: trunk and branches without crossings.
 * What is laid out stays where it is.
 */
export const formboardLayOut = command({
  id: 'formboard.lay-out',
  label: 'Lay out formboard',
  args: z.strictObject({}),
  refuse(project) {
    const plan = firstLayout(project);
    return plan.ok ? null : plan.problem;
  },
  run(draft, _args, { newId }, project) {
    const plan = firstLayout(project);
    if (!plan.ok) return;
    const ids = new Map<string, string>();
    const idOf = (key: string): string => ids.get(key) ?? key;
    for (const { segment, atMm, key } of plan.value.cuts) {
      // A second cut starts from what the first one left.
      const now = ids.size === 0 ? project : current(draft);
      ids.set(key, splitSegment(draft, now, { segment, atMm }, newId));
    }
    for (const { key, position } of plan.value.nodes) {
      const id = newId();
      ids.set(key, id);
      draft.nodes.push({ id, designator: nextDesignator(LETTERS.nodes, draft.nodes), position });
    }
    for (const { from, to } of plan.value.runs)
      draft.segments.push({
        id: newId(),
        designator: nextDesignator(LETTERS.segments, draft.segments),
        from: idOf(from),
        to: idOf(to),
      });
    for (const { terminal, node } of plan.value.seats) {
      if (terminal.is === 'connector')
        draftObject(draft, project, 'connectors', terminal.id).node = idOf(node);
      else if (terminal.is === 'splice')
        draftObject(draft, project, 'splices', terminal.id).node = idOf(node);
      else
        for (const { wire, end } of terminal.ends) {
          const e = byId(project.wires).has(wire)
            ? draftObject(draft, project, 'wires', wire).ends[end]
            : undefined;
          if (e?.at === 'free') e.node = idOf(node);
        }
    }
  },
});
