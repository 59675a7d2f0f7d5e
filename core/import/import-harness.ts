import { ok, problem, type Result } from '../base/result';
import { idFromText, type Id } from '../model/ids';
import type { Part } from '../model/parts/part';
import type { Project } from '../model/project';
import { wiresFor, type WireChoice } from './choose-wire';
import { readConnectors, type ConnectorsPlan } from './connectors';
import { readFromTo, type FromToRow } from './from-to';
import { Drawing } from './draw-harness';
import type { ImportProblem } from './import-problem';
import { readEnds, type NamedEnd } from './wire-ends';

export interface HarnessFiles {
  readonly fromTo: { readonly file: string; readonly text: string };
  readonly connectors?: { readonly file: string; readonly text: string } | undefined;
  readonly catalogue: readonly Part[];
  readonly title: string;
}

/**
 * A harness from a from-to table and a connectors table. It is drawn as the commands draw that a user draws with, so
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

  const sources = [files.fromTo.file, files.connectors?.file].filter((f) => f !== undefined);
  const draw = new Drawing({
    title: files.title,
    seed: idFromText([files.title, files.fromTo.text, files.connectors?.text ?? ''].join('\u0000')),
    note: `Imported from ${sources.join(' and ')}.`,
    catalogue: files.catalogue,
  });
  draw.place(connectors.value, ends);
  draw.signals(rows.value);
  const names = wireNames(rows.value);
  const ids = rows.value.map((row, i) =>
    draw.wire(row, names[i] as string, ends[i] as NamedEnd[], choices[i] as WireChoice),
  );
  draw.groups(new Map([...groups].map(([name, members]) => [name, members.map((i) => ids[i] as Id)])));
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
    if (name === undefined) return;
    const members = out.get(name);
    if (members) members.push(i);
    else out.set(name, [i]);
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
