import { compareNatural } from '../../base/stable-order';
import type { Harness } from '../../derive/harness';
import type { TestModel } from '../../derive/harness-test/test-model';
import { connectorRef } from '../../rules/refs';
import type { OpenTestRow } from './test-columns';

/** Fuses: continuity runs through them, but what is printed on them is read. */
export function componentRows({ project, parts }: Harness): OpenTestRow[] {
  return [...project.fuses]
    .sort((a, b) => compareNatural(a.designator, b.designator))
    .map((fuse) => {
      const record = parts.get(fuse.part ?? '');
      const rated = fuse.ratedA ?? (record?.kind === 'fuse' ? record.ratedA : undefined);
      const wire = project.wires.find((w) => w.id === fuse.wire)?.designator;
      return {
        cells: {
          test: 'component, by eye',
          from: fuse.designator,
          to: wire ? `in ${wire}` : null,
          expected: rated === undefined ? null : `fitted, marked ${rated} A`,
          source: record ? `record of ${record.partNumber}` : null,
          remarks: [
            ...(record ? [] : ['fuse not chosen']),
            ...(rated === undefined ? ['rating not stated'] : []),
            'a fuse of another rating passes every electrical step',
          ].join('; '),
        },
        objects: [{ type: 'fuse' as const, id: fuse.id }],
      };
    });
}

/** Locks and plugs: felt by a presence switch of the adapter, or seen. */
export function presenceRows({ connectors }: TestModel): OpenTestRow[] {
  return connectors.flatMap((use): OpenTestRow[] => {
    const { connector, part, accessories } = use.resolved;
    if (connector.supply !== 'harness') return [];
    const locks = accessories.filter((a) => a.part?.kind === 'secondary-lock');
    const plugs = use.cavities.filter((c) => c.state === 'plugged');
    const asked = part?.kind === 'housing' ? part.secondaryLock : undefined;
    const row = (to: string, expected: string | null, remarks: string | null): OpenTestRow => ({
      cells: { test: 'presence', from: connector.designator, to, expected, remarks },
      objects: [connectorRef(use)],
    });
    return [
      ...locks.map((l) => row(l.part?.partNumber ?? '', 'secondary lock closed', null)),
      ...(asked !== undefined && locks.length === 0
        ? [row(asked, null, `the record asks for the lock ${asked}, none is fitted`)]
        : []),
      ...(plugs.length > 0
        ? [row(`cavities ${plugs.map((c) => c.cavity).join(', ')}`, 'plugs seated', null)]
        : []),
    ];
  });
}
