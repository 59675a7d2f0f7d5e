import type { Harness, ResolvedWire } from '../../derive/harness';
import { colourText } from '../../model/colour';
import { wireRef } from '../../rules/refs';
import type { PartLines } from './part-lines';

/** Wires by part and colour, cables by part, in millimetres of cut length; terminals of free ends by piece. */
export function countWires(harness: Harness, lines: PartLines): void {
  const coresOf = new Map<string, ResolvedWire[]>();
  for (const w of harness.wires) {
    countTerminals(harness, w, lines);
    const cable = w.wire.core?.cable;
    if (cable === undefined) countWire(w, lines);
    else coresOf.set(cable, [...(coresOf.get(cable) ?? []), w]);
  }
  countCables(harness, coresOf, lines);
}

function countWire(w: ResolvedWire, lines: PartLines): void {
  const colour = w.wire.colour ? colourText(w.wire.colour) : '';
  const part = w.part?.kind === 'wire' ? w.part : undefined;
  lines.add(
    { kind: 'wire', part, colour, supply: 'harness', unit: 'm' },
    {
      amount: w.length.cutMm,
      designator: w.wire.designator,
      object: wireRef(w),
      remark: w.length.cutMm !== undefined && w.length.needs.length ? lacks(w.length.needs) : undefined,
    },
  );
}

const lacks = (needs: readonly string[]): string => `cut length without ${[...new Set(needs)].join(', ')}`;

/** A cable is cut as one piece: as long as its longest core, and not known while one core is not. */
function countCables(
  harness: Harness,
  coresOf: ReadonlyMap<string, readonly ResolvedWire[]>,
  lines: PartLines,
): void {
  for (const cable of harness.project.cables) {
    const cores = coresOf.get(cable.id) ?? [];
    const lengths = cores.flatMap((w) => (w.length.cutMm === undefined ? [] : [w.length.cutMm]));
    const known = cores.length > 0 && lengths.length === cores.length;
    const first = cores[0];
    lines.add(
      { kind: 'cable', part: harness.parts.get(cable.part), colour: null, supply: 'harness', unit: 'm' },
      {
        amount: known ? Math.max(...lengths) : undefined,
        designator: cable.designator,
        object: first ? wireRef(first) : { type: 'part', id: cable.part },
        remark: cores.length === 0 ? 'no core is connected' : undefined,
      },
    );
  }
}

function countTerminals(harness: Harness, w: ResolvedWire, lines: PartLines): void {
  for (const { end } of [w.from, w.to]) {
    if (end.at !== 'free' || !end.terminal) continue;
    lines.add(
      {
        kind: 'terminal',
        part: harness.parts.get(end.terminal),
        colour: null,
        supply: 'harness',
        unit: 'pcs',
      },
      { amount: 1, designator: w.wire.designator, object: wireRef(w) },
    );
  }
}
