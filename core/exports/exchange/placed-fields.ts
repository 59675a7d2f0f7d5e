/**
 * Fields of the project's objects that both formats hold in elements, in references or by where an element stands. A field
 * that is not here is written as text under its own name.
 */
export const PLACED_OF_CONNECTOR: ReadonlySet<string> = new Set([
  'id', 'designator', 'part', 'equipment', 'supply', 'node', 'cavities', 'accessories', 'description', 'note',
  // How it is drawn on the diagram says nothing of the harness.
  'position', 'exit', 'view',
]); // prettier-ignore

export const PLACED_OF_CAVITY: ReadonlySet<string> = new Set([
  'cavity',
  'state',
  'contact',
  'plug',
  'signal',
]);

export const PLACED_OF_WIRE_OBJECT: ReadonlySet<string> = new Set([
  'id', 'designator', 'part', 'core', 'colour', 'signal', 'ends', 'lengthMm', 'path', 'note',
]); // prettier-ignore

export const PLACED_OF_WIRE_END: ReadonlySet<string> = new Set([
  'at', 'connector', 'cavity', 'contact', 'seal', 'splice', 'terminal', 'node', 'stripLengthMm',
  // Where it is drawn on the diagram.
  'position',
]); // prettier-ignore

export const PLACED_OF_CABLE_OBJECT: ReadonlySet<string> = new Set(['id', 'designator', 'part', 'note']);
export const PLACED_OF_SPLICE_OBJECT: ReadonlySet<string> = new Set([
  'id', 'designator', 'part', 'position', 'node',
]); // prettier-ignore
export const PLACED_OF_GROUP: ReadonlySet<string> = new Set(['id', 'designator', 'wires', 'layMm']);
export const PLACED_OF_FUSE: ReadonlySet<string> = new Set(['id', 'designator', 'part', 'wire']);
export const PLACED_OF_COVERING: ReadonlySet<string> = new Set(['id', 'designator', 'part', 'from', 'to']);
export const PLACED_OF_TIE: ReadonlySet<string> = new Set(['id', 'part', 'station']);
export const PLACED_OF_FIXING: ReadonlySet<string> = new Set(['id', 'designator', 'part', 'station']);
export const PLACED_OF_LABEL: ReadonlySet<string> = new Set(['id', 'part', 'text', 'on']);
export const PLACED_OF_NODE: ReadonlySet<string> = new Set(['id', 'designator', 'position']);
export const PLACED_OF_SEGMENT: ReadonlySet<string> = new Set([
  'id', 'designator', 'from', 'to', 'lengthMm', 'plusMm', 'minusMm', 'via',
]); // prettier-ignore
export const PLACED_OF_SIGNAL: ReadonlySet<string> = new Set(['id', 'name']);
export const PLACED_OF_DIMENSION: ReadonlySet<string> = new Set([
  'id', 'datums', 'plusMm', 'minusMm',
  // How far off the dimension line is drawn.
  'offsetMm',
]); // prettier-ignore
