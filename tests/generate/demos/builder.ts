import { dispatch, type Call } from '@latchwork/core/commands/dispatch';
import { startHistory, type History } from '@latchwork/core/commands/history';
import { parseColour, type Colour } from '@latchwork/core/model/colour';
import type { Connector } from '@latchwork/core/model/connector';
import { countingIds } from '@latchwork/core/model/ids';
import { newProject } from '@latchwork/core/model/new-project';
import { partOfKind, type Part, type PartKind } from '@latchwork/core/model/parts/part';
import type { Project } from '@latchwork/core/model/project';
import { workbenchParts } from '../catalogue/catalogue';

type NamedCollection =
  'connectors' | 'wires' | 'splices' | 'nodes' | 'segments' | 'equipment' | 'cables' | 'groups';

/** Options of a wire that the defaults do not give. */
export interface WireOptions {
  readonly signal?: string;
  readonly note?: string;
  readonly lengthMm?: number;
}

/**
 * Makes a demo project by the same commands as the window, in the names that people use: designators, part numbers,
 * signal names. A refusal is an error of the demo.
 */
export interface DemoBuilder {
  readonly project: Project;
  newId(): string;
  do(call: Call): void;
  id(collection: NamedCollection, designator: string): string;
  signalId(name: string): string;
  /** Says on which signal others return. */
  returns(feeds: readonly string[], on: string): void;
  /** The record from the catalogue. */
  part<K extends PartKind>(kind: K, partNumber: string): Extract<Part, { kind: K }>;
  connector(
    designator: string,
    partNumber: string,
    at: readonly [number, number],
    more?: {
      readonly exit?: 'left' | 'right';
      readonly view?: 'mating-face' | 'wire-entry-face';
      readonly equipment?: string;
      readonly supply?: 'harness' | 'equipment';
      readonly description?: string;
      readonly locked?: boolean;
    },
  ): void;
  /** Signals of the positions 1, 2, 3 … of a connector; null leaves one out. */
  declare(designator: string, signals: readonly (string | null)[]): void;
  state(
    designator: string,
    cavities: readonly string[],
    state: 'empty' | 'plugged' | 'blocked',
    plug?: string,
  ): void;
  mate(a: string, b: string): void;
  /** Ends: "X1:3" for a cavity, "XS1" for a splice. */
  wire(
    designator: string,
    from: string,
    to: string,
    partNumber: string,
    colour: string,
    options?: WireOptions,
  ): void;
  /** The core of a placed cable from one cavity to another, with the colour that the core has. */
  /** A fuse in a wire, that far from its source. */
  fuse(wire: string, partNumber: string, fromSourceMm: number): void;
  core(designator: string, from: string, to: string, cable: string, name: string): void;
  node(designator: string, at: readonly [number, number], connectors?: readonly string[]): void;
  segment(designator: string, from: string, to: string): void;
  cover(partNumber: string, segment: string, fromMm: number, toMm: number, layer?: number): void;
  label(connector: string, text: string): void;
  tie(segment: string, atMm: number): void;
  note(connector: string, text: string): void;
  /** How a connector is fitted and used. */
  fitted(connector: string, values: Fitting): void;
  /** Puts a tool on the tool list: calibrated, with the die of the catalogue. */
  tool(partNumber: string): void;
}

type Fitting = Partial<
  Pick<Connector, 'plannedCycles' | 'mateRoomMm' | 'latchRoomMm' | 'cutOut' | 'footprint'>
>;

/** Ids count up from `firstId`, so that the file is the same on every run and no two demos share an id. */
export function startDemo(args: {
  readonly firstId: number;
  readonly title: string;
  /** Where parts are taken from; absent means the workbench catalogue. */
  readonly parts?: readonly Part[];
}): DemoBuilder {
  const newId = countingIds(args.firstId);
  const catalogue = args.parts ?? workbenchParts();
  const context = { newId, catalogue };
  let history: History = startHistory(
    newProject({ id: newId(), revisionId: newId(), title: args.title, creator: 'A. Example' }),
  );

  const run = (call: Call): void => {
    const result = dispatch(history, call, context);
    if (!result.ok) throw new Error(`${result.problem.command}: ${result.problem.reason}`);
    history = result.value;
  };
  const id = (collection: NamedCollection, designator: string): string => {
    const found = history.project[collection].find((o) => o.designator === designator);
    if (!found) throw new Error(`${collection} has no ${designator}`);
    return found.id;
  };
  const signalId = (name: string): string => {
    const found = history.project.signals.find((s) => s.name === name);
    if (!found) throw new Error(`No signal ${name}`);
    return found.id;
  };
  const partOf = (partNumber: string): Part => {
    const found = catalogue.find((p) => p.partNumber === partNumber);
    if (!found) throw new Error(`The catalogue has no part ${partNumber}`);
    return found;
  };
  const part = <K extends PartKind>(kind: K, partNumber: string): Extract<Part, { kind: K }> => {
    const found = partOfKind(partOf(partNumber), kind);
    if (!found) throw new Error(`${partNumber} is no ${kind}`);
    return found;
  };
  const target = (text: string) => {
    const [designator, cavity] = text.split(':') as [string, string?];
    return cavity === undefined
      ? { at: 'splice' as const, splice: id('splices', designator) }
      : { at: 'cavity' as const, connector: id('connectors', designator), cavity };
  };

  return {
    get project() {
      return history.project;
    },
    newId,
    do: run,
    id,
    signalId,
    returns(feeds, on) {
      for (const name of feeds)
        run({ id: 'signal.edit', args: { id: signalId(name), change: { returnsOn: signalId(on) } } });
    },
    part,
    connector(designator, partNumber, [x, y], more = {}) {
      const record = partOf(partNumber);
      if (record.kind !== 'housing' && record.kind !== 'header') throw new Error(`${partNumber} is no half`);
      run({
        id: 'connector.place',
        args: {
          part: record,
          designator,
          position: { x, y },
          exit: more.exit ?? 'right',
          ...(more.view ? { view: more.view } : {}),
          ...(more.equipment ? { equipment: id('equipment', more.equipment) } : {}),
          ...(more.supply ? { supply: more.supply } : {}),
        },
      });
      const connector = id('connectors', designator);
      if (more.description)
        run({ id: 'connector.edit', args: { ids: [connector], change: { description: more.description } } });
      if (record.kind === 'housing' && record.secondaryLock && more.locked !== false)
        run({ id: 'connector.fit-lock', args: { id: connector } });
    },
    declare(designator, signals) {
      signals.forEach((name, i) => {
        if (name === null) return;
        const args = {
          connector: id('connectors', designator),
          cavity: String(i + 1),
          signal: signalId(name),
        };
        run({ id: 'cavity.set-signal', args });
      });
    },
    state(designator, cavities, state, plug) {
      const args = { connector: id('connectors', designator), cavities: [...cavities], state };
      run({ id: 'cavity.set-state', args: plug ? { ...args, part: part('cavity-plug', plug) } : args });
    },
    mate: (a, b) => run({ id: 'mate.add', args: { a: id('connectors', a), b: id('connectors', b) } }),
    wire(designator, from, to, partNumber, colour, options = {}) {
      run({
        id: 'wire.add',
        args: {
          from: target(from),
          to: target(to),
          part: part('wire', partNumber),
          designator,
          colour: colourOf(colour),
          ...(options.signal ? { signal: signalId(options.signal) } : {}),
          ...(options.note ? { note: options.note } : {}),
          ...(options.lengthMm ? { lengthMm: options.lengthMm } : {}),
        },
      });
    },
    fuse: (wire, partNumber, fromSourceMm) =>
      run({
        id: 'fuse.add',
        args: { wire: id('wires', wire), part: part('fuse', partNumber), fromSourceMm },
      }),
    core: (designator, from, to, cable, name) =>
      run({
        id: 'wire.add',
        args: { from: target(from), to: target(to), designator, core: { cable: id('cables', cable), name } },
      }),
    node(designator, [x, y], connectors = []) {
      const ids = connectors.map((c) => id('connectors', c));
      run({ id: 'node.add', args: { designator, position: { x, y }, connectors: ids } });
    },
    segment: (designator, from, to) =>
      run({ id: 'segment.add', args: { designator, from: id('nodes', from), to: id('nodes', to) } }),
    cover(partNumber, segment, fromMm, toMm, layer = 1) {
      const at = id('segments', segment);
      run({
        id: 'covering.add',
        args: {
          part: part('covering', partNumber),
          from: { segment: at, atMm: fromMm },
          to: { segment: at, atMm: toMm },
          layer,
        },
      });
    },
    label(connector, text) {
      const on = { at: 'connector' as const, connector: id('connectors', connector) };
      run({ id: 'label.add', args: { text, on, part: part('label', 'OQ-40') } });
    },
    tie(segment, atMm) {
      const station = { segment: id('segments', segment), atMm };
      run({ id: 'tie.add', args: { part: part('tie', 'OY-100'), station } });
    },
    fitted: (connector, values) =>
      run({ id: 'connector.edit', args: { ids: [id('connectors', connector)], change: values } }),
    tool: (partNumber) =>
      run({
        id: 'part.embed',
        args: { part: { ...part('tool', partNumber), calibratedUntil: '2026-12-31', dies: ['A'] } },
      }),
    note: (connector, text) =>
      run({ id: 'connector.edit', args: { ids: [id('connectors', connector)], change: { note: text } } }),
  };
}

function colourOf(text: string): Colour {
  const parsed = parseColour(text);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}
