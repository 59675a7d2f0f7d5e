import { sleeveLength } from '@latchwork/core/calc/sleeve-length';
import { tapeLength } from '@latchwork/core/calc/tape-length';
import type { Harness } from '@latchwork/core/derive/harness';
import { needsOf, openFigure, workedFigure, type WorkedFigure } from '@latchwork/core/derive/worked-figure';
import { wrappedDiameterMm } from '@latchwork/core/derive/wrapped-diameter';
import { coveringRunMm } from '@latchwork/core/exports/parts/covering-length';
import type { Part } from '@latchwork/core/model/parts/part';
import type { Covering } from '@latchwork/core/model/topology';

/** How much of a covering is needed: tape by its helix, everything else by the run and what it loses in length. */
export function coveringFigures(
  harness: Harness,
  covering: Covering,
  part: Extract<Part, { kind: 'covering' }>,
): readonly WorkedFigure[] {
  const head = { key: 'length', label: part.form === 'tape' ? 'Tape' : 'Length to cut', unit: 'mm' };
  const lengthMm = coveringRunMm(harness, covering);
  if (lengthMm === undefined) return [openFigure(head, ['segments that join its two stations'])];
  if (part.form !== 'tape') {
    const result = sleeveLength.run({ lengthMm, takeUp: part.takeUp ?? 0, endsMm: 0 });
    if (!result.ok) return [openFigure(head, needsOf(result.problem))];
    const mark = part.takeUp === undefined ? 'take-up not known' : undefined;
    return [workedFigure(head, result.value.sleeveMm, result.value.working, mark)];
  }
  const diameterMm = wrappedDiameterMm(harness, covering);
  const { tapeWidthMm: widthMm, partNumber } = part;
  if (diameterMm === undefined || widthMm === undefined)
    return [
      openFigure(head, [
        ...(diameterMm === undefined ? ['the diameter of the bundle'] : []),
        ...(widthMm === undefined ? [`tape width of ${partNumber}`] : []),
      ]),
    ];
  const input = tapeLength.inputs.safeParse({ diameterMm, lengthMm, widthMm, overlap: part.tapeOverlap });
  const result = input.success ? tapeLength.run(input.data) : undefined;
  if (!result?.ok) return [openFigure(head, result ? needsOf(result.problem) : ['a covered length'])];
  return [workedFigure(head, result.value.tapeMm, result.value.working)];
}
