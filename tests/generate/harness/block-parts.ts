import { idFromText } from '@latchwork/core/model/ids';
import { partOfKind, type Part, type PartKind } from '@latchwork/core/model/parts/part';
import { workbenchParts } from '../catalogue/catalogue';

/** The parts of one kind of block: header, both harness halves, the half of the device, contacts, wire. */
export interface BlockParts {
  readonly ways: number;
  readonly header: Part;
  readonly sockets: Part;
  readonly pins: Part;
  readonly socketLock: Part;
  readonly pinLock: Part;
  readonly socket: Extract<Part, { kind: 'contact' }>;
  readonly pin: Extract<Part, { kind: 'contact' }>;
  readonly wire: Extract<Part, { kind: 'wire' }>;
  /** Height and width of the symbol on the diagram, mm. */
  readonly heightMm: number;
}

function part<K extends PartKind>(kind: K, partNumber: string): Extract<Part, { kind: K }> {
  const found = partOfKind(
    workbenchParts().find((p) => p.partNumber === partNumber),
    kind,
  );
  if (!found) throw new Error(`No ${kind} ${partNumber} in the workbench catalogue`);
  return found;
}

const kindOf = (
  code: string,
  key: string,
  ways: number,
  band: string,
  wire: string,
  columns: number,
): BlockParts => ({
  ways,
  header: part('header', `${code}-${ways}-HV-${key}`),
  sockets: part('housing', `${code}-${ways}-FS-${key}`),
  pins: part('housing', `${code}-${ways}-FP-${key}`),
  socketLock: part('secondary-lock', `${code}-${ways}-LS`),
  pinLock: part('secondary-lock', `${code}-${ways}-LP`),
  socket: part('contact', `${code}-S${band}-01`),
  pin: part('contact', `${code}-P${band}-01`),
  wire: part('wire', wire),
  heightMm: 12 + 6 * columns,
});

/** Ten ways in one row, twelve in two. */
export const blockKinds = (): readonly BlockParts[] => [
  kindOf('BI2', 'A', 10, '2630', 'TW-26-095', 10),
  kindOf('AL3', 'A', 12, '2024', 'TW-22-120', 6),
  kindOf('AL3', 'B', 12, '2024', 'TW-24-105', 6),
];

export const blockPartRecords = (kinds: readonly BlockParts[]): Part[] => [
  ...new Set(kinds.flatMap((k) => [k.socketLock, k.pinLock, k.socket, k.pin, k.wire])),
];

/** Gives a half a key of its own. Each record is made once, and put among the parts given. */
export type Keying = (half: Part, key: string) => Part;

export function createKeying(parts: Part[]): Keying {
  const made = new Map<string, Part>();
  return (half, keying) => {
    const partNumber = `${half.partNumber}-${keying}`;
    let part = made.get(partNumber);
    if (!part) {
      part = { ...half, id: idFromText(partNumber), partNumber, keying } as Part;
      made.set(partNumber, part);
      parts.push(part);
    }
    return part;
  };
}
