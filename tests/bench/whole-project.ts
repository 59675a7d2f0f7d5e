import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { partsList } from '@latchwork/core/exports/parts-list';
import { parseProject } from '@latchwork/core/model/parse';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import { buildDiagramScene } from '../../renderer/canvas/scene/diagram-scene';
import { hitAt } from '../../renderer/canvas/scene/hit';
import { indexScene, type HitIndex } from '../../renderer/canvas/scene/hit-index';
import type { Bench } from './bench';
import { lazy } from './lazy';
import { projectOf, SIZES } from './sizes';

/** What is done once for a whole project: opening it, its parts list, its picture, and what lies under the pointer. */
export const wholeProjectBench: Bench = {
  name: 'whole project',
  cases: SIZES.flatMap((wires, i) => {
    const text = lazy(() => serialiseProject(projectOf(wires)));
    const harness = lazy(() => deriveHarness(projectOf(wires)));
    const check = lazy(() => checkHarness(harness(), RULES));
    const index = lazy((): HitIndex => indexScene(buildDiagramScene(harness()), null));
    let at = 0;
    const cases: Bench['cases'] = [
      { name: 'parse', run: () => void parseProject(text()) },
      { name: 'derive', run: () => void deriveHarness(structuredClone(projectOf(wires))) },
      { name: 'check all', run: () => void checkHarness(harness(), RULES) },
      {
        name: 'parts list',
        // As of a harness that was never asked: the lines are remembered beside it.
        run: () => void partsList.table({ harness: { ...harness() }, check: check(), date: '2026-03-01' }),
        ...(wires === 10_000 ? { targetMs: 200 } : {}),
      },
      {
        name: 'lay out the diagram',
        run: () => void buildDiagramScene(deriveHarness(structuredClone(projectOf(wires)))),
      },
      {
        name: '100 hit tests',
        run: () => {
          for (let k = 0; k < 100; k++) {
            const w = index().scene.wires.list[(at += 37) % index().scene.wires.list.length]!;
            const p = { x: w.curve[0]! + 3, y: w.curve[1]! };
            hitAt(p, { index: index(), badges: [], selection: new Set(), pxPerMm: 3 });
          }
        },
      },
    ];
    return cases.map((c) => ({
      ...c,
      name: `${c.name}, ${wires} wires`,
      ...(i > 0 ? { ratioTo: `${c.name}, ${SIZES[0]} wires` } : {}),
    }));
  }),
};
