import type { Colour } from '@latchwork/core/model/colour';
import type { Connector } from '@latchwork/core/model/connector';
import type { Signal } from '@latchwork/core/model/electrical';
import type { NewId } from '@latchwork/core/model/ids';
import type { Project } from '@latchwork/core/model/project';
import type { Part } from '@latchwork/core/model/parts/part';
import type { BlockParts, Keying } from './block-parts';
import { between } from './random';

/** Halves on each side of a block. */
export const ROWS = 8;
const ROW_MM = 90;
export const BLOCK_WIDTH_MM = 520;
export const BLOCK_HEIGHT_MM = ROWS * ROW_MM + 60;

export interface BlockArgs {
  readonly project: Project;
  readonly newId: NewId;
  readonly random: () => number;
  readonly parts: BlockParts;
  readonly keyed: Keying;
  /** Of the block, in the order of the trunk. */
  readonly number: number;
  readonly origin: { readonly x: number; readonly y: number };
  /** Wires still to be drawn; a block draws at most ROWS times its ways. */
  readonly wires: number;
  /** Formboard nodes at which the two sides of the block branch off. */
  readonly nearTrunk: string;
  readonly farTrunk: string;
}

const SUPPLY: readonly Partial<Signal>[] = [
  { class: 'power', voltageV: 12, currentA: 0.3, sourceLimitA: 0.5 },
  { class: 'return', voltageV: 0, currentA: 0.3 },
];

interface Row {
  readonly header: Connector;
  readonly near: Connector;
  readonly far: Connector;
  readonly device: Connector;
}

/**
 * A board on the left, a device on the right, a harness half at each of their connectors. Wire k of a half goes to
 * position k of one of the halves opposite, shifted by as many rows as chance says for k: each position is met once,
 * and a colour stands for one net in every connector. Gives the number of wires drawn.
 */
export function addBlock(args: BlockArgs): number {
  const { project, newId, parts, random } = args;
  const count = Math.min(args.wires, ROWS * parts.ways);
  const rowCount = Math.ceil(count / parts.ways);
  const equipment = addEquipment(args);
  const rows = Array.from({ length: rowCount }, (_, r) => addRow(args, r, equipment));
  const shifts = Array.from({ length: parts.ways }, () => between(random, 0, rowCount));
  // The first two positions of a half are a supply and its return, which stay beside each other.
  shifts[1] = shifts[0] as number;
  const colours = parts.wire.colours ?? [];

  let drawn = 0;
  for (let r = 0; r < rowCount; r++) {
    for (let k = 0; k < parts.ways; k++) {
      const near = rows[r] as Row;
      // The last row may be filled in part: then its positions stay with it, so that both sides have the same ones.
      const shift = count % parts.ways === 0 ? (shifts[k] as number) : 0;
      const far = rows[(r + shift) % rowCount] as Row;
      if (drawn < count) {
        const before = project.signals.at(-1);
        const kind = k < 2 && count - drawn > 1 - k ? SUPPLY[k] : undefined;
        addWire(args, near, far, String(k + 1), colours[k] as Colour, kind);
        if (k === 1 && before) before.returnsOn = (project.signals.at(-1) as Signal).id;
      } else
        for (const c of [near.near, near.far]) c.cavities.push({ cavity: String(k + 1), state: 'empty' });
      if (drawn < count) drawn++;
    }
  }
  if (count >= 2) {
    const pair = project.wires.slice(-2).map((w) => w.id);
    project.groups.push({
      id: newId(),
      designator: `WG${project.groups.length + 1}`,
      form: 'twisted',
      wires: pair,
      layMm: 25,
    });
  }
  return count;
}

function addEquipment({ project, newId, origin }: BlockArgs): { board: string; device: string } {
  const n = project.equipment.length;
  const board = newId();
  const device = newId();
  const size = { widthMm: 70, heightMm: BLOCK_HEIGHT_MM - 40 };
  project.equipment.push(
    {
      kind: 'board',
      id: board,
      designator: `A${n + 1}`,
      position: { x: origin.x, y: origin.y },
      ...size,
      thicknessMm: 1.6,
      solderProcess: { process: 'wave', peakC: 255, timeS: 4 },
    },
    {
      kind: 'device',
      id: device,
      designator: `A${n + 2}`,
      position: { x: origin.x + 400, y: origin.y },
      ...size,
    },
  );
  return { board, device };
}

function addRow(args: BlockArgs, r: number, equipment: { board: string; device: string }): Row {
  const { project, newId, parts, origin } = args;
  // Keys that no other row within reach has: neighbours cannot be exchanged.
  const near = (half: Part): string => args.keyed(half, `N${args.number % 2}${r}`).id;
  const far = (half: Part): string => args.keyed(half, `F${args.number % 4}${r}`).id;
  const y = origin.y + 20 + r * ROW_MM;
  const place = (x: number, part: string, more: Partial<Connector>): Connector => {
    const connector: Connector = {
      id: newId(),
      designator: `X${project.connectors.length + 1}`,
      part,
      position: { x: origin.x + x, y },
      exit: 'right',
      view: 'mating-face',
      supply: 'harness',
      cavities: [],
      accessories: [],
      ...more,
    };
    project.connectors.push(connector);
    return connector;
  };
  const lock = (part: string): Connector['accessories'] => [{ id: newId(), part, quantity: 1 }];
  const row: Row = {
    header: place(25, near(parts.header), { equipment: equipment.board, supply: 'equipment' }),
    near: place(90, near(parts.sockets), {
      accessories: lock(parts.socketLock.id),
      node: addBranch(args, args.nearTrunk, r, -1),
    }),
    far: place(340, far(parts.pins), {
      accessories: lock(parts.pinLock.id),
      exit: 'left',
      view: 'wire-entry-face',
      node: addBranch(args, args.farTrunk, r, 1),
    }),
    device: place(410, far(parts.sockets), {
      equipment: equipment.device,
      supply: 'equipment',
      accessories: lock(parts.socketLock.id),
    }),
  };
  project.mates.push(
    { id: newId(), a: row.near.id, b: row.header.id },
    { id: newId(), a: row.far.id, b: row.device.id },
  );
  return row;
}

/** A branch from the trunk to a half: up for the near side, down for the far one, each of its own length. */
function addBranch({ project, newId, random }: BlockArgs, trunk: string, r: number, side: 1 | -1): string {
  const from = project.nodes.find((n) => n.id === trunk);
  const node = newId();
  project.nodes.push({
    id: node,
    designator: `N${project.nodes.length + 1}`,
    position: {
      x: (from?.position.x ?? 0) + (r - ROWS / 2) * 30,
      y: (from?.position.y ?? 0) + side * (80 + between(random, 0, 120)),
    },
  });
  project.segments.push({
    id: newId(),
    designator: `S${project.segments.length + 1}`,
    from: trunk,
    to: node,
  });
  return node;
}

function addWire(
  { project, newId, parts }: BlockArgs,
  near: Row,
  far: Row,
  cavity: string,
  colour: Colour,
  kind: Partial<Signal> = {},
): void {
  const n = project.wires.length + 1;
  const signal = newId();
  project.signals.push({
    id: signal,
    name: `SIG${n}`,
    class: 'signal',
    voltageV: 5,
    currentA: 0.1,
    source: { connector: near.header.id, cavity },
    ...kind,
  });
  near.header.cavities.push({ cavity, signal });
  far.device.cavities.push({ cavity, signal });
  const socket = { id: newId(), part: parts.socket.id };
  const pin = { id: newId(), part: parts.pin.id };
  project.contacts.push(socket, pin);
  const strip = (mm: number | undefined) => (mm === undefined ? {} : { stripLengthMm: mm });
  project.wires.push({
    id: newId(),
    designator: `W${n}`,
    part: parts.wire.id,
    colour,
    signal,
    ends: [
      {
        at: 'cavity',
        connector: near.near.id,
        cavity,
        contact: socket.id,
        ...strip(parts.socket.stripLengthMm),
      },
      { at: 'cavity', connector: far.far.id, cavity, contact: pin.id, ...strip(parts.pin.stripLengthMm) },
    ],
  });
}
