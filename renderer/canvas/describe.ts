import { byId } from '@latchwork/core/base/by-id';
import type {
  CavityUse,
  ConnectorUse,
  Harness,
  ResolvedEnd,
  ResolvedWire,
} from '@latchwork/core/derive/harness';
import { COLOUR_NAMES, type Colour } from '@latchwork/core/model/colour';

/** Words for objects of the sheet, for those who hear it. */
export function describeKey(harness: Harness, key: string): string {
  const [id = key, cavity] = key.split(':');
  const connector = harness.connectorById.get(id);
  if (connector && cavity !== undefined) {
    const use = connector.cavities.find((c) => c.cavity === cavity);
    return use ? `${connector.resolved.connector.designator}, ${describeCavity(use)}` : key;
  }
  if (connector) return describeConnector(connector);
  const wire = harness.wireById.get(id);
  if (wire) return describeWire(wire);
  const { splices, equipment, nodes, segments } = harness.project;
  return (
    byId(splices).get(id)?.designator ??
    byId(equipment).get(id)?.designator ??
    byId(nodes).get(id)?.designator ??
    byId(segments).get(id)?.designator ??
    'object'
  );
}

export function describeConnector({ resolved, cavities }: ConnectorUse): string {
  const { connector, part, equipment } = resolved;
  const wired = cavities.filter((c) => c.ends.length > 0).length;
  return [
    connector.designator,
    part ? part.partNumber : 'part not known',
    `${cavities.length} ways, ${wired} wired`,
    ...(equipment ? [`on ${equipment.designator}`] : []),
  ].join(', ');
}

export function describeCavity(use: CavityUse): string {
  const wires = use.ends.map((e) => {
    const other = e.index === 0 ? e.wire.to : e.wire.from;
    return `${e.wire.wire.designator} ${colourWords(e.wire.wire.colour)} to ${endWords(other)}`;
  });
  const signal = use.signal ? `, signal ${use.signal.name}` : '';
  return `cavity ${use.cavity}${signal}: ${wires.length ? wires.join('; ') : STATES[use.state]}`;
}

export const describeWire = (w: ResolvedWire): string =>
  `wire ${w.wire.designator}, ${colourWords(w.wire.colour)}, from ${endWords(w.from)} to ${endWords(w.to)}`;

const STATES: Readonly<Record<CavityUse['state'], string>> = {
  wired: 'wired',
  plugged: 'plugged',
  'spare-contact': 'spare contact',
  empty: 'empty by intent',
  blocked: 'blocked',
  undeclared: 'nothing declared',
};

export const colourWords = (colour: Colour | undefined): string =>
  colour
    ? [COLOUR_NAMES[colour.base], ...(colour.stripes ?? []).map((s) => `${COLOUR_NAMES[s]} stripe`)].join(
        ' with ',
      )
    : 'no colour';

function endWords(end: ResolvedEnd): string {
  if (end.end.at === 'cavity') return `${end.connector?.connector.designator ?? 'unknown'}:${end.end.cavity}`;
  if (end.end.at === 'splice') return `splice ${end.splice?.designator ?? 'unknown'}`;
  return 'a free end';
}
