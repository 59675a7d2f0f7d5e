import type { DemoBuilder } from '../builder';

const NODES: readonly (readonly [designator: string, x: number, y: number, connectors: readonly string[]])[] =
  [
    ['N1', 160, 200, []],
    ['N2', 270, 200, []],
    ['N3', 360, 200, []],
    ['N4', 430, 200, []],
    ['N5', 540, 200, []],
    ['N6', 640, 200, []],
    ['N11', 270, 110, ['X11']],
    ['N12', 70, 130, ['X12']],
    ['N13', 40, 200, ['X13']],
    ['N14', 70, 270, ['X14']],
    ['N15', 270, 290, ['X15']],
    ['N16', 360, 320, ['X16']],
    ['N21', 360, 80, ['X21']],
    ['N22', 430, 315, ['X22']],
    ['N23', 540, 310, ['X23']],
    ['N24', 710, 105, ['X24']],
    ['N25', 745, 165, ['X25']],
    ['N26', 745, 235, ['X26']],
    ['N27', 710, 295, ['X27']],
    ['N28', 540, 85, ['X28']],
  ];

const SEGMENTS: readonly (readonly [designator: string, from: string, to: string])[] = [
  ['S1', 'N1', 'N2'],
  ['S2', 'N2', 'N3'],
  ['S3', 'N3', 'N4'],
  ['S4', 'N4', 'N5'],
  ['S5', 'N5', 'N6'],
  ['S11', 'N2', 'N11'],
  ['S12', 'N1', 'N12'],
  ['S13', 'N1', 'N13'],
  ['S14', 'N1', 'N14'],
  ['S15', 'N2', 'N15'],
  ['S16', 'N3', 'N16'],
  ['S21', 'N3', 'N21'],
  ['S22', 'N4', 'N22'],
  ['S23', 'N5', 'N23'],
  ['S24', 'N6', 'N24'],
  ['S25', 'N6', 'N25'],
  ['S26', 'N6', 'N26'],
  ['S27', 'N6', 'N27'],
  ['S28', 'N5', 'N28'],
];

/** Branches that are laid in a bow, so that they leave the trunk without a kink. */
const BOWS: readonly (readonly [segment: string, via: readonly (readonly [x: number, y: number])[]])[] = [
  ['S12', [[118, 184], [88, 158]]],
  ['S14', [[118, 216], [88, 242]]],
]; // prettier-ignore

/** A trunk with branches to both sides, at true scale, so that lengths come from routes. */
export function addFormboard(demo: DemoBuilder): void {
  for (const [designator, x, y, connectors] of NODES) demo.node(designator, [x, y], connectors);
  for (const [designator, from, to] of SEGMENTS) demo.segment(designator, from, to);
  for (const [segment, via] of BOWS)
    // prettier-ignore
    demo.do({
      id: 'segment.edit',
      args: {
        id: demo.id('segments', segment),
        change: { shape: 'curve', via: via.map(([x, y]) => ({ x, y })) },
      },
    });
  // The splices lie apart from each other in the trunk, so that it grows thick in one place only once.
  for (const [splice, node] of [
    ['XS1', 'N3'],
    ['XS2', 'N4'],
  ] as const)
    // prettier-ignore
    demo.do({
      id: 'splice.edit',
      args: { id: demo.id('splices', splice), change: { node: demo.id('nodes', node) } },
    });
}

/** Conduit on the trunk, sleeves on the branches, labels at every connector and on the power wires. */
export function protectAndMark(demo: DemoBuilder): void {
  for (const [segment, fromMm, toMm] of [
    ['S1', 0, 110],
    ['S2', 0, 90],
    ['S3', 30, 70],
    ['S4', 0, 110],
    ['S5', 0, 100],
  ] as const)
    // prettier-ignore
    demo.cover('OC-10', segment, fromMm, toMm);
  for (const [segment, toMm] of [
    ['S11', 60],
    ['S12', 80],
    ['S13', 90],
    ['S14', 80],
    ['S15', 60],
    ['S16', 90],
    ['S21', 90],
    ['S22', 85],
    ['S23', 80],
    ['S24', 90],
    ['S25', 80],
    ['S26', 80],
    ['S27', 90],
    ['S28', 85],
  ] as const)
    // prettier-ignore
    demo.cover(segment === 'S13' || segment === 'S24' ? 'OS-6' : 'OS-3', segment, 10, toMm);
  demo.cover('OH-95', 'S3', 0, 30);
  demo.cover('OP-19', 'S1', 100, 110, 2);

  const texts = {
    X11: 'MODEM', X12: 'POWER', X13: 'WIND', X14: 'SOIL', X15: 'RAIN AIR', X16: 'DISPLAY', X21: 'MODEM', X22: 'BATTERY',
    X23: 'SOLAR', X24: 'WIND', X25: 'SOIL', X26: 'RAIN', X27: 'AIR', X28: 'DISPLAY',
  }; // prettier-ignore
  for (const [connector, text] of Object.entries(texts)) demo.label(connector, `${connector} ${text}`);
  for (const { id } of demo.project.labels)
    demo.do({ id: 'label.edit', args: { id, change: { datumDistanceMm: 30 } } });
  for (const [segment, atMm] of [
    ['S1', 10],
    ['S2', 45],
    ['S3', 60],
    ['S4', 55],
    ['S5', 90],
  ] as const)
    // prettier-ignore
    demo.tie(segment, atMm);
  stateBends(demo);
  hold(demo);
  measure(demo);
  demo.do({ id: 'project.edit', args: { change: { labelMethod: 'both-ends' } } });
  demo.do({ id: 'labels.make', args: { atWiresMm: 20 } });
}

/** Clamps on the trunk where it is fastened in the box, grommets where branches leave it, and a mark of the whole. */
function hold(demo: DemoBuilder): void {
  for (const [kind, part, segment, atMm] of [
    ['clamp', 'OD-13', 'S2', 75],
    ['clamp', 'OD-13', 'S4', 85],
    ['grommet', 'OG-6', 'S13', 105],
    ['grommet', 'OG-6', 'S24', 105],
  ] as const)
    // prettier-ignore
    demo.do({
      id: 'fixing.add',
      args: { part: demo.part(kind, part), station: { segment: demo.id('segments', segment), atMm } },
    });
  demo.do({
    id: 'label.add',
    args: {
      text: 'WEATHER STATION',
      on: { at: 'station', station: { segment: demo.id('segments', 'S3'), atMm: 50 } },
      part: demo.part('label', 'OQ-F50'),
    },
  });
}

/** What the shop measures: the breakouts along the trunk, from the rear of the wind sensor's half, and the longest branch. */
function measure(demo: DemoBuilder): void {
  const node = (name: string) => ({ at: 'node' as const, node: demo.id('nodes', name) });
  const rear = (name: string) => ({ at: 'connector' as const, connector: demo.id('connectors', name) });
  for (const [form, datums, offsetMm] of [
    ['chain', ['N1', 'N2', 'N3', 'N4', 'N5', 'N6'].map(node), -180],
    ['baseline', [rear('X13'), node('N1'), node('N3'), node('N6')], -200],
    ['chain', [node('N3'), rear('X16')], -30],
  ] as const)
    // prettier-ignore
    demo.do({ id: 'dimension.add', args: { form, datums: [...datums], offsetMm, plusMm: 10, minusMm: 5 } });
}

/** How tight branches are bent in the box, and how long the pairs lie open at their ends. */
function stateBends(demo: DemoBuilder): void {
  for (const [segment, bendRadiusMm] of [
    ['S22', 25],
    ['S24', 40],
    ['S28', 30],
  ] as const)
    // prettier-ignore
    demo.do({ id: 'segment.edit', args: { id: demo.id('segments', segment), change: { bendRadiusMm } } });
  for (const group of ['WG1', 'WG2'])
    demo.do({ id: 'group.edit', args: { id: demo.id('groups', group), change: { exposedMm: 25 } } });
}
