import { compareNatural } from '../../base/stable-order';
import type { Offer } from '../../model/parts/common';
import type { ContactPart } from '../../model/parts/contact';
import type { Part } from '../../model/parts/part';
import type { Project } from '../../model/project';
import { toolsByNumber } from '../../rules/shared/bought-parts';

export type ContactForm = NonNullable<ContactPart['form']>;

/** In which forms a contact may be bought, by the tools on the tool list, and why in words. */
export interface FormWish {
  /** None: any form will do. */
  readonly forms: readonly ContactForm[];
  readonly reason: string;
}

export const FORM_NAMES: Readonly<Record<ContactForm, string>> = { strip: 'on a strip', loose: 'loose' };

/** The tools that a contact names, and those of them on the tool list that crimp, by form. */
export interface CrimpTools {
  readonly named: readonly string[];
  readonly press: readonly string[];
  readonly hand: readonly string[];
}

export function crimpTools(project: Project, part: ContactPart): CrimpTools {
  const list = toolsByNumber(project.parts);
  const named = [...new Set([...(part.tools ?? []), ...(part.crimps ?? []).flatMap((c) => c.tool ?? [])])];
  const onList = named.sort(compareNatural).flatMap((n) => list.get(n) ?? []);
  const ofForm = (form: 'press' | 'hand'): string[] =>
    onList.filter((t) => t.form === form).map((t) => t.partNumber);
  return { named, press: ofForm('press'), hand: ofForm('hand') };
}

/** Null for parts that have no such form. A press applicator takes strip, a hand tool loose pieces: common practice. */
export function formWish(project: Project, part: Part | undefined): FormWish | null {
  if (part?.kind !== 'contact') return null;
  const { press, hand } = crimpTools(project, part);
  if (press.length > 0 && hand.length > 0)
    return {
      forms: ['strip', 'loose'],
      reason: `whichever is cheaper: press applicator ${press.join(', ')} and hand tool ${hand.join(', ')} are on the tool list`,
    };
  if (press.length > 0)
    return { forms: ['strip'], reason: `press applicator ${press.join(', ')} takes a strip` };
  if (hand.length > 0) return { forms: ['loose'], reason: `hand tool ${hand.join(', ')} takes loose pieces` };
  return part.form
    ? { forms: [part.form], reason: 'as its record says; no crimp tool of it is on the tool list' }
    : { forms: [], reason: 'not stated, and no crimp tool is on the tool list' };
}

/** The form in which an offer comes: its own word first, then that of the record. */
export const offerForm = (offer: Offer, part: Part): ContactForm | undefined =>
  part.kind === 'contact' ? (offer.form ?? part.form) : undefined;
