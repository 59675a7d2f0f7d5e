import { memoByIdentity } from '../base/memo-by-identity';
import type { Box, Point } from '../base/point';
import type { Connector } from '../model/connector';
import type { MatingHalf } from '../model/parts/part';
import { cavityLayoutOf } from './cavity-layout';

/** Sheet millimetres between neighbouring cavities of a symbol, whatever the pitch of the part. */
export const SYMBOL_PITCH_MM = 6;
export const TITLE_HEIGHT_MM = 7;
export const CAVITY_RADIUS_MM = 2;
const MARGIN_MM = 3;

/** A cavity on the symbol, relative to the symbol's top left corner (mm). */
export interface SymbolCavity {
  readonly cavity: string;
  readonly x: number;
  readonly y: number;
  /** Side towards which its wire leaves: -1 left, 1 right. */
  readonly side: -1 | 1;
}

/**
 * A connector as drawn on the diagram. The columns of the mating face run down the sheet, its rows side by side, so
 * that wires leave to the left and right. The wire-entry view is the mirror image: columns run up.
 */
export interface ConnectorSymbol {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly cavities: readonly SymbolCavity[];
  readonly byCavity: ReadonlyMap<string, SymbolCavity>;
}

type Look = Pick<Connector, 'exit' | 'view'>;

const symbolsOf = memoByIdentity((half: MatingHalf) => {
  const made = new Map<string, ConnectorSymbol>();
  return (look: Look): ConnectorSymbol => {
    const key = `${look.exit} ${look.view}`;
    let symbol = made.get(key);
    if (!symbol) made.set(key, (symbol = build(half, look)));
    return symbol;
  };
});

const UNKNOWN: ConnectorSymbol = { widthMm: 24, heightMm: 20, cavities: [], byCavity: new Map() };

/** The symbol of a connector; a plain box when its part is not known. */
export const symbolOf = (half: MatingHalf | undefined, look: Look): ConnectorSymbol =>
  half ? symbolsOf(half)(look) : UNKNOWN;

function build(half: MatingHalf, { exit, view }: Look): ConnectorSymbol {
  const layout = cavityLayoutOf(half);
  const widthMm = layout.rows === 1 ? 24 : 32 + Math.max(0, layout.rows - 2) * SYMBOL_PITCH_MM;
  const edge = MARGIN_MM + CAVITY_RADIUS_MM - 0.5;
  const cavities = layout.places.map((p): SymbolCavity => {
    const down = view === 'mating-face' ? p.column : layout.columns - 1 - p.column;
    const y = TITLE_HEIGHT_MM + MARGIN_MM + SYMBOL_PITCH_MM * (down + 0.5) - 1;
    // Seen with the exit to the left, the symbol is turned round: the first row lies at the other edge.
    const across = exit === 'right' ? layout.rows - 1 - p.row : p.row;
    const right = layout.rows === 1 ? exit === 'right' : across >= layout.rows / 2;
    const inner = right ? layout.rows - 1 - across : across;
    const x = right ? widthMm - edge - inner * SYMBOL_PITCH_MM : edge + inner * SYMBOL_PITCH_MM;
    return { cavity: p.cavity, x, y, side: right ? 1 : -1 };
  });
  const heightMm = TITLE_HEIGHT_MM + 2 * MARGIN_MM + SYMBOL_PITCH_MM * layout.columns - 1;
  return { widthMm, heightMm, cavities, byCavity: new Map(cavities.map((c) => [c.cavity, c])) };
}

/** The symbol's box on the sheet. */
export function symbolBox(connector: Connector, half: MatingHalf | undefined): Box {
  const s = symbolOf(half, connector);
  const { x, y } = connector.position;
  return { minX: x, minY: y, maxX: x + s.widthMm, maxY: y + s.heightMm };
}

/** Where a wire meets a cavity on the sheet; the middle of the symbol for a cavity that does not exist. */
export function cavityPoint(
  connector: Connector,
  half: MatingHalf | undefined,
  cavity: string,
): { readonly at: Point; readonly side: -1 | 1 } {
  const s = symbolOf(half, connector);
  const c = s.byCavity.get(cavity);
  const { x, y } = connector.position;
  if (!c)
    return { at: { x: x + s.widthMm / 2, y: y + s.heightMm / 2 }, side: connector.exit === 'right' ? 1 : -1 };
  return { at: { x: x + c.x, y: y + c.y }, side: c.side };
}
