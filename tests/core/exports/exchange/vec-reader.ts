import type { Bill, ListedWire } from './wire-list';
import { billOf } from './wire-list';
import { find, findAll, readTree, refsOf, textOf, walk, type Tree } from './xml-tree';

/** Reads a VEC file with nothing but its elements: bill of material and wire list. */
export function readVec(text: string): { readonly bill: Bill; readonly wires: readonly ListedWire[] } {
  const root = readTree(text);
  const byId = new Map<string, Tree>();
  const all: Tree[] = [];
  for (const e of walk(root)) {
    all.push(e);
    if (e.id !== undefined) byId.set(e.id, e);
  }
  const to = (e: Tree | undefined, name: string): Tree | undefined => byId.get(refsOf(e, name)[0] ?? '');
  const number = (part: Tree | undefined): string | undefined =>
    textOf(find(part, 'AliasId'), 'IdentificationValue') ?? textOf(part, 'PartNumber');
  const owner = (e: Tree | undefined): Tree | undefined =>
    e === undefined || e.name === 'Component' || e.name === 'PartUsage' ? e : owner(e.parent);
  const numberOf = (role: Tree | undefined): string => number(to(owner(role), 'Part')) ?? '';
  const mm = (e: Tree | undefined): number | null => {
    const text = textOf(e, 'ValueComponent');
    return text === undefined ? null : Number(text);
  };
  const colourOf = (element: Tree | undefined): string | null => {
    const insulation = to(to(element, 'WireElementSpecification'), 'InsulationSpecification');
    const codes = ['BaseColor', 'FirstIdentificationColor', 'SecondIdentificationColor'].map((c) => textOf(find(insulation, c), 'Key'));
    return codes.filter((c) => c !== undefined).join('/') || null;
  }; // prettier-ignore
  const lengthOf = (reference: Tree | undefined): number | null =>
    mm(find(find(reference, 'WireLength'), 'LengthValue'));
  const property = (e: Tree | undefined, name: string): string | undefined =>
    textOf(
      findAll(e, 'CustomProperty').find((p) => textOf(p, 'PropertyType') === name),
      'Value',
    );

  const bill = all.find((e) => e.type === 'PartStructureSpecification');
  const uses = refsOf(bill, 'InBillOfMaterial').flatMap((id) => {
    const piece = byId.get(id);
    const part = number(to(piece, 'Part'));
    if (part === undefined) return [];
    const wire = find(piece, 'Role', 'WireRole');
    const references = findAll(wire, 'WireElementReference');
    const protection = findAll(piece, 'Role').find((r) => find(r, 'WireProtectionSpecification'));
    if (protection?.type === 'TapeRole') return [];
    if (protection) {
      const takeUp = all.find((e) => e.type === 'GeneralTechnicalPartSpecification' && refsOf(e, 'DescribedPart')[0] === to(piece, 'Part')?.id);
      const run = mm(find(protection, 'ProtectionLength'));
      return { line: `${part} - m`, amount: run === null ? null : run * (1 + Number(property(takeUp, 'takeUp') ?? 0)) };
    } // prettier-ignore
    if (!wire) return { line: `${part} - pcs`, amount: 1 };
    const isCable = all.some((e) => e.name === 'SubWireElement' && e.parent === to(references[0], 'ReferencedWireElement'));
    const colour = isCable ? null : colourOf(to(references[0], 'ReferencedWireElement'));
    return { line: `${part} ${colour ?? '-'} m`, amount: lengthOf(references[0]) };
  }); // prettier-ignore

  const points = all.filter((e) => e.name === 'ContactPoint');
  const pointOf = new Map(
    points.flatMap((p) => findAll(p, 'WireMounting').flatMap((m) => refsOf(m, 'ReferencedWireEnd').map((id) => [id, { p, m }] as const))),
  ); // prettier-ignore
  const place = (end: Tree): string => {
    const found = pointOf.get(end.id ?? '');
    const terminal = to(found?.p, 'MountedTerminal');
    const cavity = to(find(found?.p, 'CavityMounting'), 'EquippedCavityRef');
    const seal = to(found?.m, 'MountedCavitySeal');
    if (cavity) {
      const isPin = owner(terminal) === owner(cavity);
      return [textOf(owner(cavity), 'Identification'), textOf(cavity, 'Identification'), isPin ? '' : numberOf(terminal), numberOf(seal)].join('|');
    } // prettier-ignore
    if (terminal?.type === 'SpliceTerminalRole') return [textOf(owner(terminal), 'Identification'), '', '', ''].join('|');
    const [connector, missing] = (property(end, 'cavity') ?? ':').split(':');
    return [property(end, 'text') ?? connector, missing, numberOf(terminal), ''].join('|');
  }; // prettier-ignore
  const routes = new Map(
    all.filter((e) => e.name === 'Routing').map((r) => [refsOf(r, 'RoutedElement')[0], r]),
  );
  const wires = all
    .filter((e) => e.name === 'WireElementReference' && find(e, 'WireEnd'))
    .map((e): ListedWire => {
      const ends = findAll(e, 'WireEnd');
      const path = refsOf(find(routes.get(e.id ?? ''), 'Path'), 'Segment');
      return {
        wire: textOf(e, 'Identification') ?? '',
        signal: textOf(to(e, 'Signal'), 'SignalName') ?? null,
        from: place(ends.find((x) => textOf(x, 'PositionOnWire') === '0') as Tree),
        to: place(ends.find((x) => textOf(x, 'PositionOnWire') === '1') as Tree),
        colour: property(e, 'colour') ?? colourOf(to(e, 'ReferencedWireElement')),
        lengthMm: lengthOf(e),
        path: path.map((id) => textOf(byId.get(id), 'Identification')).join(' ') || null,
      };
    });
  return { bill: billOf(uses), wires };
}
