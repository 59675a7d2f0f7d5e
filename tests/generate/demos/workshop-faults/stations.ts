import type { DemoBuilder } from '../builder';

/** Six wires from a header of the test board to a device: four halves in a row. Far halves are seen from the wire. */
export interface Station {
  /** Number of the header; the three halves after it follow. */
  readonly first: number;
  readonly key: string;
  readonly y: number;
  /** Device at the far end. */
  readonly equipment: string;
  /** Part numbers of header and halves, where they are not of six ways of Alder. */
  readonly family?: readonly [code: string, header: string];
}

export function addStation(demo: DemoBuilder, station: Station): void {
  const { first, key, y, equipment, family: [code, header] = ['AL3', 'HA'] } = station;
  const x = (n: number): string => `X${first + n}`;
  demo.connector(x(0), `${code}-06-${header}-${key}`, [50, y], { equipment: 'A1' });
  demo.connector(x(1), `${code}-06-FS-${key}`, [105, y]);
  demo.connector(x(2), `${code}-06-FP-${key}`, [270, y], { exit: 'left', view: 'wire-entry-face' });
  demo.connector(x(3), `${code}-06-FS-${key}`, [335, y], { equipment, supply: 'equipment' });
  demo.mate(x(1), x(0));
  demo.mate(x(2), x(3));
}

/** A harness half with nothing in it, all cavities empty by intent, plugged onto another whether it fits or not. */
export function addPair(
  demo: DemoBuilder,
  fixed: { readonly designator: string; readonly part: string; readonly equipment?: string },
  half: {
    readonly designator: string;
    readonly part: string;
    readonly ways: number;
    readonly locked?: boolean;
  },
  y: number,
  x = 50,
): void {
  demo.connector(fixed.designator, fixed.part, [x, y], fixed.equipment ? { equipment: fixed.equipment } : {});
  demo.connector(half.designator, half.part, [x + 55, y], half.locked === false ? { locked: false } : {});
  empty(demo, half.designator, half.ways);
  demo.do({
    id: 'mate.add',
    args: {
      a: demo.id('connectors', half.designator),
      b: demo.id('connectors', fixed.designator),
      insist: true,
    },
  });
}

export function empty(demo: DemoBuilder, designator: string, ways: number): void {
  const cavities = Array.from({ length: ways }, (_, i) => String(i + 1));
  demo.state(designator, cavities, 'empty');
}
