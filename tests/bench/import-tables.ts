import { importHarness } from '@latchwork/core/import/import-harness';
import { tablesOfProject } from '../generate/tables-of-project';
import type { Bench } from './bench';
import { lazy } from './lazy';
import { projectOf, SIZES } from './sizes';

/** From a table of connectors and one of wires to a project. Target: 10,000 wires in five seconds. */
export const importTablesBench: Bench = {
  name: 'import of tables',
  cases: SIZES.map((wires, i) => {
    const files = lazy(() => {
      const { connectors, fromTo } = tablesOfProject(projectOf(wires));
      return {
        title: 'Sample',
        connectors: { file: 'places.csv', text: connectors },
        fromTo: { file: 'wires.csv', text: fromTo },
        catalogue: projectOf(wires).parts,
      };
    });
    return {
      name: `${wires} wires`,
      ...(i > 0 ? { ratioTo: `${SIZES[0]} wires` } : {}),
      ...(wires === 10_000 ? { targetMs: 5000 } : {}),
      run: () => {
        const made = importHarness(files());
        if (!made.ok || made.value.wires.length !== wires) throw new Error('the tables were not taken');
      },
    };
  }),
};
