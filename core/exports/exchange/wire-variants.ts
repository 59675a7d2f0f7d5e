import { memoByIdentity } from '../../base/memo-by-identity';
import type { Harness, ResolvedWire } from '../../derive/harness';
import { colourText, sameColour, type Colour } from '../../model/colour';
import type { WirePart } from '../../model/parts/wire';

/** A wire record in one colour: in VEC and KBL the colour belongs to the part, here to the wire. */
export interface WireVariant {
  /** Part id and colour code. */
  readonly key: string;
  /** Undefined where no wire part was chosen. */
  readonly part: WirePart | undefined;
  readonly colour: Colour | undefined;
  /**
   * The number of the record; with the colour code behind a blank where the record stands for several colours, since one
   * part number may not mean two parts.
   */
  readonly partNumber: string;
}

/** The variant that a wire is cut from; undefined for the core of a cable. */
export function wireVariantOf(wire: ResolvedWire): WireVariant | undefined {
  if (wire.wire.core) return undefined;
  return variant(wire.part?.kind === 'wire' ? wire.part : undefined, wire.wire.colour);
}

/** Every wire record of the project in the colours that are used of it, or once if none is; then wires without a record. */
export const wireVariants: (harness: Harness) => readonly WireVariant[] = memoByIdentity(
  (harness: Harness) => {
    const used = new Map<string, WireVariant>();
    for (const wire of harness.wires) {
      const v = wireVariantOf(wire);
      if (v) used.set(v.key, v);
    }
    const byPart = (id: string | undefined): WireVariant[] =>
      [...used.values()].filter((v) => v.part?.id === id).sort((a, b) => (a.key < b.key ? -1 : 1));
    const chosen = harness.project.parts.flatMap((part) => {
      if (part.kind !== 'wire') return [];
      const found = byPart(part.id);
      return found.length > 0 ? found : [variant(part, onlyColourOf(part))];
    });
    return [...chosen, ...byPart(undefined)];
  },
);

const onlyColourOf = (part: WirePart): Colour | undefined =>
  part.colours?.length === 1 ? part.colours[0] : undefined;

function variant(part: WirePart | undefined, colour: Colour | undefined): WireVariant {
  const code = colour ? colourText(colour) : '';
  const number = part?.partNumber ?? '/NULL';
  const isNumberOfColour = !part || !colour || sameColour(onlyColourOf(part), colour);
  return {
    key: [part?.id ?? 'no-wire', code].filter((k) => k !== '').join(' '),
    part,
    colour,
    partNumber: isNumberOfColour ? number : `${number} ${code}`,
  };
}
