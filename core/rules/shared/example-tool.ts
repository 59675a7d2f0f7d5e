import type { Part } from '../../model/parts/part';
import type { TinyDraft } from '../../model/tiny';

type Form = Extract<Part, { kind: 'tool' }>['form'];

/** Puts a tool on the list of an example, and its number into the records of the contacts given. */
export function addTool(t: TinyDraft, partNumber: string, form: Form, contacts: readonly string[]): void {
  t.project.parts.push({
    kind: 'tool',
    id: t.newId(),
    maker: 'Example Works (invented)',
    partNumber,
    description: partNumber,
    ...(form ? { form } : {}),
  });
  for (const number of contacts) {
    const contact = t.part('contact', number);
    contact.tools = [...(contact.tools ?? []), partNumber];
  }
}
