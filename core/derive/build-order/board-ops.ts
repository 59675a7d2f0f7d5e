import { labelCarrier, labelPlace } from '../label-carrier';
import { byId } from '../../base/by-id';
import { partOfKind } from '../../model/parts/part';
import type { Harness } from '../harness';
import type { BuildOp, OpNeed } from './build-op';
import { coveringName, isSlidOn } from './bundle-ops';
import { stretchOf } from './covered-ends';
import { opId } from './op-ids';
import { groupNeeds, onBefore } from './prepare-ops';

const LAID = { op: opId.lay, because: 'places are measured on the board' };

/** Splices: wires that meet, before the ends are held in housings. */
export function spliceOps(harness: Harness, before: ReadonlyMap<string, readonly OpNeed[]>): BuildOp[] {
  return harness.project.splices.flatMap((s): BuildOp[] => {
    const ends = harness.wires.flatMap((wire) =>
      ([0, 1] as const).flatMap((index) =>
        (index === 0 ? wire.from : wire.to).splice?.id === s.id ? [{ wire, index }] : [],
      ),
    );
    if (ends.length === 0) return [];
    const part = harness.parts.get(s.part ?? '')?.partNumber ?? null;
    return [
      {
        id: opId.splice(s.id),
        stage: 'splice',
        gather: part ?? '',
        what: `Join wires in ${part ?? 'a splice that is not chosen'}`,
        place: `${s.designator}: ${ends.map((e) => e.wire.wire.designator).join(', ')}`,
        objects: [{ type: 'splice', id: s.id }],
        parts: [{ part, quantity: 1 }],
        needs: [
          ...ends.flatMap(({ wire, index }) => [
            { op: opId.cut(wire.wire.id), because: 'the wire must be cut and stripped' },
            ...onBefore(harness, wire, index),
            ...groupNeeds(wire),
          ]),
          ...(before.get(opId.splice(s.id)) ?? []),
        ],
      },
    ];
  });
}

/** What is done on the formboard once the wires are in their housings. */
export function boardOps(harness: Harness, held: readonly string[], placed: ReadonlySet<string>): BuildOp[] {
  const { project } = harness;
  const onBoard = project.segments.length > 0;
  const lay: BuildOp = {
    id: opId.lay,
    stage: 'lay',
    gather: '',
    what: onBoard
      ? 'Lay the harness on the formboard, trunk first, wires without crossing'
      : 'Lay the harness out',
    place: project.segments.map((s) => s.designator).join(' '),
    objects: project.segments.map((s) => ({ type: 'segment' as const, id: s.id })),
    parts: [],
    needs: held.map((op) => ({ op, because: 'ends that are held cannot slip while it is laid' })),
  };
  return [lay, ...coverOps(harness, placed), ...fixOps(harness), ...labelOps(harness), ...fuseOps(harness)];
}

/** Threaded coverings are pulled into place and tape is wrapped; what lies below comes first. */
function coverOps(harness: Harness, placed: ReadonlySet<string>): BuildOp[] {
  const { project, parts } = harness;
  const stretches = project.coverings.map((c) => new Set(stretchOf(harness, c).map((s) => s.id)));
  return project.coverings.map((c, i): BuildOp => {
    const record = partOfKind(parts.get(c.part), 'covering');
    const slidOn = isSlidOn(record?.form);
    const name = record?.partNumber ?? 'a covering that is not known';
    const below = project.coverings.filter(
      (o, j) => o.layer < c.layer && [...(stretches[j] ?? [])].some((s) => stretches[i]?.has(s)),
    );
    return {
      id: opId.place(c.id),
      stage: 'cover',
      gather: `${c.layer} ${name}`,
      what: slidOn
        ? `Pull ${name} into place${record?.form === 'heat-shrink' ? ' and shrink it' : ''}`
        : `Wrap ${name}`,
      place: coveringName(c, stretchOf(harness, c)),
      objects: [{ type: 'covering', id: c.id }],
      parts: slidOn ? [] : [{ part: record?.partNumber ?? null, quantity: 1 }],
      needs: [
        LAID,
        ...(slidOn && placed.has(opId.slide(c.id))
          ? [{ op: opId.slide(c.id), because: 'it must be on the bundle' }]
          : []),
        ...below.map((o) => ({ op: opId.place(o.id), because: 'the layer below lies first' })),
      ],
    };
  });
}

function fixOps(harness: Harness): BuildOp[] {
  const { project, parts } = harness;
  const segments = byId(project.segments);
  const covered = (segment: string): OpNeed[] =>
    project.coverings
      .filter((c) => stretchOf(harness, c).some((s) => s.id === segment))
      .map((c) => ({ op: opId.place(c.id), because: 'a tie holds what it lies on' }));
  const name = (segment: string): string => segments.get(segment)?.designator ?? '?';
  const ties = project.ties.map((t): BuildOp => {
    const part = parts.get(t.part)?.partNumber ?? null;
    return {
      id: opId.fit(t.id),
      stage: 'fix',
      gather: `tie ${part ?? ''}`,
      what: `Tie with ${part ?? 'a tie that is not known'}`,
      place: `${name(t.station.segment)} at ${t.station.atMm} mm`,
      objects: [{ type: 'segment', id: t.station.segment }],
      parts: [{ part, quantity: 1 }],
      needs: [LAID, ...covered(t.station.segment)],
    };
  });
  const fixings = project.fixings.map((f): BuildOp => {
    const record = parts.get(f.part);
    const isGrommet = record?.kind === 'grommet';
    const part = record?.partNumber ?? null;
    return {
      id: opId.fit(f.id),
      stage: 'fix',
      gather: `fixing ${part ?? ''}`,
      what: `${isGrommet ? 'Pull into place' : 'Put on'} ${part ?? 'a clamp that is not known'}`,
      place: `${f.designator ?? ''} ${name(f.station.segment)} at ${f.station.atMm} mm`.trim(),
      objects: [{ type: 'segment', id: f.station.segment }],
      parts: isGrommet ? [] : [{ part, quantity: 1 }],
      needs: [LAID, ...covered(f.station.segment)],
    };
  });
  return [...ties, ...fixings];
}

/** Labels around bundles and connectors: they wrap, so they come when the harness has its form. */
function labelOps(harness: Harness): BuildOp[] {
  const { project, parts } = harness;
  return project.labels.flatMap((l): BuildOp[] => {
    if (l.on.at === 'wire-end') return [];
    return [
      {
        id: opId.label(l.id),
        stage: 'label',
        gather: '',
        what: 'Put on the labels of connectors, cables and bundles, to be read without a light behind',
        place: `${labelPlace(project, l.on)}: ${l.text}`,
        objects: [labelCarrier(l.on)],
        parts: [{ part: parts.get(l.part ?? '')?.partNumber ?? null, quantity: 1 }],
        needs: [LAID],
      },
    ];
  });
}

function fuseOps({ project, parts }: Harness): BuildOp[] {
  return project.fuses.map((f) => ({
    id: opId.fit(f.id),
    stage: 'fit',
    gather: 'fuse',
    what: 'Put in the fuses and read their rating',
    place: f.designator,
    objects: [{ type: 'fuse' as const, id: f.id }],
    parts: [{ part: parts.get(f.part ?? '')?.partNumber ?? null, quantity: 1 }],
    needs: [{ op: opId.lay, because: 'a holder is closed when its wire lies' }],
  }));
}

/** Inspect, test, pack: after everything else. */
export function closingOps(harness: Harness, all: readonly string[]): BuildOp[] {
  const whole = {
    gather: '',
    place: harness.project.titleBlock.identificationNumber,
    objects: [],
    parts: [],
  } as const;
  return [
    {
      id: opId.inspect,
      stage: 'inspect',
      what: 'Inspect by the inspection plan',
      ...whole,
      needs: all.map((op) => ({ op, because: 'what is not there yet cannot be seen' })),
    },
    {
      id: opId.test,
      stage: 'test',
      what: 'Test by the test table, every harness',
      ...whole,
      needs: [{ op: opId.inspect, because: 'a test does not see what looks wrong' }],
    },
    {
      id: opId.pack,
      stage: 'pack',
      what: 'Cap open connectors, coil without tight bends, pack with the records',
      ...whole,
      needs: [{ op: opId.test, because: 'only what passed is packed' }],
    },
  ];
}
