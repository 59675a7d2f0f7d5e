import { z } from 'zod';
import { must } from '../base/assert-never';
import { Id } from '../model/ids';
import { command } from './command';
import { conductorOfWire } from './shared/conductor';
import { draftObject, missing, objectIn } from './shared/draft-object';
import { candidateParts } from './shared/embed-part';
import { dropContact } from './shared/drop-contact';
import {
  contactFor,
  housingAt,
  isTaken,
  prepareEnd,
  refuseTarget,
  sealFor,
  WireTarget,
} from './shared/wire-target';

/**
 * Moves one end of a wire. The crimped contact goes along where the new housing is of the same part; elsewhere the
 * end is cut and prepared anew with the contact that fits there.
 */
export const wireMoveEnd = command({
  id: 'wire.move-end',
  label: 'Move wire end',
  args: z.strictObject({ id: Id, end: z.union([z.literal(0), z.literal(1)]), to: WireTarget }),
  refuse: (project, { id, to }) => missing(project, 'wires', [id], 'wire') ?? refuseTarget(project, to),
  run(draft, { id, end, to }, { newId, catalogue }, project) {
    const wire = must(objectIn(project, 'wires', id), 'wire');
    const before = wire.ends[end];
    if (
      before.at === 'cavity' &&
      to.at === 'cavity' &&
      before.connector === to.connector &&
      before.cavity === to.cavity
    )
      return;
    const taken = isTaken(project, to, { wire: id, end });
    const housing = housingAt(project, to);
    const sameHousing =
      before.at === 'cavity' && housing !== undefined && housing === housingAt(project, before);
    const shared =
      before.at === 'cavity' && before.contact !== undefined && isShared(project, before.contact);
    const moved = draftObject(draft, project, 'wires', id);
    if (before.at === 'cavity' && to.at === 'cavity' && sameHousing && !taken && !shared) {
      prepareEnd(draft, project, to, { contact: null, seal: undefined }, newId);
      moved.ends[end] = { ...before, connector: to.connector, cavity: to.cavity };
      return;
    }
    if (before.at === 'cavity' && before.contact)
      dropContact(draft, project, before.contact, { wire: id, end });
    const candidates = candidateParts(project, catalogue);
    const conductor = conductorOfWire(project, wire);
    const contact = conductor && !taken ? contactFor(project, to, [conductor], candidates) : null;
    moved.ends[end] = prepareEnd(
      draft,
      project,
      to,
      { contact, seal: sealFor(project, to, conductor, candidates) },
      newId,
    );
  },
});

const isShared = (project: Parameters<typeof objectIn>[0], contact: string): boolean =>
  project.wires.flatMap((w) => w.ends).filter((e) => e.at === 'cavity' && e.contact === contact).length > 1;
