import type { Draft } from 'immer';
import type { Fuse } from '../../model/electrical';
import { must } from '../../base/assert-never';
import type { FusePart } from '../../model/parts/accessories';
import type { z } from 'zod';
import type { TinyDraft } from '../../model/tiny';
import { sup } from './example-signals';

type Part = Draft<z.infer<typeof FusePart>>;

/** Puts a fuse F1 into the red wire of an example, whose source then limits nothing itself. Gives the fuse and its record. */
export function addFuse(t: TinyDraft, ratedA: number, fromSourceMm = 100) {
  const part: Part = {
    kind: 'fuse',
    id: t.newId(),
    maker: 'Example Works (invented)',
    partNumber: 'FUSE',
    description: 'Fuse',
    ratedA,
    voltageMaxV: 32,
    temperatureMaxC: 85,
    resistanceMohm: 20,
    meltingA2s: 10,
    clearingA2s: 40,
  };
  const fuse: Draft<Fuse> = {
    id: t.newId(),
    designator: 'F1',
    part: part.id,
    wire: t.wire('W1').id,
    fromSourceMm,
  };
  t.project.parts.push(part);
  t.project.fuses.push(fuse);
  delete sup(t).sourceLimitA;
  return {
    fuse: must(t.project.fuses.at(-1), 'fuse'),
    part: t.part('fuse', 'FUSE'),
  };
}
