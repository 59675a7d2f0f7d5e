import { roundTo } from '@latchwork/core/model/length-text';
import { record, type PartOf } from './records';

type CoveringPart = PartOf<'covering'>;

interface CoveringArgs {
  readonly partNumber: string;
  readonly description: string;
  readonly form: CoveringPart['form'];
  readonly innerMm?: readonly [number, number];
  readonly wallMm: number;
  readonly tapeWidthMm?: number;
  readonly massGPerM: number;
  readonly price: number;
}

function covering(a: CoveringArgs): CoveringPart {
  return {
    kind: 'covering',
    ...record({
      maker: 'sundries',
      partNumber: a.partNumber,
      description: a.description,
      massG: a.massGPerM,
      temperatureMaxC: 105,
      terms: { price: a.price, minimum: 10, multiple: 5, second: true },
    }),
    form: a.form,
    ...(a.innerMm ? { innerMinMm: roundTo(a.innerMm[0], 2), innerMaxMm: roundTo(a.innerMm[1], 2) } : {}),
    wallMm: a.wallMm,
    ...(a.tapeWidthMm ? { tapeWidthMm: a.tapeWidthMm, tapeOverlap: 0.5 } : {}),
    takeUp: a.form === 'braid' || a.form === 'sleeve' ? 0.05 : 0,
  };
}

export function coveringParts(): CoveringPart[] {
  const tubes = [4, 6, 8, 10, 14].map((inner) =>
    covering({
      partNumber: `OT-${inner}`,
      description: `Smooth tube, ${inner} mm inside, black`,
      form: 'tube',
      innerMm: [inner * 0.4, inner],
      wallMm: 0.5,
      massGPerM: inner * 2.1,
      price: 0.1 + inner * 0.03,
    }),
  );
  const sleeves = [3, 6, 10, 16].map((inner) =>
    covering({
      partNumber: `OS-${inner}`,
      description: `Woven sleeve, nominal ${inner} mm, expands, grey`,
      form: 'sleeve',
      innerMm: [inner * 0.6, inner * 1.5],
      wallMm: 0.4,
      massGPerM: inner * 1.4,
      price: 0.2 + inner * 0.04,
    }),
  );
  const shrinks = [2.4, 4.8, 9.5].map((inner) =>
    covering({
      partNumber: `OH-${String(inner).replace('.', '')}`,
      description: `Heat-shrink tube 2:1, ${inner} mm before, black`,
      form: 'heat-shrink',
      innerMm: [inner / 2, inner],
      wallMm: 0.6,
      massGPerM: inner * 2.6,
      price: 0.3 + inner * 0.05,
    }),
  );
  return [
    ...tubes,
    ...sleeves,
    ...shrinks,
    covering({
      partNumber: 'OP-19',
      description: 'Cloth tape, 19 mm wide, half overlapped, black',
      form: 'tape',
      wallMm: 0.25,
      tapeWidthMm: 19,
      massGPerM: 5,
      price: 0.09,
    }),
    covering({
      partNumber: 'OC-10',
      description: 'Split corrugated conduit, 10 mm inside, black',
      form: 'conduit',
      innerMm: [4, 10],
      wallMm: 1.2,
      massGPerM: 31,
      price: 0.45,
    }),
    covering({
      partNumber: 'OB-6',
      description: 'Braid of tinned copper, nominal 6 mm',
      form: 'braid',
      innerMm: [3, 9],
      wallMm: 0.35,
      massGPerM: 44,
      price: 1.9,
    }),
  ];
}
