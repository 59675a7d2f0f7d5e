import { sha256 } from '@latchwork/core/base/sha256';
import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import { EXPORTERS } from '@latchwork/core/exports/index';
import { serialiseProject } from '@latchwork/core/model/serialise';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { RULES } from '@latchwork/core/rules/index';
import type { Bench } from './bench';
import { lazy } from './lazy';
import { projectOf } from './sizes';

const WIRES = [100, 1_000, 5_000] as const;

/** Documents that were slow at some time, or that grow with something else than the wires. */
const IDS = [
  'formboard',
  'pinouts',
  'cut-list',
  'build-sequence',
  'test-table',
  'inspection-plan',
  'record-sheets',
  'request-for-quotation',
] as const;

const inputs = new Map(
  WIRES.map((wires) => [
    wires,
    lazy(() => {
      const harness = deriveHarness(projectOf(wires));
      return { harness, check: checkHarness(harness, RULES), date: '2026-03-01' };
    }),
  ]),
);

/**
 * What a document costs at first, as rows and as pages: the window makes it on its own thread. As of a harness that was never
 * asked, but for the packing of its bundles, which has a bench of its own.
 */
export const documentsBench: Bench = {
  name: 'documents, rows and pages',
  cases: [
    ...IDS.flatMap((id) =>
      WIRES.map((wires, i) => ({
        name: `${id}, ${wires} wires`,
        ...(i > 0 ? { ratioTo: `${id}, ${WIRES[0]} wires` } : {}),
        run: () => {
          const input = inputs.get(wires)!();
          const fresh = { ...input, harness: { ...input.harness } };
          const exporter = EXPORTERS.find((e) => e.id === id)!;
          exporter.table(fresh);
          exporter.paper?.(fresh);
        },
      })),
    ),
    ...WIRES.map((wires, i) => {
      const text = lazy(() => serialiseProject(projectOf(wires)));
      return {
        name: `baseline hash, ${wires} wires`,
        ...(i > 0 ? { ratioTo: `baseline hash, ${WIRES[0]} wires` } : {}),
        run: () => void sha256(text()),
      };
    }),
  ],
};
