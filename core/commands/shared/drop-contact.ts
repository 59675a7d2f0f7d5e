import type { Draft } from 'immer';
import type { Project } from '../../model/project';

/** Removes a contact object unless another end than the given one still uses it. */
export function dropContact(
  draft: Draft<Project>,
  project: Project,
  contact: string,
  by: { wire: string; end: number },
): void {
  const stillUsed = project.wires.some((w) =>
    w.ends.some((e, i) => e.at === 'cavity' && e.contact === contact && !(w.id === by.wire && i === by.end)),
  );
  if (!stillUsed) draft.contacts = draft.contacts.filter((c) => c.id !== contact);
}

/** Contacts that objects which go have named, and that no end and no cavity names which stays. */
export function freedContacts(
  project: Pick<Project, 'wires' | 'connectors'>,
  gone: ReadonlySet<string>,
): ReadonlySet<string> {
  const freed = new Set<string>();
  const each = (isGone: boolean, see: (contact: string) => void): void => {
    for (const w of project.wires) {
      if (gone.has(w.id) !== isGone) continue;
      for (const e of w.ends) if (e.at === 'cavity' && e.contact) see(e.contact);
    }
    for (const c of project.connectors) {
      if (gone.has(c.id) !== isGone) continue;
      for (const e of c.cavities) if (e.contact) see(e.contact);
    }
  };
  each(true, (contact) => freed.add(contact));
  if (freed.size > 0) each(false, (contact) => freed.delete(contact));
  return freed;
}
