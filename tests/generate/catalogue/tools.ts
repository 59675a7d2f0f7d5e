import type { Part } from '@latchwork/core/model/parts/part';
import { ALDER, ALDER_BANDS } from './alder-30';
import { BIRCH, BIRCH_BANDS } from './birch-20';
import { CEDAR, CEDAR_BANDS } from './cedar-45';
import { record, type PartOf } from './records';

function tool(
  partNumber: string,
  form: NonNullable<PartOf<'tool'>['form']>,
  description: string,
  price: number,
): PartOf<'tool'> {
  return {
    kind: 'tool',
    ...record({
      maker: 'connectors',
      partNumber,
      description,
      massG: 350,
      terms: { price, leadTimeDays: 28 },
    }),
    form,
  };
}

/** The tools that the contacts name: HT hand tool, AP applicator for a press, XT extraction tool. */
export function toolParts(): Part[] {
  const families = [
    { f: ALDER, bands: ALDER_BANDS },
    { f: BIRCH, bands: BIRCH_BANDS },
    { f: CEDAR, bands: CEDAR_BANDS },
  ];
  return families.flatMap(({ f, bands }) => [
    ...bands.flatMap((b) => [
      tool(`${f.code}-HT-${b.code}`, 'hand', `${f.name}, hand crimp tool, band ${b.code}`, 240),
      tool(`${f.code}-AP-${b.code}`, 'press', `${f.name}, press applicator, band ${b.code}`, 1450),
    ]),
    tool(`${f.code}-XT`, 'extraction', `${f.name}, extraction tool`, 35),
  ]);
}
