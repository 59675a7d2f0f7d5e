import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { placeOfStation, segmentLengths, segmentPath } from '@latchwork/core/derive/formboard/segment-path';
import { byId } from '@latchwork/core/base/by-id';
import type { Project } from '@latchwork/core/model/project';
import { tiny } from '@latchwork/core/model/tiny';
import { current } from 'immer';
import type { Segment, Station } from '@latchwork/core/model/topology';
import { createRandom } from '../../generate/harness/random';

/**
 * A formboard that is a tree grown by chance: straight runs, corners and curves, typed and drawn lengths, tolerances, and
 * on them ties, fixings, coverings, labels and dimensions. Wires with free ends run between nodes, some along pinned paths.
 */
export function randomTree(seed: number, nodes = 9): Project {
  const random = createRandom(seed);
  const upTo = (n: number): number => Math.floor(random() * n);
  return tiny((t) => {
    const { project: p } = t;
    const ids = Array.from({ length: nodes }, () => t.newId());
    p.nodes = ids.map((id, i) => ({
      id,
      designator: `N${i + 1}`,
      position: { x: random() * 800, y: random() * 600 },
    }));
    p.segments = ids.slice(1).map((to, i): Segment => {
      const from = ids[upTo(i + 1)]!;
      const shape = upTo(3) === 0 ? ('curve' as const) : ('straight' as const);
      const via = Array.from({ length: upTo(3) }, () => ({ x: random() * 800, y: random() * 600 }));
      const turned = upTo(2) === 0;
      return {
        id: t.newId(),
        designator: `S${i + 1}`,
        from: turned ? to : from,
        to: turned ? from : to,
        shape,
        ...(via.length > 0 ? { via } : {}),
        ...(upTo(3) === 0 ? { lengthMm: 50 + upTo(400) } : {}),
        ...(upTo(3) === 0 ? { plusMm: 10, minusMm: 2 } : {}),
      };
    });
    const byNode = byId(p.nodes);
    const station = (): Station => {
      const s = p.segments[upTo(p.segments.length)]!;
      return { segment: s.id, atMm: random() * segmentLengths(s, byNode).usedMm };
    };
    for (const c of p.connectors) delete c.node;
    const part = t.part('secondary-lock', 'LOCK').id;
    for (let i = 0; i < 4; i++) {
      p.ties.push({ id: t.newId(), part, station: station() });
      p.fixings.push({ id: t.newId(), part, station: station() });
      p.labels.push({ id: t.newId(), text: `L${i}`, on: { at: 'station', station: station() } });
      p.coverings.push({ id: t.newId(), part, from: station(), to: station(), layer: 1 });
      p.dimensions.push({
        id: t.newId(), form: 'chain', offsetMm: 10,
        datums: [{ at: 'station', station: station() }, { at: 'node', node: ids[upTo(nodes)]! }],
      }); // prettier-ignore
    }
    p.wires = Array.from({ length: 8 }, (_, i) => ({
      id: t.newId(),
      designator: `W${i + 1}`,
      ends: [0, 1].map(() => ({
        at: 'free' as const,
        position: { x: 0, y: 0 },
        node: ids[upTo(nodes)]!,
      })) as never,
    }));
    const harness = deriveHarness(current(p) as Project);
    for (const w of harness.wires)
      if (w.route.found && w.route.segments.length > 0 && upTo(2) === 0)
        p.wires.find((x) => x.id === w.wire.id)!.path = [...w.route.segments];
  });
}

/** What no command may change that only changes how the harness is cut up or how it lies on the board. */
export function lengthsOf(project: Project) {
  const harness = deriveHarness(structuredClone(project));
  const nodes = byId(project.nodes);
  return {
    totalMm: project.segments.reduce((sum, s) => sum + segmentLengths(s, nodes).usedMm, 0),
    wires: harness.wires.map((w) => (w.route.found ? w.route.lengthMm : w.route.reason)),
    cut: harness.wires.map((w) => w.length.cutMm),
    coverings: project.coverings.map((c) =>
      harness.segments.reduce(
        (sum, s) =>
          sum + s.coverings.reduce((own, u) => own + (u.covering.id === c.id ? u.toMm - u.fromMm : 0), 0),
        0,
      ),
    ),
  };
}

/** Where everything that has a station lies on the board. */
export function placesOf(project: Project) {
  const nodes = byId(project.nodes);
  const segments = byId(project.segments);
  const place = ({ segment, atMm }: Station) => {
    const s = segments.get(segment)!;
    return placeOfStation(segmentPath(s, nodes)!, segmentLengths(s, nodes).usedMm, atMm).at;
  };
  return [
    ...project.ties.map((t) => place(t.station)),
    ...project.fixings.map((f) => place(f.station)),
    ...project.labels.flatMap((l) => (l.on.at === 'station' ? [place(l.on.station)] : [])),
    ...project.coverings.flatMap((c) => [place(c.from), place(c.to)]),
    ...project.dimensions.flatMap((d) =>
      d.datums.map((datum) =>
        datum.at === 'node'
          ? nodes.get(datum.node)!.position
          : datum.at === 'station'
            ? place(datum.station)
            : { x: 0, y: 0 },
      ),
    ),
  ];
}
