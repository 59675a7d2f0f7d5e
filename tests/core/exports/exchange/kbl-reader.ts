import type { Bill, ListedWire } from './wire-list';
import { billOf } from './wire-list';
import { find, findAll, readTree, refsOf, textOf, walk, type Tree } from './xml-tree';

/** Reads a KBL file with nothing but its elements: bill of material and wire list. */
export function readKbl(text: string): { readonly bill: Bill; readonly wires: readonly ListedWire[] } {
  const root = readTree(text);
  const byId = new Map<string, Tree>();
  for (const e of walk(root)) if (e.id !== undefined) byId.set(e.id, e);
  const harness = find(root, 'Harness');
  const to = (e: Tree | undefined, name: string): Tree | undefined => byId.get(refsOf(e, name)[0] ?? '');
  const number = (part: Tree | undefined): string | undefined => {
    const text = textOf(find(part, 'Alias_id'), 'Alias_id') ?? textOf(part, 'Part_number');
    return text === '/NULL' ? undefined : text;
  };
  const mm = (e: Tree | undefined): number | null => {
    const value = Number(textOf(e, 'Value_component') ?? NaN);
    return Number.isNaN(value) ? null : value;
  };
  const instruction = (e: Tree | undefined, type: string): string | undefined =>
    e?.children
      .filter((c) => find(c, 'Instruction_type'))
      .filter((c) => textOf(c, 'Instruction_type') === type)
      .map((c) => textOf(c, 'Instruction_value'))[0];
  const colours = (e: Tree | undefined, name: string): string | null =>
    findAll(e, name)
      .map((c) => textOf(c, 'Colour_value'))
      .filter((c) => c !== '/NULL')
      .join('/') || null;
  const lengthOf = (e: Tree | undefined): number | null =>
    mm(find(find(e, 'Length_information'), 'Length_value'));

  const uses = (harness?.children ?? []).flatMap((use) => {
    const part = to(use, 'Part');
    const partNumber = number(part);
    // A carrier is there for its contact point only; what comes with the equipment says so.
    if (!part || partNumber === undefined || find(use, 'Usage') || instruction(use, 'supply')) return [];
    if (use.name === 'General_wire_occurrence') {
      const colour = find(part, 'Core') ? null : colours(part, 'Cover_colour');
      return { line: `${partNumber} ${colour ?? '-'} m`, amount: lengthOf(use) };
    }
    if (use.name !== 'Wire_protection_occurrence') return { line: `${partNumber} - pcs`, amount: 1 };
    if (textOf(part, 'Protection_type') === 'tape') return [];
    const run = mm(find(use, 'Protection_length'));
    const takeUp = Number(instruction(part, 'takeUp') ?? 0);
    return { line: `${partNumber} - m`, amount: run === null ? null : run * (1 + takeUp) };
  });

  const routes = new Map(findAll(root, 'Routing').map((r) => [refsOf(r, 'Routed_wire')[0], r]));
  const place = (end: Tree | undefined): string => {
    const point = to(end, 'Contact_point');
    const connector = point?.parent;
    const parts = refsOf(point, 'Associated_parts').map((id) => byId.get(id));
    const ofKind = (name: string): string => number(to(parts.find((p) => p?.name === name), 'Part')) ?? '';
    const terminal = ofKind('Terminal_occurrence');
    const cavity = to(to(point, 'Contacted_cavity'), 'Part');
    const usage = textOf(connector, 'Usage');
    if (usage === undefined)
      return [textOf(connector, 'Id'), textOf(cavity, 'Cavity_number'), terminal, ofKind('Cavity_seal_occurrence')].join('|');
    if (usage === 'splice') return [textOf(connector, 'Id'), '', '', ''].join('|');
    const [missing, number_] = (instruction(connector, 'cavity') ?? ':').split(':');
    return [instruction(end, 'text') ?? missing, number_, terminal, ''].join('|');
  }; // prettier-ignore
  const wires = findAll(harness, 'Connection').map((c): ListedWire => {
    const wire = to(c, 'Wire');
    const part = to(wire, 'Part');
    const ends = findAll(c, 'Extremities');
    const at = (position: string) => place(ends.find((e) => textOf(e, 'Position_on_wire') === position));
    const path = refsOf(routes.get(c.id ?? ''), 'Segments');
    return {
      wire: textOf(wire, 'Wire_number') ?? '',
      signal: textOf(c, 'Signal_name') ?? null,
      from: at('0'),
      to: at('1'),
      colour:
        instruction(wire, 'colour') ?? colours(part, part?.name === 'Core' ? 'Core_colour' : 'Cover_colour'),
      lengthMm: lengthOf(wire),
      path: path.map((id) => textOf(byId.get(id), 'Id')).join(' ') || null,
    };
  });
  return { bill: billOf(uses), wires };
}
