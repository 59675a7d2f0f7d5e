import { countingIds, type NewId } from '@latchwork/core/model/ids';
import { newProject } from '@latchwork/core/model/new-project';
import type { Project } from '@latchwork/core/model/project';
import { addBlock, BLOCK_HEIGHT_MM, BLOCK_WIDTH_MM, ROWS } from './harness/block';
import { blockKinds, blockPartRecords, createKeying, type BlockParts } from './harness/block-parts';
import { between, createRandom } from './harness/random';

export interface HarnessSize {
  readonly wires: number;
  /** Another number gives another harness of the same size; the same one gives the same harness. */
  readonly seed?: number;
}

const TRUNK_MM = 300;

/**
 * A big harness for benches and property tests: boards and devices joined by halves of 10 and 12 ways, mated, routed
 * over one trunk with branches. Valid, and without findings. Built as plain data, since by commands 10,000 wires
 * would take minutes.
 */
export function generateProject({ wires, seed = 1 }: HarnessSize): Project {
  const random = createRandom(seed);
  const newId = countingIds(10_000_000);
  const kinds = blockKinds();
  const base = newProject({ id: newId(), revisionId: newId(), title: `Generated harness, ${wires} wires` });
  const project: Project = {
    ...base,
    titleBlock: { ...base.titleBlock, supplementaryTitle: 'Invented by a program' },
    parts: blockPartRecords(kinds),
  };
  const keyed = createKeying(project.parts);
  const chosen: BlockParts[] = [];
  for (let left = wires; left > 0; left -= ROWS * (chosen.at(-1) as BlockParts).ways)
    chosen.push(kinds[between(random, 0, kinds.length)] as BlockParts);

  const trunk = addTrunk(project, newId, chosen.length + 1);
  const blocksAcross = Math.max(1, Math.round(Math.sqrt((chosen.length * BLOCK_HEIGHT_MM) / BLOCK_WIDTH_MM)));
  let left = wires;
  chosen.forEach((parts, i) => {
    const ahead = Math.min(trunk.length - 1, i + between(random, 0, 3));
    left -= addBlock({
      project,
      newId,
      random,
      parts,
      keyed,
      number: i,
      origin: {
        x: (i % blocksAcross) * BLOCK_WIDTH_MM,
        y: Math.floor(i / blocksAcross) * BLOCK_HEIGHT_MM,
      },
      wires: left,
      nearTrunk: trunk[i] as string,
      farTrunk: trunk[ahead] as string,
    });
  });
  return project;
}

/** Nodes in a line, at true scale, joined by segments. */
function addTrunk(project: Project, newId: NewId, count: number): string[] {
  const ids = Array.from({ length: count }, () => newId());
  ids.forEach((id, i) => {
    project.nodes.push({ id, designator: `N${i + 1}`, position: { x: i * TRUNK_MM, y: 0 } });
    const before = ids[i - 1];
    if (before) project.segments.push({ id: newId(), designator: `S${i}`, from: before, to: id });
  });
  return ids;
}
