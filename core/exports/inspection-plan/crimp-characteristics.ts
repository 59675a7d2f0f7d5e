import type { Harness } from '../../derive/harness';
import { roundTo } from '../../model/length-text';
import {
  CHECK_FREQUENCY,
  FREQUENCY_SOURCE,
  HEIGHT_SAMPLES,
  PULL_SAMPLES,
  STRAND_SOURCE,
  strandDamageText,
} from '../crimp-sheets/crimp-checks';
import { crimpGroups, wireName, type CrimpGroup } from '../crimp-sheets/crimp-groups';
import { crimpValues } from '../crimp-sheets/crimp-spec-values';
import type { Characteristic } from './characteristic';

/** Height, pull-out force, strip and looks of each kind of crimp; numbered as on the crimp sheets. */
export const crimpCharacteristics = (harness: Harness): Characteristic[] =>
  crimpGroups(harness).flatMap((group, i) => ofGroup(harness, group, i + 1));

function ofGroup(harness: Harness, group: CrimpGroup, sheet: number): Characteristic[] {
  const v = crimpValues(harness, group);
  const { part, wires, places } = group;
  const common = {
    at: `${part.partNumber} on ${wires.map(wireName).join(' + ')} (sheet ${sheet})`,
    perHarness: places.length,
    objects: places.map((p) => p.object),
  };
  const tolerance = v.heightToleranceMm;
  const stated = v.heightMm !== null && tolerance !== null;
  const damage = strandDamageText(wires[0]?.conductor);
  return [
    {
      ...common,
      what: 'crimp height',
      requirement: v.heightMm === null ? 'not stated' : `${v.heightMm} ± ${tolerance ?? '?'} mm`,
      min: stated ? roundTo((v.heightMm ?? 0) - (tolerance ?? 0), 3) : undefined,
      max: stated ? roundTo((v.heightMm ?? 0) + (tolerance ?? 0), 3) : undefined,
      unit: 'mm',
      class: 'critical',
      method: 'crimp height micrometer with blade and point',
      sampling: { pieces: HEIGHT_SAMPLES, frequency: CHECK_FREQUENCY },
      source: `${v.specSource ?? 'no specification stated'}; how often: ${FREQUENCY_SOURCE}`,
      record: 'record sheets, crimp heights',
      missing: stated ? [] : ['crimp height with tolerance'],
    },
    {
      ...common,
      what: 'pull-out force',
      requirement: v.pull ? `at least ${v.pull.value} N` : 'not stated',
      min: v.pull?.value,
      unit: 'N',
      class: 'critical',
      method: 'pull tester, about 25 mm/min (from memory); destroys the piece',
      sampling: { pieces: PULL_SAMPLES, frequency: CHECK_FREQUENCY },
      source: v.pull?.source ?? 'no value stated',
      record: 'record sheets, pull-out forces',
      missing: v.pull ? [] : ['least pull-out force'],
    },
    {
      ...common,
      what: 'strip length',
      requirement: v.stripMm === null ? 'not stated' : `${v.stripMm} ± ${v.stripToleranceMm ?? '?'} mm`,
      min: bound(v.stripMm, v.stripToleranceMm, -1),
      max: bound(v.stripMm, v.stripToleranceMm, 1),
      unit: 'mm',
      class: 'minor',
      method: 'rule or measuring microscope, before crimping',
      sampling: 'plan',
      source: `record of ${part.partNumber}`,
      record: 'record sheets, first article',
      missing: v.stripMm === null || v.stripToleranceMm === null ? ['strip length with tolerance'] : [],
    },
    {
      ...common,
      what: 'crimp by eye',
      requirement: `visual criteria of the crimp sheets${damage === undefined ? '' : `; damaged strands at most ${damage}`}`,
      class: 'major',
      method: 'magnifier, about 10 times',
      sampling: 'plan',
      source: `crimp sheets; ${STRAND_SOURCE}`,
      record: 'record sheets, first article',
      missing: damage === undefined ? ['stranding of the wire'] : [],
    },
  ];
}

const bound = (value: number | null, tolerance: number | null, sign: 1 | -1): number | undefined =>
  value === null || tolerance === null ? undefined : roundTo(value + sign * tolerance, 3);
