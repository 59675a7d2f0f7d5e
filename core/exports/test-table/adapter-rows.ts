import { byId } from '../../base/by-id';
import type { Harness } from '../../derive/harness';
import type { TestModel } from '../../derive/harness-test/test-model';
import { limitValue } from '../../derive/wire-ampacity';
import { connectorRef } from '../../rules/refs';
import type { OpenTestRow } from './test-columns';

/** The half that the tester needs for each connector: the one that it mates with in the project. */
export function adapterRows(harness: Harness, { connectors }: TestModel): OpenTestRow[] {
  const placed = byId(harness.project.connectors);
  const matings = limitValue(harness.project.limitSet, 'test-matings');
  return connectors.map((use) => {
    const { connector, part } = use.resolved;
    const mates = use.mates.flatMap((m) => placed.get(m.a === connector.id ? m.b : m.a) ?? []);
    const halves = mates.flatMap((m) => harness.parts.get(m.part)?.partNumber ?? []);
    return {
      cells: {
        test: 'adapter',
        from: connector.designator,
        to: halves.join(', ') || null,
        expected: 'plugged in',
        source: halves.length > 0 ? `mates with ${mates.map((m) => m.designator).join(', ')}` : null,
        remarks:
          [
            ...(halves.length > 0 ? [] : ['mating half not known']),
            ...(part ? [] : ['part of the connector not known']),
            ...(matings === undefined ? [] : [`test takes ${matings} of its matings`]),
          ].join('; ') || null,
      },
      objects: [connectorRef(use)],
    };
  });
}
