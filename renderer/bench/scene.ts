/** The synthetic scene of the canvas bench, in pixels at zoom 1, as the harness that drives the page hands it over. */
export interface BenchScene {
  readonly size: string;
  /** screen = (world - { x, y }) * zoom */
  readonly view: { readonly x: number; readonly y: number; readonly zoom: number };
  readonly connectors: readonly BenchConnector[];
  readonly wires: readonly BenchWire[];
}

export interface BenchConnector {
  readonly id: string;
  readonly label: string;
  readonly x: number;
  readonly y: number;
  readonly cavities: readonly { readonly id: string; readonly n: number; readonly side: -1 | 1 }[];
}

export interface BenchWire {
  readonly id: string;
  readonly from: { readonly connector: string; readonly cavity: string };
  readonly to: { readonly connector: string; readonly cavity: string };
  readonly color: string;
}
