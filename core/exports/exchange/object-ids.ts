import { xmlId } from './xml-id';

/** Ids of the elements that stand for objects of the project. One letter a collection, since ids are unique in theirs only. */
export const pieceIds = {
  connector: (id: string) => xmlId('X', id),
  accessory: (key: readonly string[]) => xmlId('A', ...key),
  contact: (id: string) => xmlId('C', id),
  plug: (key: readonly string[]) => xmlId('Q', ...key),
  seal: (key: readonly string[]) => xmlId('E', ...key),
  terminal: (wire: string, index: number) => xmlId('T', wire, String(index)),
  wire: (id: string) => xmlId('W', id),
  cable: (id: string) => xmlId('K', id),
  splice: (id: string) => xmlId('S', id),
  covering: (id: string) => xmlId('V', id),
  tie: (id: string) => xmlId('B', id),
  fixing: (id: string) => xmlId('F', id),
  label: (id: string) => xmlId('L', id),
  fuse: (id: string) => xmlId('U', id),
} as const;

export const nodeId = (id: string): string => xmlId('N', id);
export const segmentId = (id: string): string => xmlId('G', id);
export const signalId = (id: string): string => xmlId('Y', id);

/** Within a placed connector. */
export const slotRefId = (connector: string): string => xmlId('X', connector, 'slot');
export const cavityRefId = (connector: string, cavity: string): string =>
  xmlId('X', connector, 'cavity', cavity);
export const pinRoleId = (connector: string, cavity: string): string => xmlId('X', connector, 'pin', cavity);
export const housingRoleId = (connector: string): string => xmlId('X', connector, 'housing');
export const componentConnectorId = (connector: string): string => xmlId('X', connector, 'logical');
export const portId = (connector: string, cavity: string): string => xmlId('X', connector, 'port', cavity);

/** The conductor of a wire, or of a core, and its ends. */
export const conductorId = (wire: string): string => xmlId('W', wire, 'conductor');
export const wireEndId = (wire: string, index: number): string => xmlId('W', wire, 'end', String(index));
export const openPortId = (wire: string, index: number): string => xmlId('W', wire, 'port', String(index));

export const connectionId = (netKey: string): string => xmlId('Net', netKey);
export const connectionEndId = (netKey: string, port: string): string => `${xmlId('Net', netKey)}_${port}`;
export const placementId = (piece: string): string => `${piece}_placed`;
export const locationId = (piece: string, which = 'at'): string => `${piece}_${which}`;
