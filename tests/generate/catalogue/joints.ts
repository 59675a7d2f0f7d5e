import type { Part } from '@latchwork/core/model/parts/part';
import { awg, record, type PartOf } from './records';

function splice(code: string, area: readonly [number, number], wiresMax: number): PartOf<'splice'> {
  return {
    kind: 'splice',
    ...record({
      maker: 'sundries',
      partNumber: `OJ-${code}`,
      description: `Crimp splice, ${area[0]} to ${area[1]} mm2 in all, up to ${wiresMax} wires`,
      massG: 0.4,
      temperatureMaxC: 125,
      terms: { price: 0.11, minimum: 50, multiple: 50, second: true },
    }),
    areaMinMm2: area[0],
    areaMaxMm2: area[1],
    stripLengthMm: 6,
    resistanceMohm: 1,
    wiresMax,
  };
}

function terminal(
  partNumber: string,
  form: NonNullable<PartOf<'terminal'>['form']>,
  description: string,
  studMm?: number,
): PartOf<'terminal'> {
  return {
    kind: 'terminal',
    ...record({
      maker: 'sundries',
      partNumber,
      description,
      massG: 0.6,
      temperatureMaxC: 105,
      terms: { price: 0.08, minimum: 100, multiple: 100, second: true },
    }),
    form,
    sizeMin: awg(22),
    sizeMax: awg(18),
    areaMinMm2: 0.3,
    areaMaxMm2: 1,
    insulationMaxMm: 2.4,
    stripLengthMm: form === 'ferrule' ? 8 : 5,
    ...(studMm ? { studMm } : {}),
  };
}

/** Splices and the terminals of free wire ends. */
export function jointParts(): Part[] {
  return [
    splice('05', [0.3, 1], 3),
    splice('15', [0.8, 2.5], 4),
    splice('40', [2, 4.5], 6),
    terminal('OR-4', 'ring', 'Ring terminal for an M4 stud, 22 to 18 AWG', 4),
    terminal('OR-6', 'ring', 'Ring terminal for an M6 stud, 22 to 18 AWG', 6),
    terminal('OK-4', 'fork', 'Fork terminal for an M4 screw, 22 to 18 AWG', 4),
    terminal('OE-08', 'ferrule', 'End ferrule, 8 mm, 22 to 18 AWG'),
    terminal('OL-63', 'blade', 'Blade receptacle 6.3 mm, 22 to 18 AWG'),
  ];
}
