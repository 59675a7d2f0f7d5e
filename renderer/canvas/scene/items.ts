import type { Box } from '@latchwork/core/base/point';
import type { ConnectorUse, ResolvedMate, ResolvedWire } from '@latchwork/core/derive/harness';
import type { ConnectorSymbol } from '@latchwork/core/derive/symbol';
import type { Equipment } from '@latchwork/core/model/equipment';
import type { Splice } from '@latchwork/core/model/wire';
import type { Curve } from './curve';
import type { Mouth } from './ribbon';
import type { WireStyle } from './wire-style';

/** Things on the diagram, ready to be drawn and hit. Boxes are in sheet millimetres. */
export interface ConnectorItem extends Box {
  readonly is: 'connector';
  readonly id: string;
  readonly use: ConnectorUse;
  readonly symbol: ConnectorSymbol;
}

export interface WireItem extends Box {
  readonly is: 'wire';
  readonly id: string;
  readonly wire: ResolvedWire;
  readonly curve: Curve;
  readonly style: WireStyle;
  readonly mouths: readonly [Mouth, Mouth];
  /** Place in its ribbon, 0 to 1. */
  readonly lane: number;
}

export interface SpliceItem extends Box {
  readonly is: 'splice';
  readonly id: string;
  readonly splice: Splice;
}

export interface MateItem extends Box {
  readonly is: 'mate';
  readonly id: string;
  readonly mate: ResolvedMate;
  readonly curve: Curve;
}

export interface AreaItem extends Box {
  readonly is: 'area';
  readonly id: string;
  readonly equipment: Equipment;
}

export type Item = ConnectorItem | WireItem | SpliceItem | MateItem | AreaItem;
