import { boxAround, grownBox, type Box } from '@latchwork/core/base/point';
import type { BoardScene } from '@latchwork/core/derive/formboard/scene/board-items';
import { boardBounds } from '@latchwork/core/derive/formboard/scene/build-board-scene';
import { keyOfRef } from '../../app/store';
import type { SheetBoxes } from '../use-sheet';
import { litBy } from './scene/lit';

const AROUND_MM = 20;

/** Where things of the board are, for whoever wants to see them. */
export function boxesOf(scene: BoardScene): SheetBoxes {
  const ofKeys = (keys: Iterable<string>): Box | null => {
    const { ids, ways } = litBy(scene, keys);
    const seen = (id: string): boolean => ids.has(id) || ways.has(id);
    const points = [
      ...scene.nodes.filter((n) => seen(n.id)).map((n) => n.at),
      ...scene.segments.filter((s) => seen(s.id)).flatMap((s) => s.points),
      ...scene.connectors.filter((c) => seen(c.id)).map((c) => c.at),
      ...scene.splices.filter((s) => seen(s.id)).map((s) => s.at),
      ...scene.things.filter((t) => seen(t.id)).map((t) => t.at),
      ...scene.coverings.filter((c) => seen(c.id)).flatMap((c) => c.points),
      ...scene.dimensions.filter((d) => seen(d.id)).flatMap((d) => d.datums.map((f) => f.foot)),
    ];
    const box = boxAround(points.map((p) => ({ minX: p.x, minY: p.y, maxX: p.x, maxY: p.y })));
    return box && grownBox(box, AROUND_MM);
  };
  return { all: () => boardBounds(scene), ofKeys, ofRefs: (refs) => ofKeys(refs.map(keyOfRef)) };
}
