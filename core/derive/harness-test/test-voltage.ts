import type { Part } from '../../model/parts/part';
import type { Harness } from '../harness';
import type { TestNet } from './test-model';

/** The highest voltage that a net may be tested with, and the part that sets it; or the ratings that are missing. */
export type TestVoltage =
  | { readonly ok: true; readonly atMostV: number; readonly by: string }
  | { readonly ok: false; readonly needs: readonly string[] };

/**
 * No part on a net is tested above what its record rates it for. That is the voltage of operation: what a part withstands in a
 * test is higher, but no record states it. Wires, the connectors in which the net has a point, and fuses count.
 */
export function testVoltage(harness: Harness, net: TestNet): TestVoltage {
  const rated = new Map<string, number | undefined>();
  const put = (name: string, part: Part | undefined): void => {
    rated.set(part?.partNumber ?? name, part && 'voltageMaxV' in part ? part.voltageMaxV : undefined);
  };
  for (const { wire } of net.wires) {
    put(`the wire of ${wire.wire.designator}`, wire.part);
    for (const fuse of harness.project.fuses)
      if (fuse.wire === wire.wire.id) put(fuse.designator, harness.parts.get(fuse.part ?? ''));
  }
  for (const { cavity } of net.points)
    if (cavity) put(cavity.connector.connector.designator, cavity.connector.part);
  const needs = [...rated].flatMap(([name, v]) => (v === undefined ? [`voltage rating of ${name}`] : []));
  if (needs.length > 0) return { ok: false, needs };
  const known = [...rated].flatMap(([by, atMostV]) => (atMostV === undefined ? [] : [{ by, atMostV }]));
  const [least] = known.sort((a, b) => a.atMostV - b.atMostV);
  return least ? { ok: true, ...least } : { ok: false, needs: ['a part on the net'] };
}
