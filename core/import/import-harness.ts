import { must } from '../base/assert-never';
import { ok, problem, type Result } from '../base/result';
import { dispatch, type Call } from '../commands/dispatch';
import { startHistory } from '../commands/history';
import { idFromText, type Id, type NewId } from '../model/ids';
import { newProject } from '../model/new-project';
import type { Part } from '../model/parts/part';
import type { WirePart } from '../model/parts/wire';
import type { Project } from '../model/project';
import { arrange } from './arrange';
import { wiresFor, type WireChoice } from './choose-wire';
import { readConnectors, type ConnectorsPlan } from './connectors';
import { readFromTo, type FromToRow } from './from-to';
import type { ImportProblem } from './import-problem';
import { readEnds, targetOf, type NamedEnd } from './wire-ends';

export interface HarnessFiles {
  readonly fromTo: { readonly file: string; readonly text: string };
  readonly connectors?: { readonly file: string; readonly text: string } | undefined;
  readonly catalogue: readonly Part[];
  readonly title: string;
}

/**
 * A harness from a from-to table and a connectors table. It is drawn with the commands that a user draws with, so
 * contacts are chosen in the same way, and what cannot be chosen is a finding. Either the whole harness comes back,
 * or every problem of both files. The same files give the same project, ids included.
 */
export function importHarness(files: HarnessFiles): Result<Project, readonly ImportProblem[]> {
  const connectors = files.connectors
    ? readConnectors(files.connectors.file, files.connectors.text, files.catalogue)
    : ok<ConnectorsPlan>({ connectors: [], mates: [], equipment: new Map() });
  const rows = readFromTo(files.fromTo.file, files.fromTo.text);
  const problems: ImportProblem[] = [
    ...(connectors.ok ? [] : connectors.problem),
    ...(rows.ok ? [] : rows.problem),
  ];
  if (!connectors.ok || !rows.ok) return problem(problems);

  const ends = readEnds(rows.value, connectors.value.connectors, problems);
  const choices = rows.value.map((row): WireChoice => {
    const wires = wiresFor(row, files.catalogue);
    if (wires.ok) return wires.value;
    problems.push(row.problem(wires.problem.field, wires.problem.message));
    return { candidates: [], remark: undefined };
  });
  const groups = groupsOf(rows.value, problems);
  if (problems.length) return problem(problems);

  const draw = new Drawing(files);
  draw.place(connectors.value, ends);
  draw.signals(rows.value);
  const names = wireNames(rows.value);
  rows.value.forEach((row, i) => {
    const refusal = draw.wire(row, names[i] as string, ends[i] as NamedEnd[], choices[i] as WireChoice);
    if (refusal) problems.push(row.problem('from', refusal));
  });
  if (problems.length) return problem(problems);
  draw.groups(groups);
  return ok(draw.project);
}

/** Rows of the same group text, which stands for wires twisted together. */
function groupsOf(
  rows: readonly FromToRow[],
  problems: ImportProblem[],
): ReadonlyMap<string, readonly number[]> {
  const out = new Map<string, number[]>();
  rows.forEach((row, i) => {
    const name = row.values.group;
    if (name !== undefined) out.set(name, [...(out.get(name) ?? []), i]);
  });
  for (const [name, members] of out) {
    const only = members.length === 1 ? rows[members[0] as number] : undefined;
    if (only) problems.push(only.problem('group', `${name} has one wire; a group needs two or more`));
  }
  return out;
}

/** Given names, and W1, W2, … for the others without taking a given one. */
function wireNames(rows: readonly FromToRow[]): readonly string[] {
  const taken = new Set(rows.map((r) => r.values.wire));
  let n = 0;
  return rows.map((row) => {
    if (row.values.wire !== undefined) return row.values.wire;
    do n++;
    while (taken.has(`W${n}`));
    return `W${n}`;
  });
}

/** The project while it is drawn, one command after the other. */
class Drawing {
  project: Project;
  private readonly newId: NewId;
  private readonly ids = new Map<string, Id>();
  private readonly signalIds = new Map<string, Id>();
  private readonly wireIds: Id[] = [];

  constructor(private readonly files: HarnessFiles) {
    const seed = idFromText([files.title, files.fromTo.text, files.connectors?.text ?? ''].join('\u0000'));
    let n = 0;
    this.newId = () => idFromText(`${seed} ${n++}`);
    this.project = newProject({ id: this.newId(), revisionId: this.newId(), title: files.title });
    const sources = [files.fromTo.file, files.connectors?.file].filter((f) => f !== undefined);
    this.do({ id: 'project.edit', args: { change: { notes: [`Imported from ${sources.join(' and ')}.`] } } });
  }

  /** Whoever calls this has checked what the command refuses. */
  private do(call: Call): void {
    const refusal = this.try(call);
    if (refusal !== null) throw new Error(`${call.id}: ${refusal}`);
  }

  private try(call: Call): string | null {
    // A new history each time: nobody undoes an import step by step.
    const done = dispatch(startHistory(this.project), call, {
      newId: this.newId,
      catalogue: this.files.catalogue,
    });
    if (!done.ok) return done.problem.reason;
    this.project = done.value.project;
    return null;
  }

  place(plan: ConnectorsPlan, ends: readonly (readonly NamedEnd[])[]): void {
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
      const where = must(sheet.equipment.get(designator), designator);
      this.do({ id: 'equipment.add', args: { equipment: { kind, id, designator, ...where } } });
    }
    for (const { designator, part, equipment } of plan.connectors) {
      const id = this.newId();
      this.ids.set(designator, id);
      const equipmentId = equipment === undefined ? undefined : equipmentIds.get(equipment);
      // A housing on equipment in which no wire of this harness ends came with the equipment, as a header does.
      const supply =
        part.kind === 'header' || (equipmentId && !wired.has(designator)) ? 'equipment' : 'harness';
      this.do({
        id: 'connector.place',
        args: {
          part,
          id,
          designator,
          supply,
          ...(equipmentId ? { equipment: equipmentId } : {}),
          ...must(sheet.items.get(designator), designator),
        },
      });
    }
    for (const [a, b] of plan.mates)
      this.do({
        id: 'mate.add',
        args: { a: must(this.ids.get(a), a), b: must(this.ids.get(b), b), insist: true },
      });
    for (const designator of splices) {
      const id = this.newId();
      this.ids.set(designator, id);
      this.do({
        id: 'splice.add',
        args: { id, designator, position: must(sheet.items.get(designator), designator).position },
      });
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
      this.do({ id: 'signal.add', args: { signal: { id, name, ...values } } });
    }
  }

  /** Draws the wire with the first candidate for which most ends get a contact. The answer is a refusal, or null. */
  wire(row: FromToRow, designator: string, ends: readonly NamedEnd[], choice: WireChoice): string | null {
    const v = row.values;
    const [from, to] = ends.map((e) => targetOf(e, this.ids));
    const id = this.newId();
    const note = [v.note, choice.remark].filter((t) => t !== undefined).join('; ');
    const lengthMm = v.length_mm ?? v.length;
    const call = (part: WirePart | null): Call<'wire.add'> => ({
      id: 'wire.add',
      args: {
        from: must(from, 'first end'), to: must(to, 'second end'), id, part, designator,
        ...(v.colour ? { colour: v.colour } : {}),
        ...(v.signal === undefined ? {} : { signal: must(this.signalIds.get(v.signal), v.signal) }),
        ...(lengthMm === undefined ? {} : { lengthMm }),
        ...(note ? { note } : {}),
      },
    }); // prettier-ignore
    const before = this.project;
    let best: { project: Project; fitted: number } | undefined;
    for (const part of choice.candidates.length ? choice.candidates : [null]) {
      this.project = before;
      const refusal = this.try(call(part));
      if (refusal !== null) return refusal;
      const fitted =
        this.project.wires.at(-1)?.ends.filter((e) => e.at === 'cavity' && e.contact).length ?? 0;
      if (!best || fitted > best.fitted) best = { project: this.project, fitted };
      if (fitted === ends.filter((e) => e.at === 'cavity').length) break;
    }
    this.project = must(best, 'a candidate').project;
    this.wireIds.push(id);
    // The command picks a colour for a drawn wire; a table that names none leaves it open.
    if (!v.colour) this.do({ id: 'wire.edit', args: { ids: [id], change: { colour: null } } });
    return null;
  }

  groups(groups: ReadonlyMap<string, readonly number[]>): void {
    for (const [designator, members] of groups) {
      const wires = members.map((i) => must(this.wireIds[i], `wire ${i}`));
      this.do({ id: 'group.add', args: { id: this.newId(), designator, form: 'twisted', wires } });
    }
  }
}
