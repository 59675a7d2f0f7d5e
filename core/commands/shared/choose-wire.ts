import { colourText, type Colour } from '../../model/colour';
import type { Part } from '../../model/parts/part';
import type { WirePart } from '../../model/parts/wire';
import type { Project } from '../../model/project';
import { objectIn } from './draft-object';
import { contactFor, type WireTarget } from './wire-target';
import { wiresAt } from './wires-at';

/**
 * A wire that the contacts at both ends can take: the one used last in this project if it does, else the first such
 * of the project, else of the catalogue. Null where none fits.
 */
export function chooseWire(
  project: Project,
  targets: readonly WireTarget[],
  candidates: readonly Part[],
): WirePart | null {
  const last = objectIn(project, 'parts', project.wires.findLast((w) => w.part !== undefined)?.part ?? '');
  const wires = [last, ...candidates].filter((p): p is WirePart => p?.kind === 'wire');
  const inCavities = targets.filter((t) => t.at === 'cavity');
  return (
    wires.find((wire) => inCavities.every((t) => contactFor(project, t, [wire], candidates) !== null)) ??
    (inCavities.length === 0 ? (wires[0] ?? null) : null)
  );
}

/** A colour of the wire that neither connector has yet, else its first colour. */
export function chooseColour(
  project: Project,
  wire: WirePart,
  targets: readonly WireTarget[],
): Colour | undefined {
  const connectors = new Set(targets.flatMap((t) => (t.at === 'cavity' ? [t.connector] : [])));
  const used = new Set(wiresAt(project, connectors).flatMap((w) => (w.colour ? colourText(w.colour) : [])));
  return (
    wire.colours?.find((c) => c.base !== 'GNYE' && !used.has(colourText(c))) ??
    wire.colours?.find((c) => c.base !== 'GNYE')
  );
}
