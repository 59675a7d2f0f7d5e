import { must } from '@latchwork/core/base/assert-never';
import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory } from '@latchwork/core/commands/history';
import type { WireTarget } from '@latchwork/core/commands/shared/wire-target';
import { arrange } from '@latchwork/core/import/arrange';
import { wiresFor } from '@latchwork/core/import/choose-wire';
import { readConnectors } from '@latchwork/core/import/connectors';
import { readFromTo, type FromToRow } from '@latchwork/core/import/from-to';
import type { HarnessFiles } from '@latchwork/core/import/import-harness';
import { readEnds, type NamedEnd } from '@latchwork/core/import/wire-ends';
import type { Result } from '@latchwork/core/base/result';
import { idFromText } from '@latchwork/core/model/ids';
import { newProject } from '@latchwork/core/model/new-project';
import type { WirePart } from '@latchwork/core/model/parts/wire';
import type { Project } from '@latchwork/core/model/project';

/** The tables drawn with one command after the other, as a user would: what an import must give, to the byte. */
export function importByCommands(files: HarnessFiles & { readonly connectors: { file: string; text: string } }): Project {
  const plan = valueOf(readConnectors(files.connectors.file, files.connectors.text, files.catalogue));
  const rows = valueOf(readFromTo(files.fromTo.file, files.fromTo.text));
  const ends = readEnds(rows, plan.connectors, []) as (readonly [NamedEnd, NamedEnd])[];
  const seed = idFromText([files.title, files.fromTo.text, files.connectors.text].join('\u0000'));
  let n = 0;
  const newId = () => idFromText(`${seed} ${n++}`);
  let project = newProject({ id: newId(), revisionId: newId(), title: files.title });
  const run = (call: Call): void => {
    const done = dispatch(startHistory(project), call, { newId, catalogue: files.catalogue });
    if (!done.ok) throw new Error(done.problem.reason);
    project = done.value.project;
  };
  run({ id: 'project.edit', args: { change: { notes: [`Imported from ${files.fromTo.file} and ${files.connectors.file}.`] } } });

  const nameOf = (e: NamedEnd): string => (e.at === 'cavity' ? e.connector : e.splice);
  const splices = [...new Set(ends.flat().flatMap((e) => (e.at === 'splice' ? [e.splice] : [])))];
  const wired = new Set(ends.flat().map(nameOf));
  const items = plan.connectors.map((c) => ({ name: c.designator, on: c.equipment, part: c.part }));
  const sheet = arrange(
    [...items, ...splices.map((name) => ({ name, on: undefined }))],
    [...plan.mates, ...ends.map(([a, b]) => [nameOf(a), nameOf(b)] as const)],
  );
  const ids = new Map<string, string>();
  const idOf = (name: string): string => must(ids.get(name), name);
  for (const [name, kind] of plan.equipment) {
    const id = newId();
    ids.set(`on ${name}`, id);
    run({ id: 'equipment.add', args: { equipment: { kind, id, designator: name, ...sheet.equipment.get(name)! } } });
  }
  for (const { designator, part, equipment } of plan.connectors) {
    const id = newId();
    ids.set(designator, id);
    const came = part.kind === 'header' || (equipment !== undefined && !wired.has(designator));
    const on = equipment === undefined ? {} : { equipment: idOf(`on ${equipment}`) };
    const supply = came ? 'equipment' : 'harness';
    run({ id: 'connector.place', args: { part, id, designator, supply, ...on, ...sheet.items.get(designator)! } });
  }
  for (const [a, b] of plan.mates) run({ id: 'mate.add', args: { a: idOf(a), b: idOf(b), insist: true } });
  for (const name of splices) {
    const id = newId();
    ids.set(name, id);
    run({ id: 'splice.add', args: { id, designator: name, position: sheet.items.get(name)!.position } });
  }
  for (const name of new Set(rows.flatMap((r) => r.values.signal ?? []))) {
    const id = newId();
    ids.set(`signal ${name}`, id);
    run({ id: 'signal.add', args: { signal: { id, name, ...signalValues(rows, name) } } });
  }

  const taken = new Set(rows.map((r) => r.values.wire));
  let number = 0;
  const groups = new Map<string, string[]>();
  rows.forEach((row, i) => {
    const v = row.values;
    if (v.wire === undefined) do number++; while (taken.has(`W${number}`)); // prettier-ignore
    const id = newId();
    const { candidates, remark } = valueOf(wiresFor(row, files.catalogue));
    const note = [v.note, remark].filter(Boolean).join('; ');
    const [from, to] = ends[i]!.map((e): WireTarget => e.at === 'cavity' ? { at: 'cavity', connector: idOf(e.connector), cavity: e.cavity } : { at: 'splice', splice: idOf(e.splice) }); // prettier-ignore
    const before = project;
    const tries = (candidates.length > 0 ? candidates : [null]).map((part: WirePart | null) => {
      return (): number => {
        project = before;
        run({
          id: 'wire.add',
          args: {
            from: from!, to: to!, id, part, designator: v.wire ?? `W${number}`,
            ...(v.colour ? { colour: v.colour } : {}),
            ...(v.signal === undefined ? {} : { signal: idOf(`signal ${v.signal}`) }),
            ...(v.length_mm === undefined ? {} : { lengthMm: v.length_mm }),
            ...(note ? { note } : {}),
          },
        });
        return project.wires.at(-1)!.ends.filter((e) => e.at === 'cavity' && e.contact).length;
      };
    }); // prettier-ignore
    let best: { project: Project; fitted: number } | undefined;
    for (const one of tries) {
      const fitted = one();
      if (!best || fitted > best.fitted) best = { project, fitted };
      if (fitted === ends[i]!.filter((e) => e.at === 'cavity').length) break;
    }
    project = best!.project;
    if (!v.colour) run({ id: 'wire.edit', args: { ids: [id], change: { colour: null } } });
    if (v.group !== undefined) groups.set(v.group, [...(groups.get(v.group) ?? []), id]);
  });
  for (const [designator, wires] of groups)
    run({ id: 'group.add', args: { id: newId(), designator, form: 'twisted', wires } });
  return project;
} // prettier-ignore

function signalValues(rows: readonly FromToRow[], name: string): { voltageV?: number; currentA?: number } {
  const mine = rows.map((r) => r.values).filter((v) => v.signal === name);
  const volts = mine.flatMap((v) => v.voltage_v ?? []);
  const amps = mine.flatMap((v) => v.current_a ?? []);
  return {
    ...(volts.length > 0 ? { voltageV: volts[0]! } : {}),
    ...(amps.length > 0 ? { currentA: Math.max(...amps) } : {}),
  };
}

function valueOf<T>(result: Result<T, unknown>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}
