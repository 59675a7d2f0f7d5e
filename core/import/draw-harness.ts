import { must } from '../base/assert-never';
import { candidateParts } from '../commands/shared/embed-part';
import { contactFor, sealFor } from '../commands/shared/wire-target';
import { symbolOf } from '../derive/symbol';
import type { Connector } from '../model/connector';
import { idFromText, type Id, type NewId } from '../model/ids';
import { newProject } from '../model/new-project';
import type { ContactPart } from '../model/parts/contact';
import type { MatingHalf, Part } from '../model/parts/part';
import type { WirePart } from '../model/parts/wire';
import type { Project } from '../model/project';
import type { Splice, Wire, WireEnd } from '../model/wire';
import { arrange } from './arrange';
import type { WireChoice } from './choose-wire';
import type { ConnectorsPlan } from './connectors';
import type { FromToRow } from './from-to';
import type { NamedEnd } from './wire-ends';

/** A placed connector with what is asked of it again and again. */
interface Half {
  readonly connector: Connector;
  readonly part: MatingHalf;
  /** Cavities in which wires end; none yet: the first one turns a single row. */
  readonly wired: Set<string>;
  /** What fits its cavities, by wire. Emptied when the parts to choose from change. */
  readonly chosen: Map<WirePart, Chosen>;
}

interface Chosen {
  readonly contact: ContactPart | null;
  readonly seal: Part | undefined;
}

/** An end of a wire under way, with what is to be put on it. */
type Prepared =
  { readonly half: Half; readonly cavity: string; readonly chosen: Chosen | undefined } | Splice;

export interface DrawingArgs {
  readonly title: string;
  /** What the ids are made from: the same text gives the same ids. */
  readonly seed: string;
  readonly note: string;
  readonly catalogue: readonly Part[];
}

/**
 * The project while it is drawn, as `connector.place`, `wire.add` and the other commands draw it, but into one project that
 * grows: dispatching them would copy all arrays for every wire. The tests draw the same with the commands and compare.
 */
export class Drawing {
  private readonly out: Project;
  private readonly newId: NewId;
  private readonly halves = new Map<string, Half>();
  private readonly splices = new Map<string, Splice>();
  private readonly signalIds = new Map<string, Id>();
  private readonly embedded = new Set<Id>();
  /** Null where a part was put into the project since. */
  private candidates: readonly Part[] | null = null;

  constructor(private readonly args: DrawingArgs) {
    let n = 0;
    this.newId = () => idFromText(`${args.seed} ${n++}`);
    const empty = newProject({ id: this.newId(), revisionId: this.newId(), title: args.title });
    this.out = { ...empty, notes: [args.note] };
  }

  get project(): Project {
    return this.out;
  }

  place(plan: ConnectorsPlan, ends: readonly (readonly NamedEnd[])[]): void {
    const { out } = this;
    const nameOf = (end: NamedEnd): string => (end.at === 'cavity' ? end.connector : end.splice);
    const splices = [...new Set(ends.flat().flatMap((e) => (e.at === 'splice' ? [e.splice] : [])))];
    const wired = new Set(ends.flat().map(nameOf));
    const sheet = arrange(
      [
        ...plan.connectors.map((c) => ({ name: c.designator, on: c.equipment, part: c.part })),
        ...splices.map((name) => ({ name, on: undefined })),
      ],
      [...plan.mates, ...ends.map((pair) => pair.map(nameOf) as [string, string])],
    );
    const equipmentIds = new Map<string, Id>();
    for (const [designator, kind] of plan.equipment) {
      const id = this.newId();
      equipmentIds.set(designator, id);
      out.equipment.push({ kind, id, designator, ...must(sheet.equipment.get(designator), designator) });
    }
    for (const { designator, part, equipment } of plan.connectors) {
      const equipmentId = equipment === undefined ? undefined : equipmentIds.get(equipment);
      // A housing on equipment in which no wire of this harness ends came with the equipment, as a header does.
      const supply =
        part.kind === 'header' || (equipmentId && !wired.has(designator)) ? 'equipment' : 'harness';
      const connector: Connector = {
        id: this.newId(),
        designator,
        part: this.embed(part),
        ...must(sheet.items.get(designator), designator),
        view: 'mating-face',
        ...(equipmentId ? { equipment: equipmentId } : {}),
        supply,
        cavities: [],
        accessories: [],
      };
      out.connectors.push(connector);
      this.halves.set(designator, { connector, part, wired: new Set(), chosen: new Map() });
    }
    for (const [a, b] of plan.mates)
      out.mates.push({ id: this.newId(), a: this.half(a).connector.id, b: this.half(b).connector.id });
    for (const designator of splices) {
      const { position } = must(sheet.items.get(designator), designator);
      const splice = { id: this.newId(), designator, position };
      out.splices.push(splice);
      this.splices.set(designator, splice);
    }
  }

  /** A signal has one voltage; of the currents of its wires it keeps the largest. */
  signals(rows: readonly FromToRow[]): void {
    const found = new Map<string, { voltageV?: number; currentA?: number }>();
    for (const { values: v } of rows) {
      if (v.signal === undefined) continue;
      const s = found.get(v.signal) ?? {};
      if (v.voltage_v !== undefined) s.voltageV = v.voltage_v;
      if (v.current_a !== undefined) s.currentA = Math.max(v.current_a, s.currentA ?? 0);
      found.set(v.signal, s);
    }
    for (const [name, values] of found) {
      const id = this.newId();
      this.signalIds.set(name, id);
      this.out.signals.push({ id, name, ...values });
    }
  }

  /** Draws the wire with the first candidate for which most ends get a contact; the answer is its id. */
  wire(row: FromToRow, designator: string, [from, to]: readonly NamedEnd[], choice: WireChoice): Id {
    const v = row.values;
    const named = [must(from, 'first end'), must(to, 'second end')] as const;
    const id = this.newId();
    const inCavities = named.filter((e) => e.at === 'cavity').length;
    let best:
      { part: WirePart | null; ends: Prepared[]; ids: (Id | undefined)[]; fitted: number } | undefined;
    for (const part of choice.candidates.length ? choice.candidates : [null]) {
      const ends = named.map((e) => this.prepare(e, part));
      const ids = ends.map((e) => ('half' in e && e.chosen?.contact ? this.newId() : undefined));
      const fitted = ids.filter((c) => c !== undefined).length;
      if (!best || fitted > best.fitted) best = { part, ends, ids, fitted };
      if (fitted === inCavities) break;
    }
    const { part, ends, ids } = must(best, 'a candidate');
    face(ends as [Prepared, Prepared]);
    const note = [v.note, choice.remark].filter((t) => t !== undefined).join('; ');
    const lengthMm = v.length_mm ?? v.length;
    const made = ends.map((end, i) => this.end(end, ids[i])) as Wire['ends'];
    this.out.wires.push({
      id,
      designator,
      ...(part ? { part: this.embed(part) } : {}),
      // A drawn wire takes a colour; a table that names none leaves it open.
      ...(v.colour ? { colour: v.colour } : {}),
      ...(v.signal === undefined ? {} : { signal: must(this.signalIds.get(v.signal), v.signal) }),
      ends: made,
      ...(lengthMm === undefined ? {} : { lengthMm }),
      ...(note ? { note } : {}),
    });
    return id;
  }

  groups(groups: ReadonlyMap<string, readonly Id[]>): void {
    for (const [designator, wires] of groups)
      this.out.groups.push({ id: this.newId(), designator, form: 'twisted', wires: [...wires] });
  }

  private half(designator: string): Half {
    return must(this.halves.get(designator), designator);
  }

  /** What the end gets with that wire. A taken cavity gets no second contact. */
  private prepare(end: NamedEnd, part: WirePart | null): Prepared {
    if (end.at === 'splice') return must(this.splices.get(end.splice), end.splice);
    const half = this.half(end.connector);
    const chosen = part ? this.chosen(half, part) : undefined;
    const taken = half.wired.has(end.cavity);
    return { half, cavity: end.cavity, chosen: chosen && taken ? { ...chosen, contact: null } : chosen };
  }

  private chosen(half: Half, part: WirePart): Chosen {
    const candidates = (this.candidates ??= this.newCandidates());
    let found = half.chosen.get(part);
    if (!found) {
      const { connector } = half;
      const target = { at: 'cavity', connector: connector.id, cavity: '' } as const;
      found = {
        contact: contactFor(this.out, target, [part], candidates),
        seal: sealFor(this.out, target, part, candidates),
      };
      half.chosen.set(part, found);
    }
    return found;
  }

  private newCandidates(): readonly Part[] {
    for (const half of this.halves.values()) half.chosen.clear();
    return candidateParts(this.out, this.args.catalogue);
  }

  private end(end: Prepared, contactId: Id | undefined): WireEnd {
    if (!('half' in end)) return { at: 'splice', splice: end.id };
    const { half, cavity, chosen } = end;
    half.wired.add(cavity);
    // No spread: fields added to a spread object give each end a hidden class of its own, and reading ends gets slow.
    const made: WireEnd = { at: 'cavity', connector: half.connector.id, cavity };
    if (chosen?.contact && contactId !== undefined) {
      this.out.contacts.push({ id: contactId, part: this.embed(chosen.contact) });
      made.contact = contactId;
      if (chosen.contact.stripLengthMm !== undefined) made.stripLengthMm = chosen.contact.stripLengthMm;
    }
    if (chosen?.seal) made.seal = this.embed(chosen.seal);
    return made;
  }

  private embed(part: Part): Id {
    if (this.embedded.has(part.id)) return part.id;
    this.embedded.add(part.id);
    // An array that was asked for candidates is indexed by id: a new one, since that index would not know the part.
    if (this.candidates) this.out.parts = [...this.out.parts, part];
    else this.out.parts.push(part);
    this.candidates = null;
    return part.id;
  }
}

/** A single row that has no wire yet is turned so that its first one leaves towards the other end. */
function face([a, b]: readonly [Prepared, Prepared]): void {
  const exits = [exitTowards(a, b), exitTowards(b, a)];
  [a, b].forEach((end, i) => {
    const exit = exits[i];
    if ('half' in end && exit) end.half.connector.exit = exit;
  });
}

function exitTowards(mine: Prepared, other: Prepared): 'left' | 'right' | undefined {
  if (!('half' in mine) || mine.half.wired.size > 0 || (mine.half.part.rows ?? 1) > 1) return undefined;
  const [here, there] = [middleOf(mine), middleOf(other)];
  return here === there ? undefined : there > here ? 'right' : 'left';
}

/** Middle of what the wire ends at, along x, in sheet mm. */
function middleOf(end: Prepared): number {
  if (!('half' in end)) return end.position.x;
  const { connector, part } = end.half;
  return connector.position.x + symbolOf(part, connector).widthMm / 2;
}
