import { byId } from '../base/by-id';
import { inBox, type Point } from '../base/point';
import type { Call } from '../commands/dispatch';
import { symbolOf } from '../derive/symbol';
import type { Equipment } from '../model/equipment';
import { PART_KIND_NAMES, type MatingHalf, type Part } from '../model/parts/part';
import { dropOnRun } from './formboard/drop-on-run';
import { snapped } from './snap';
import type { Facts, Target } from './tool';

export type Drop = { readonly call: Call } | { readonly refuse: string };

/** What it means to drop a part at a place on the sheet: the one command for it, or why there is none. */
export function dropPart(part: Part, at: Point, target: Target, facts: Omit<Facts, 'inBox'>): Drop {
  const connector = target.on === 'connector' ? target.id : target.on === 'cavity' ? target.connector : null;
  switch (part.kind) {
    case 'housing':
    case 'header':
      return { call: placeConnector(part, at, facts) };
    case 'splice':
      return { call: { id: 'splice.add', args: { part, position: snapped(at, facts.snap) } } };
    case 'cable':
      return { call: { id: 'cable.add', args: { part } } };
    case 'wire': {
      const id = target.on === 'wire' ? target.id : target.on === 'wire-end' ? target.wire : null;
      if (id === null) return { refuse: 'Drop it on a wire. A new wire is drawn from cavity to cavity.' };
      const wires = byId(facts.project.wires);
      const ids = facts.selection.has(id) ? [...facts.selection].filter((k) => wires.has(k)) : [id];
      return { call: { id: 'wire.set-part', args: { ids, part } } };
    }
    case 'contact':
      return target.on === 'cavity'
        ? contactIn(part, target, facts)
        : { refuse: 'Drop a contact on a cavity (zoom in until cavities show).' };
    case 'cavity-plug':
      if (target.on !== 'cavity') return { refuse: 'Drop a cavity plug on a cavity.' };
      return {
        call: {
          id: 'cavity.set-state',
          args: { connector: target.connector, cavities: [target.cavity], state: 'plugged', part },
        },
      };
    case 'covering':
    case 'tie':
    case 'clamp':
    case 'grommet':
      return dropOnRun(part, target, facts);
    case 'label':
      return label(part, target, connector, facts);
    case 'secondary-lock':
    case 'strain-relief':
      return connector
        ? { call: { id: 'connector.add-accessory', args: { id: connector, part } } }
        : { refuse: `Drop a ${PART_KIND_NAMES[part.kind]} on a connector.` };
    default:
      return { refuse: `A ${PART_KIND_NAMES[part.kind]} has no place on the sheet.` };
  }
}

/** A board part belongs to the board under it, a panel part to the panel, any part to the device. */
export function carrierAt(
  part: MatingHalf,
  at: Point,
  equipment: readonly Equipment[],
): Equipment | undefined {
  return equipment.findLast(
    (e) =>
      inBox(at, {
        minX: e.position.x,
        minY: e.position.y,
        maxX: e.position.x + e.widthMm,
        maxY: e.position.y + e.heightMm,
      }) &&
      (e.kind === 'device' || e.kind === part.mounting),
  );
}

/** The middle of the symbol comes to lie under the pointer, turned so that wires leave the area it stands in. */
function placeConnector(part: MatingHalf, at: Point, facts: Pick<Facts, 'project' | 'snap'>): Call {
  const carrier = carrierAt(part, at, facts.project.equipment);
  const exit =
    carrier && at.x < carrier.position.x + carrier.widthMm / 2 ? ('left' as const) : ('right' as const);
  const { widthMm, heightMm } = symbolOf(part, { exit, view: 'mating-face' });
  const position = snapped({ x: at.x - widthMm / 2, y: at.y - heightMm / 2 }, facts.snap);
  return {
    id: 'connector.place',
    args: { part, position, exit, ...(carrier ? { equipment: carrier.id } : {}) },
  };
}

function contactIn(
  part: Extract<Part, { kind: 'contact' }>,
  target: Extract<Target, { on: 'cavity' }>,
  { project }: Pick<Facts, 'project'>,
): Drop {
  for (const wire of project.wires)
    for (const end of [0, 1] as const) {
      const e = wire.ends[end];
      if (e.at === 'cavity' && e.connector === target.connector && e.cavity === target.cavity)
        return { call: { id: 'contact.set', args: { wire: wire.id, end, part } } };
    }
  const { connector, cavity } = target;
  return {
    call: { id: 'cavity.set-state', args: { connector, cavities: [cavity], state: 'spare-contact', part } },
  };
}

function label(
  part: Extract<Part, { kind: 'label' }>,
  target: Target,
  connector: string | null,
  facts: Omit<Facts, 'inBox'>,
): Drop {
  const { project } = facts;
  if (target.on === 'segment') return dropOnRun(part, target, facts);
  if (target.on === 'turning') return label(part, { on: 'connector', id: target.id }, target.id, facts);
  if (connector) {
    const text = byId(project.connectors).get(connector)?.designator ?? 'X';
    return { call: { id: 'label.add', args: { part, text, on: { at: 'connector', connector } } } };
  }
  if (target.on === 'wire-end') {
    const text = byId(project.wires).get(target.wire)?.designator ?? 'W';
    const on = { at: 'wire-end' as const, wire: target.wire, end: target.end };
    return { call: { id: 'label.add', args: { part, text, on } } };
  }
  return {
    refuse: 'Drop a label on a connector, on a run of the formboard, or on an end of a selected wire.',
  };
}
