import { ok, problem, type Result } from '../base/result';
import { compareNatural } from '../base/stable-order';
import { colourText, sameColour, type Colour } from '../model/colour';
import type { Part } from '../model/parts/part';
import type { WirePart } from '../model/parts/wire';
import { compareWireSize, wireSizeText } from '../model/wire-size';
import { findPart } from './find-part';
import type { FromToRow } from './from-to';

/** Wires that answer a row, best first; none when the row says nothing of the wire. */
export interface WireChoice {
  readonly candidates: readonly WirePart[];
  /** What whoever reads the wire must know of the choice. */
  readonly remark: string | undefined;
}

/**
 * The named part, else the wires of that size and colour, the thinnest insulation first. Wires whose colours are
 * not known come into question only where none is known to be had in the colour. Nothing is chosen without a size.
 */
export function wiresFor(
  row: FromToRow,
  catalogue: readonly Part[],
): Result<WireChoice, { field: 'wire_part' | 'size'; message: string }> {
  const { wire_part: number, size, colour } = row.values;
  if (number !== undefined) {
    const found = findPart(catalogue, number, ['wire']);
    if (!found.ok) return problem({ field: 'wire_part', message: found.problem });
    const wire = found.value;
    // Sizes of different systems are not compared: 20 AWG is neither 0.5 mm2 nor not.
    if (size && (compareWireSize(size, wire.size) ?? 0) !== 0)
      return problem({
        field: 'size',
        message: `${number} is ${wireSizeText(wire.size)}, not ${wireSizeText(size)}`,
      });
    const remark =
      colour && hasColour(wire, colour) === false
        ? `the record of ${number} does not list ${colourText(colour)}`
        : undefined;
    return ok({ candidates: [wire], remark });
  }
  if (!size) return ok({ candidates: [], remark: undefined });
  const ofSize = catalogue.filter(
    (p): p is WirePart => p.kind === 'wire' && compareWireSize(p.size, size) === 0,
  );
  const listed = colour ? ofSize.filter((w) => hasColour(w, colour) === true) : ofSize;
  const candidates =
    listed.length || !colour ? listed : ofSize.filter((w) => hasColour(w, colour) === undefined);
  const what = `${wireSizeText(size)}${colour ? ` in ${colourText(colour)}` : ''}`;
  if (candidates.length === 0)
    return problem({ field: 'size', message: `no catalogue has a wire of ${what}` });
  const remark =
    candidates.length > 1 ? `wire chosen on import among ${candidates.length} of ${what}` : undefined;
  return ok({ candidates: candidates.toSorted(compareWires), remark });
}

/** Undefined where the record does not say. */
const hasColour = (wire: WirePart, colour: Colour): boolean | undefined =>
  wire.colours?.some((c) => sameColour(c, colour));

const compareWires = (a: WirePart, b: WirePart): number =>
  (a.odMm ?? a.odMaxMm ?? Infinity) - (b.odMm ?? b.odMaxMm ?? Infinity) ||
  compareNatural(a.partNumber, b.partNumber) ||
  compareNatural(a.maker, b.maker);
