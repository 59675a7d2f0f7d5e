import type { Draft } from 'immer';
import { z } from 'zod';
import { Point } from '../../base/point';
import { chooseContact } from '../../derive/contact-fit';
import { mateMapOf } from '../../derive/mate-map';
import { Id } from '../../model/ids';
import type { Finish } from '../../model/parts/common';
import type { ContactPart } from '../../model/parts/contact';
import type { HousingPart } from '../../model/parts/housing';
import { isMatingHalf, type MatingHalf, type Part } from '../../model/parts/part';
import type { Conductor } from '../../model/parts/wire';
import type { Project } from '../../model/project';
import type { WireEnd } from '../../model/wire';
import { clearState, refusePlace } from './cavities';
import { draftObject, missing, objectIn } from './draft-object';
import { embedPart, partByNumber } from './embed-part';

/** Where a wire is to end. How the end is prepared follows from the part that is there. */
export const WireTarget = z.discriminatedUnion('at', [
  z.strictObject({ at: z.literal('cavity'), connector: Id, cavity: z.string().min(1) }),
  z.strictObject({ at: z.literal('splice'), splice: Id }),
  z.strictObject({
    at: z.literal('free'),
    position: Point,
    node: Id.optional(),
    text: z.string().optional(),
  }),
]);
export type WireTarget = z.infer<typeof WireTarget>;

/** Why no wire can end there, or null. */
export function refuseTarget(project: Project, target: WireTarget): string | null {
  if (target.at === 'splice') return missing(project, 'splices', [target.splice], 'splice');
  if (target.at === 'free') return missing(project, 'nodes', [target.node], 'node');
  const wrong = refusePlace(project, target.connector, target.cavity);
  if (wrong) return wrong;
  const half = halfAt(project, target.connector);
  return half?.kind === 'header'
    ? `${objectIn(project, 'connectors', target.connector)?.designator} is a header: its contacts are soldered to the board. End the wire in the housing that plugs onto it.`
    : null;
}

export function halfAt(project: Project, connector: string): MatingHalf | undefined {
  const part = objectIn(project, 'parts', objectIn(project, 'connectors', connector)?.part ?? '');
  return isMatingHalf(part) ? part : undefined;
}

export function housingAt(project: Project, target: WireTarget): HousingPart | undefined {
  const half = target.at === 'cavity' ? halfAt(project, target.connector) : undefined;
  return half?.kind === 'housing' ? half : undefined;
}

/**
 * Whether ends are in that cavity already, apart from one that is being moved. Plain loops: it is asked of ten
 * thousand wires while one is drawn.
 */
export function isTaken(
  project: Project,
  target: WireTarget,
  except?: { wire: string; end: number },
): boolean {
  if (target.at !== 'cavity') return false;
  for (const w of project.wires)
    for (let i = 0; i < 2; i++) {
      const e = w.ends[i as 0 | 1];
      if (e.at !== 'cavity' || e.cavity !== target.cavity || e.connector !== target.connector) continue;
      if (!except || w.id !== except.wire || i !== except.end) return true;
    }
  return false;
}

/** The finish of the contact that the one in this cavity will meet, where a header tells it. */
export function facingFinish(project: Project, connector: string): Finish | undefined {
  const mate = project.mates.find((m) => m.a === connector || m.b === connector);
  if (!mate) return undefined;
  const other = halfAt(project, mate.a === connector ? mate.b : mate.a);
  return other?.kind === 'header' ? other.finish : undefined;
}

/** The contact that fits there, or null. */
export function contactFor(
  project: Project,
  target: WireTarget,
  conductors: readonly Conductor[],
  candidates: readonly Part[],
): ContactPart | null {
  const housing = housingAt(project, target);
  if (!housing || target.at !== 'cavity' || conductors.length === 0) return null;
  const finish = facingFinish(project, target.connector);
  return chooseContact(housing, conductors, candidates, finish ? { finish } : undefined);
}

/** The wire seal that a sealed housing names, if the insulation is within its range. */
export function sealFor(
  project: Project,
  target: WireTarget,
  conductor: Conductor | undefined,
  candidates: readonly Part[],
): Part | undefined {
  const housing = housingAt(project, target);
  if (!housing?.sealed || !conductor) return undefined;
  const seal = partByNumber(candidates, housing.maker, housing.wireSeal);
  if (seal?.kind !== 'wire-seal') return undefined;
  const low = conductor.odMinMm ?? conductor.odMm;
  const high = conductor.odMaxMm ?? conductor.odMm;
  const fits =
    low !== undefined &&
    high !== undefined &&
    low >= (seal.odMinMm ?? Infinity) &&
    high <= (seal.odMaxMm ?? -Infinity);
  return fits ? seal : undefined;
}

/** The signal that the interface declares at a position: there, or at the one it is mated with. */
export function declaredSignal(project: Project, target: WireTarget): string | undefined {
  if (target.at !== 'cavity') return undefined;
  const own = signalAt(project, target.connector, target.cavity);
  if (own) return own;
  for (const mate of project.mates) {
    if (mate.a !== target.connector && mate.b !== target.connector) continue;
    const isA = mate.a === target.connector;
    const map = mateMapOf(mate, halfAt(project, mate.a), halfAt(project, mate.b));
    const facing = (isA ? map.fromA : map.fromB).get(target.cavity);
    const signal = facing && signalAt(project, isA ? mate.b : mate.a, facing);
    if (signal) return signal;
  }
  return undefined;
}

const signalAt = (project: Project, connector: string, cavity: string): string | undefined =>
  objectIn(project, 'connectors', connector)?.cavities.find((e) => e.cavity === cavity)?.signal;

/** Parts that prepare a wire end, all chosen. */
export interface Preparation {
  readonly contact: ContactPart | null;
  readonly seal: Part | undefined;
}

/**
 * Makes the end in the draft: embeds contact and seal, adds the contact object, takes the strip length from it, and
 * takes back a declared state of the cavity (it is wired from now on). A taken cavity gets no second contact.
 */
export function prepareEnd(
  draft: Draft<Project>,
  project: Project,
  target: WireTarget,
  prepared: Preparation,
  newId: () => string,
): WireEnd {
  if (target.at === 'splice') return { at: 'splice', splice: target.splice };
  if (target.at === 'free') return target;
  const connector = draftObject(draft, project, 'connectors', target.connector);
  const entry = connector.cavities.find((e) => e.cavity === target.cavity);
  if (entry?.state) {
    const spare = entry.contact;
    if (spare) draft.contacts = draft.contacts.filter((c) => c.id !== spare);
    clearState(connector, target.cavity);
  }
  // No spread: fields added to a spread object give each end a hidden class of its own, and reading ends gets slow.
  const end: WireEnd = { at: 'cavity', connector: target.connector, cavity: target.cavity };
  if (prepared.contact) {
    const contact = { id: newId(), part: embedPart(draft, project, prepared.contact) };
    draft.contacts.push(contact);
    end.contact = contact.id;
    if (prepared.contact.stripLengthMm !== undefined) end.stripLengthMm = prepared.contact.stripLengthMm;
  }
  if (prepared.seal) end.seal = embedPart(draft, project, prepared.seal);
  return end;
}
