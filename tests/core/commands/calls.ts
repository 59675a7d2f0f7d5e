import type { Call, CommandId } from '@latchwork/core/commands/dispatch';
import { copyObjects } from '@latchwork/core/commands/clip';
import { AEROSPACE_LIMITS } from '@latchwork/core/model/limit-sets/aerospace';
import type { Part } from '@latchwork/core/model/parts/part';
import type { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';

const DECISION = '00000000-0000-4000-8000-0000000d0001';

/** A decision as it is handed in. */
const RECORD = {
  kind: 'deviation-permit' as const,
  finding: 'x',
  rule: 'x',
  ruleRevision: 1,
  requirement: 'r',
  measured: 'm',
  limit: 'l',
  quantity: 3,
  reason: 'because',
  requester: 'Example',
  approvals: [{ name: 'Sample', role: 'quality', date: '2026-01-02' }],
  decidedOn: '2026-01-02',
  expiresOn: '2026-03-02',
  basis: { severity: 'major' as const, result: 'fail' as const, values: [] },
};

/** What a catalogue offers meanwhile. */
export const OFFERED: readonly Part[] = [
  {
    kind: 'tool',
    id: '00000000-0000-4000-8000-0000000d0002',
    maker: 'Example Works (invented)',
    partNumber: 'HAND-TOOL',
    description: 'Hand crimp tool',
    form: 'hand',
  },
];

/** The tiny project with one of everything that a command can need beside. */
export const workbench = (): Project =>
  tiny((t) => {
    t.project.decisions.push({ ...RECORD, id: DECISION, number: 'D-1' });
    t.project.parts.push(...(extraParts(t) as TinyDraft['project']['parts']));
    t.project.splices.push({ id: t.newId(), designator: 'XS1', position: { x: 60, y: 60 } });
    t.project.nodes.push({ id: t.newId(), designator: 'N3', position: { x: 300, y: 200 } });
    t.project.labelMethod = 'identification';
    t.project.labels.push({
      id: t.newId(),
      text: 'X1',
      on: { at: 'connector', connector: t.connector('X1').id },
    });
    t.project.groups.push({
      id: t.newId(),
      designator: 'WG1',
      form: 'twisted',
      wires: [t.wire('W1').id, t.wire('W2').id],
    });
    t.project.coverings.push({
      id: t.newId(),
      part: t.part('covering', 'SLEEVE').id,
      from: { segment: segment(t), atMm: 10 },
      to: { segment: segment(t), atMm: 200 },
      layer: 1,
    });
    const station = { segment: segment(t), atMm: 120 };
    t.project.ties.push({ id: t.newId(), part: t.part('tie', 'TIE').id, station });
    t.project.fixings.push({ id: t.newId(), designator: 'FX1', part: t.part('clamp', 'CLAMP').id, station });
    t.project.dimensions.push({
      id: t.newId(),
      form: 'chain',
      datums: [
        { at: 'connector', connector: t.connector('X1').id },
        { at: 'station', station },
      ],
      offsetMm: 20,
    });
  });

const segment = (t: TinyDraft): string => t.project.segments[0]!.id;

function extraParts(t: TinyDraft): Part[] {
  const record = (partNumber: string) => ({
    id: t.newId(),
    maker: 'Example Works (invented)',
    partNumber,
    description: partNumber,
  });
  return [
    { kind: 'covering', form: 'sleeve', ...record('SLEEVE') },
    { kind: 'cavity-plug', ...record('PLUG') },
    { kind: 'splice', ...record('SPLICE') },
    { kind: 'tie', ...record('TIE') },
    { kind: 'clamp', ...record('CLAMP') },
    { kind: 'grommet', ...record('GROMMET') },
    { kind: 'label', ...record('LABEL') },
    { kind: 'fuse', ratedA: 2, ...record('FUSE') },
    {
      kind: 'cable',
      cores: [{ name: '1', size: { system: 'awg', gauge: 22 }, colour: { base: 'WH' } }],
      ...record('CABLE'),
    },
  ];
}

/** One call of every command that succeeds on the workbench project. */
export function goodCalls(p: Project): readonly Call[] {
  const connector = (d: string): string => p.connectors.find((c) => c.designator === d)!.id;
  const wire = (d: string) => p.wires.find((w) => w.designator === d)!;
  const part = <K extends Part['kind']>(kind: K, number: string) =>
    p.parts.find((x) => x.kind === kind && x.partNumber === number) as Extract<Part, { kind: K }>;
  const at = (d: string, cavity: string) => ({ at: 'cavity' as const, connector: connector(d), cavity });
  const [n1, , n3] = p.nodes.map((n) => n.id) as [string, string, string];
  const s1 = p.segments[0]!.id;
  const board = p.equipment[0]!.id;
  return [
    { id: 'project.edit-title-block', args: { change: { title: 'Other' } } },
    { id: 'project.edit', args: { change: { notes: ['A note'], regulated: true, buildQuantities: [1, 10], labelMethod: 'both-ends' } } },
    {
      id: 'project.set-limit',
      args: { limit: { id: 'tail-protrusion-min', value: 0.8, unit: 'mm', source: 'typed', verified: true } },
    },
    { id: 'project.use-limit-set', args: { limitSet: AEROSPACE_LIMITS } },
    {
      id: 'project.add-revision',
      args: { revision: { revision: 'B', author: 'Example', description: 'Next' } },
    },
    { id: 'project.release', args: { date: '2026-03-01', approvalPerson: 'A. Prover' } },
    { id: 'project.take', args: { project: { ...p, notes: ['From the other side'], labels: [] } } },
    {
      id: 'project.edit-purchasing',
      args: {
        change: {
          currency: 'EUR',
          setUpPieces: 20,
          scrap: { contact: 0.04, tie: null },
          stock: [{ part: part('wire', 'WIRE-22').id, colour: { base: 'RD' }, quantity: 12.5 }],
        },
      },
    },
    {
      id: 'part.edit-offers',
      args: {
        id: part('contact', 'C-PIN').id,
        offers: [
          {
            supplier: 'Example Trading (invented)',
            orderCode: 'T-1',
            form: 'strip',
            currency: 'EUR',
            priceBreaks: [{ quantity: 1, price: 0.1 }],
          },
        ],
      },
    },
    { id: 'part.add', args: { partNumber: 'HAND-TOOL' } },
    { id: 'part.embed', args: { part: { ...part('wire', 'WIRE-22'), odMm: 1.3 } } },
    { id: 'part.exchange', args: { part: part('contact', 'C-SOCKET').id, by: part('contact', 'C-SOCKET-AU') } },
    { id: 'connector.place', args: { part: part('housing', 'H-PIN'), position: { x: 5, y: 5 } } },
    { id: 'connector.edit', args: { ids: [connector('X1')], change: { designator: 'X9', node: null } } },
    { id: 'connector.set-part', args: { id: connector('X1'), part: part('housing', 'H-PIN') } },
    {
      id: 'connector.add-accessory',
      args: { id: connector('X1'), part: part('secondary-lock', 'LOCK') },
    },
    { id: 'connector.fit-lock', args: { id: connector('X1') } },
    {
      id: 'connector.remove-accessory',
      args: { id: connector('X1'), accessory: p.connectors.find((c) => c.designator === 'X1')!.accessories[0]!.id },
    },
    {
      id: 'cavity.set-state',
      args: { connector: connector('X1'), cavities: ['3'], state: 'plugged', part: part('cavity-plug', 'PLUG') },
    },
    { id: 'cavity.set-signal', args: { connector: connector('X1'), cavity: '3', signal: p.signals[0]!.id } },
    { id: 'wire.add', args: { from: at('X1', '3'), to: at('X2', '3') } },
    { id: 'wire.edit', args: { ids: [wire('W1').id], change: { lengthMm: 500, signal: null } } },
    { id: 'wire.set-part', args: { ids: [wire('W1').id], part: part('wire', 'WIRE-26'), colour: { base: 'BU' } } },
    { id: 'wire.move-end', args: { id: wire('W1').id, end: 0, to: at('X1', '3') } },
    { id: 'wire.set-strip-length', args: { id: wire('W1').id, end: 1, stripLengthMm: 2.7 } },
    { id: 'contact.set', args: { wire: wire('W1').id, end: 0, part: part('contact', 'C-SOCKET-AU') } },
    { id: 'contact.fit', args: { places: [{ connector: connector('X1'), cavity: '1' }] } },
    { id: 'contact.share', args: { place: { connector: connector('X1'), cavity: '1' } } },
    { id: 'mate.add', args: { a: connector('X1'), b: connector('X3') } },
    { id: 'mate.set-map', args: { id: p.mates[0]!.id, map: [{ a: '1', b: '3' }] } },
    {
      id: 'equipment.add',
      args: { equipment: { kind: 'panel', position: { x: 0, y: 0 }, widthMm: 50, heightMm: 50, thicknessMm: 2 } },
    },
    { id: 'equipment.edit', args: { id: board, change: { thicknessMm: 1.2 } } },
    { id: 'signal.add', args: { signal: { name: 'SENSE', class: 'signal' } } },
    { id: 'signal.edit', args: { id: p.signals[0]!.id, change: { currentA: 2 } } },
    { id: 'splice.add', args: { position: { x: 1, y: 1 }, part: part('splice', 'SPLICE') } },
    { id: 'splice.edit', args: { id: p.splices[0]!.id, change: { part: part('splice', 'SPLICE'), node: n1 } } },
    { id: 'group.add', args: { wires: [wire('W1').id, wire('W2').id], form: 'bundled' } },
    { id: 'group.edit', args: { id: p.groups[0]!.id, change: { layMm: 25 } } },
    { id: 'cable.add', args: { part: part('cable', 'CABLE') } },
    { id: 'node.add', args: { position: { x: 1, y: 2 }, connectors: [connector('X3')] } },
    { id: 'node.edit', args: { id: n1, change: { position: { x: 3, y: 3 } } } },
    { id: 'formboard.lay-out', args: {} },
    { id: 'nodes.move', args: { moves: [{ id: n1, to: { x: -20, y: 10 } }] } },
    { id: 'segment.add', args: { from: n1, to: n3 } },
    { id: 'segment.edit', args: { id: s1, change: { lengthMm: 410 } } },
    { id: 'segment.split', args: { station: { segment: s1, atMm: 120 }, designator: 'N9' } },
    { id: 'segment.join', args: { node: n3 } },
    { id: 'branch.insert', args: { at: { segment: s1, atMm: 90 }, to: { x: 90, y: 60 }, connectors: [connector('X3')] } },
    { id: 'branch.rotate', args: { node: n1, segment: s1, byDeg: 30 } },
    { id: 'branch.mirror', args: { node: n1, segment: s1, axisDeg: 45 } },
    { id: 'trunk.straighten', args: { from: n1, to: p.nodes[1]!.id, angleDeg: 90 } },
    { id: 'splice.place-on-segment', args: { splice: p.splices[0]!.id, station: { segment: s1, atMm: 60 } } },
    {
      id: 'covering.add',
      args: { part: part('covering', 'SLEEVE'), from: { segment: s1, atMm: 0 }, to: { segment: s1, atMm: 50 } },
    },
    { id: 'covering.edit', args: { id: p.coverings[0]!.id, change: { layer: 2 } } },
    { id: 'tie.add', args: { part: part('tie', 'TIE'), station: { segment: s1, atMm: 30 } } },
    { id: 'tie.edit', args: { id: p.ties[0]!.id, change: { station: { segment: s1, atMm: 40 } } } },
    {
      id: 'fixing.add',
      args: { part: part('grommet', 'GROMMET'), station: { segment: s1, atMm: 200 } },
    },
    {
      id: 'fixing.edit',
      args: { id: p.fixings[0]!.id, change: { station: { segment: s1, atMm: 150 }, designator: null } },
    },
    {
      id: 'dimension.add',
      args: { form: 'baseline', datums: [{ at: 'node', node: n1 }, { at: 'station', station: { segment: s1, atMm: 90 } }], offsetMm: -30, plusMm: 5 },
    },
    { id: 'dimension.edit', args: { id: p.dimensions[0]!.id, change: { form: 'baseline', offsetMm: 40, minusMm: null } } },
    { id: 'connector.turn', args: { ids: [connector('X1')], byDeg: 45 } },
    { id: 'wire.pin-path', args: { wires: [wire('W1').id], path: [s1] } },
    { id: 'wire.unpin-path', args: { wires: [wire('W1').id] } },
    { id: 'label.add', args: { text: 'W1', on: { at: 'wire-end', wire: wire('W1').id, end: 0 }, part: part('label', 'LABEL') } },
    { id: 'labels.make', args: { ids: [wire('W1').id], atWiresMm: 20 } },
    { id: 'label.edit', args: { id: p.labels[0]!.id, change: { text: 'X1 lamp' } } },
    { id: 'fuse.add', args: { wire: wire('W1').id, part: part('fuse', 'FUSE'), ratedA: 2 } },
    { id: 'decision.add', args: { decision: RECORD } },
    { id: 'decision.add-several', args: { decisions: [RECORD, { ...RECORD, finding: 'y' }] } },
    {
      id: 'decision.use',
      args: { decision: DECISION, use: { date: '2026-02-01', quantity: 1, recordedBy: 'Example' } },
    },
    {
      id: 'decision.close',
      args: { decision: DECISION, closed: { date: '2026-02-01', by: 'Example', reason: 'built' } },
    },
    { id: 'objects.move', args: { moves: [{ id: board, to: { x: -100, y: 5 } }] } },
    { id: 'objects.align', args: { ids: [connector('X1'), connector('X2'), connector('X3')], edge: 'left' } },
    { id: 'objects.remove', args: { ids: [connector('X1'), n1] } },
    {
      id: 'objects.paste',
      args: { clip: copyObjects(p, new Set([connector('X1'), connector('X2')])), offset: { x: 10, y: 10 } },
    },
  ]; // prettier-ignore
}

/** Changes the workbench so that a call is possible which would be refused on it as it is. */
export const PREPARED: Partial<Record<CommandId, (p: Project) => Project>> = {
  'project.release': (p) => ({ ...p, titleBlock: { ...p.titleBlock, identificationNumber: 'H-1' } }),
  'formboard.lay-out': (p) => ({
    ...p,
    connectors: p.connectors.map(({ ...c }) => (c.designator === 'X2' ? (delete c.node, c) : c)),
  }),
  // N3 in the middle of the way: N1, N3, N2.
  'segment.join': (p) => {
    const [n1, n2, n3] = p.nodes.map((n) => n.id) as [string, string, string];
    const half = { id: '00000000-0000-4000-8000-0000000d0003', designator: 'S2', from: n1, to: n3 };
    return {
      ...p,
      segments: [...p.segments.map((s) => ({ ...s, from: n2, to: n3 })), half],
      wires: p.wires.map((w) => ({ ...w, path: [half.id, p.segments[0]!.id] })),
    };
  },
  'wire.unpin-path': (p) => ({
    ...p,
    wires: p.wires.map((w) => ({ ...w, path: p.segments.map((s) => s.id) })),
  }),
  'mate.add': (p) => ({ ...p, mates: p.mates.slice(1) }),
  'group.add': (p) => ({ ...p, groups: [] }),
  'contact.share': (p) => ({
    ...p,
    wires: p.wires.map((w) => {
      const first = w.ends[0];
      return first.at === 'cavity' ? { ...w, ends: [{ ...first, cavity: '1' }, w.ends[1]] } : w;
    }),
  }),
  'contact.fit': (p) => ({
    ...p,
    wires: p.wires.map((w) => ({
      ...w,
      ends: w.ends.map(({ ...e }) => (delete e.stripLengthMm, e)) as typeof w.ends,
    })),
  }),
};
