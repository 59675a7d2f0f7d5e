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

/** Contacts of the given project that no end and no cavity names. */
export function unusedContacts(
  project: Pick<Project, 'wires' | 'connectors' | 'contacts'>,
): ReadonlySet<string> {
  const used = new Set<string>();
  for (const w of project.wires)
    for (const e of w.ends) if (e.at === 'cavity' && e.contact) used.add(e.contact);
  for (const c of project.connectors) for (const e of c.cavities) if (e.contact) used.add(e.contact);
  return new Set(project.contacts.filter((c) => !used.has(c.id)).map((c) => c.id));
}
